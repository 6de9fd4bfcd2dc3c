/** The library's client, which says of a server that has ended only what the writer can use. */

import type { CancellationToken } from 'vscode';
import {
  ErrorCodes,
  LanguageClient,
  ResponseError,
  type MessageSignature,
} from 'vscode-languageclient/node';

export class CalmClient extends LanguageClient {
  /**
   * Answers with nothing what could not be sent any more. Whoever asked asks the next server again,
   * and of the end of this one the writer is told once, and not for every request that met it.
   */
  override handleFailedRequest<T>(
    type: MessageSignature,
    token: CancellationToken | undefined,
    error: unknown,
    defaultValue: T,
    showNotification?: boolean,
    throwOnCancel?: boolean,
  ): T {
    if (error instanceof ResponseError && error.code === ErrorCodes.MessageWriteError) {
      return defaultValue;
    }
    return super.handleFailedRequest(
      type,
      token,
      error,
      defaultValue,
      showNotification,
      throwOnCancel,
    );
  }
}
