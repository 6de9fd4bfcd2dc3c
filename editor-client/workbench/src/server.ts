/** The language server as the page knows it: one session after the other, each with what is open. */

import { LSPClient, type LSPClientExtension } from '@codemirror/lsp-client';
import type { Extension } from '@codemirror/state';
import { sanitized } from './safe';

/** What this client does beyond the library's own; the server offers nothing else. */
const CAPABILITIES: LSPClientExtension = {
  clientCapabilities: {
    general: { positionEncodings: ['utf-16'] },
    textDocument: {
      diagnostic: { relatedDocumentSupport: false },
      publishDiagnostics: { codeDescriptionSupport: true },
      codeAction: {
        codeActionLiteralSupport: {
          codeActionKind: { valueSet: ['', 'quickfix', 'refactor', 'source'] },
        },
        isPreferredSupport: true,
        disabledSupport: true,
        dataSupport: true,
        resolveSupport: { properties: ['edit'] },
      },
      codeLens: {},
      foldingRange: { lineFoldingOnly: true },
      inlayHint: {},
      semanticTokens: {
        requests: { range: true, full: true },
        tokenTypes: [],
        tokenModifiers: [],
        formats: ['relative'],
      },
    },
    workspace: {
      applyEdit: true,
      workspaceEdit: { documentChanges: true },
      diagnostics: { refreshSupport: true },
      inlayHint: { refreshSupport: true },
      codeLens: { refreshSupport: true },
      executeCommand: {},
      textDocumentContent: {},
    },
    window: { showDocument: { support: true } },
  },
};

/** Commands that the page carries out by itself. */
export const OWN_COMMANDS = {
  scale: 'kettlemark.scale.ask',
  table: 'kettlemark.show.open',
  whatIf: 'kettlemark.whatIf.open',
} as const;

/** A long library on a slow machine; a dead server is noticed by its connection. */
const PATIENCE = 60_000;

export function clientOf(
  root: string,
  workspace: (client: LSPClient) => LSPClient['workspace'],
  extensions: readonly Extension[],
): LSPClient {
  return new LSPClient({
    rootUri: root,
    timeout: PATIENCE,
    sanitizeHTML: sanitized,
    initializationOptions: { commands: Object.values(OWN_COMMANDS) },
    workspace,
    extensions: [CAPABILITIES, ...extensions],
  });
}

export class Server {
  constructor(private readonly client: LSPClient) {}

  /** Whether the server knows a command; a page may be newer than the program, or older. */
  knows(command: string): boolean {
    return (
      this.client.serverCapabilities?.executeCommandProvider?.commands.includes(command) === true
    );
  }

  /** Runs a command on the text as it is now. */
  async run(command: string, argument: object): Promise<unknown> {
    return this.ask('workspace/executeCommand', { command, arguments: [argument] });
  }

  async ask<T>(method: string, params: object): Promise<T> {
    this.client.sync();
    try {
      return await this.client.request<object, T>(method, params);
    } catch (failure) {
      throw asError(failure);
    }
  }

  tell(method: string, params: object): void {
    if (this.client.serverCapabilities !== null) {
      this.client.notification(method, params);
    }
  }

  get legend(): readonly string[] {
    return this.client.serverCapabilities?.semanticTokensProvider?.legend.tokenTypes ?? [];
  }
}

function asError(failure: unknown): Error {
  const message = (failure as { message?: unknown } | null)?.message;
  return failure instanceof Error
    ? failure
    : new Error(typeof message === 'string' ? message : String(failure));
}
