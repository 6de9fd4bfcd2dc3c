/** Everything on the page that belongs to one folder, and what happens when something of it changes. */

import { nextDiagnostic } from '@codemirror/lint';
import { LSPPlugin, type LSPClient, type Transport } from '@codemirror/lsp-client';
import type { EditorState, Extension } from '@codemirror/state';
import { EditorView, type KeyBinding } from '@codemirror/view';
import type {
  CodeAction,
  Command,
  Diagnostic,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol';
import { Refusal, endServer, type Folder, type Listed } from './api';
import { Asking } from './asking';
import { Bench } from './bench';
import { Buffers, type Buffer } from './buffers';
import { byId, h, openDialog } from './dom';
import type { Drafts } from './drafts';
import { changesOf, filesOf, offsetOf, positionOf, rangeOf } from './edits';
import { Files, type DiskChange } from './files';
import { FindingsList, tally, underline, type Placed } from './findings';
import type { Lamp } from './lamp';
import { showCards, showLibrary } from './library';
import { Link } from './link';
import { showMenu } from './menu';
import { showConflict, type Notices } from './notices';
import { stateOf } from './paper';
import { OWN_COMMANDS, Server, clientOf } from './server';

const LOOK_EVERY = 2000;
const LOOK_HIDDEN = 10_000;

export class Desk {
  private readonly client: LSPClient;
  private readonly server: Server;
  private readonly buffers: Buffers;
  private readonly files: Files;
  private readonly asking: Asking;
  private readonly bench: Bench;
  private readonly findings: FindingsList;
  private readonly link: Link;
  private readonly view: EditorView;
  private readonly nonce =
    document.querySelector<HTMLMetaElement>('meta[name=nonce]')?.content ?? '';
  private readonly found = new Map<string, readonly Diagnostic[]>();
  private current: Buffer | undefined;
  private keeping: ReturnType<typeof setTimeout> | undefined;
  private ended = false;

  constructor(
    private readonly folder: Folder,
    drafts: Drafts,
    private readonly notices: Notices,
    lamp: Lamp,
  ) {
    this.client = clientOf(
      folder.root,
      (client) =>
        new Buffers(
          client,
          (uri) => this.display(uri),
          (uri) => this.bufferOf(uri),
        ),
      [],
    );
    const { workspace } = this.client;
    if (!(workspace instanceof Buffers)) {
      throw new Error('the client has another workspace than it was given');
    }
    this.buffers = workspace;
    this.server = new Server(this.client);
    this.files = new Files(
      drafts,
      (uri, text) => this.stateOf(uri, text),
      {
        listed: (now, changes) => {
          this.listed(now, changes);
        },
        changedOnDisk: (buffer) => {
          this.changedOnDisk(buffer);
        },
        saved: (buffer) => {
          this.server.tell('textDocument/didSave', { textDocument: { uri: buffer.uri } });
          this.retell();
        },
        broughtBack: (buffer, at) => {
          this.broughtBack(buffer, at);
        },
        noRoomForDraft: (buffer) => {
          notices.tell('room', `The browser has no room to keep ${buffer.path}: save it soon.`);
        },
        away: (why) => {
          if (!this.ended) {
            notices.tell('away', why);
          }
        },
      },
      () => this.buffers.files,
    );
    this.asking = new Asking(this.server, {
      written: () => {
        this.bench.written();
      },
      edited: () => {
        this.retell();
      },
      moved: (line) => {
        this.bench.moved(line);
      },
      findings: (view, diagnostics) => {
        this.showFindings(view, diagnostics);
      },
      folderFindings: () => {
        void this.folderFindings();
      },
      run: (command) => {
        void this.run(command);
      },
    });
    this.bench = new Bench(byId('bench'), this.server, lamp, {
      place: () => this.place(),
      apply: (edit) => this.apply(edit),
      go: ({ uri, line }) => {
        void this.goToPlace(uri, line);
      },
    });
    this.findings = new FindingsList(byId('findings-title'), byId('findings-list'), byId('told'), {
      go: (finding) => {
        void this.goToFinding(finding);
      },
      fixes: (finding) => {
        void this.goToFinding(finding).then(() => this.menu());
      },
      explain: (rule) => {
        void this.bench.rule(rule);
      },
    });
    this.view = new EditorView({
      parent: byId('editor'),
      extensions: [EditorView.cspNonce.of(this.nonce), EditorView.editable.of(false)],
    });
    this.link = new Link({
      connected: (transport) => {
        this.connected(transport);
      },
      lost: (seconds) => {
        this.lost(seconds);
      },
      answer: (method, params) => this.answer(method, params),
    });
  }

  async begin(): Promise<void> {
    byId('folder').textContent = this.folder.folder;
    document.title = `${this.folder.folder}, Kettlemark workbench`;
    this.link.open();
    await this.files.look();
    this.listen();
    const wanted = decodeURIComponent(location.hash.slice(1));
    const first = this.files.list.find(({ path }) => path === wanted) ?? firstOf(this.files.list);
    if (first === undefined) {
      this.notices.tell('empty', 'The folder holds no formula file yet: make one in the library.');
    } else {
      await this.open(first);
    }
    this.watch();
  }

  private connected(transport: Transport): void {
    this.notices.take('link');
    this.notices.take('away');
    this.client.connect(transport);
    void this.client.initializing.then(() => {
      this.bench.connected();
      if (this.current !== undefined) {
        this.asking.all(this.view);
        this.bench.refresh();
      }
      this.tellState();
    });
  }

  private lost(seconds: number): void {
    if (this.client.connected && this.buffers.online) {
      this.client.disconnect();
    }
    this.buffers.online = false;
    this.tellState();
    this.notices.tell(
      'link',
      `The language server is away; trying again in ${String(seconds)} s. You can go on writing: nothing is lost.`,
      [
        {
          label: 'Try now',
          press: () => {
            this.link.hurry();
          },
        },
      ],
    );
  }

  private stateOf(uri: string, text: string): EditorState {
    const path = this.files.byUri(uri)?.path ?? uri;
    return stateOf(this.client, uri, path, text, this.extensions(), this.keys(), this.nonce);
  }

  private extensions(): Extension {
    return [
      this.asking.extension(),
      EditorView.updateListener.of(({ docChanged }) => {
        if (docChanged) {
          this.keepSoon();
        }
      }),
    ];
  }

  private keys(): KeyBinding[] {
    const menu = (): boolean => {
      void this.menu();
      return true;
    };
    return [
      { key: 'Alt-Enter', run: menu },
      { key: 'Mod-.', run: menu },
      {
        key: 'F2',
        run: () => {
          this.askName();
          return true;
        },
      },
      { key: 'F8', run: nextDiagnostic },
    ];
  }

  private listen(): void {
    byId('library').addEventListener('click', () => {
      this.library();
    });
    byId('save').addEventListener('click', () => {
      void this.save();
    });
    byId('actions').addEventListener('click', () => {
      void this.menu();
    });
    byId('end').addEventListener('click', () => {
      void this.end();
    });
    for (const id of ['library', 'save', 'actions', 'end']) {
      byId(id).toggleAttribute('disabled', false);
    }
    document.addEventListener('keydown', (event) => {
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === 's') {
        event.preventDefault();
        void this.save();
      } else if (event.key === 'F6') {
        event.preventDefault();
        this.nextRegion(event.shiftKey);
      }
    });
    window.addEventListener('pagehide', () => {
      this.keepNow();
    });
    document.addEventListener('visibilitychange', () => {
      this.keepNow();
      if (document.visibilityState === 'visible') {
        void this.files.look();
        this.link.hurry();
      }
    });
  }

  /** F6 goes from paper to bench to findings and round, as in other programs with panes. */
  private nextRegion(back: boolean): void {
    const regions = ['paper', 'bench', 'findings'].map((id) => byId(id));
    const here = regions.findIndex((region) => region.contains(document.activeElement));
    const to = regions[(here + (back ? regions.length - 1 : 1)) % regions.length];
    if (to?.id === 'paper') {
      this.view.focus();
    } else {
      to?.querySelector<HTMLElement>('[role=tab][tabindex="0"], button')?.focus();
    }
  }

  private watch(): void {
    const again = (): void => {
      const wait = document.visibilityState === 'visible' ? LOOK_EVERY : LOOK_HIDDEN;
      setTimeout(() => {
        if (!this.ended) {
          void this.files.look().finally(again);
        }
      }, wait);
    };
    again();
  }

  private listed(folder: Folder, changes: readonly DiskChange[]): void {
    this.notices.take('away');
    this.link.hurry();
    const unopened = changes.filter(({ uri }) => this.buffers.getFile(uri) === null);
    if (folder.files.length > 0) {
      this.notices.take('empty');
    }
    if (unopened.length > 0 && this.buffers.online) {
      this.server.tell('workspace/didChangeWatchedFiles', { changes: unopened });
      if (this.current !== undefined) {
        this.asking.all(this.view);
        this.bench.refresh();
      }
    }
  }

  private changedOnDisk(buffer: Buffer): void {
    const key = `disk ${buffer.path}`;
    if (buffer.gone) {
      this.notices.tell(key, `${buffer.path} is no longer on the disk. Saving writes it anew.`);
    } else if (buffer.foreign === undefined) {
      this.notices.tell(key, `${buffer.path} was changed on the disk; its new text is shown.`, [
        { label: 'Good', press: () => undefined },
      ]);
      this.retell();
    } else {
      this.notices.tell(
        key,
        `${buffer.path} was changed on the disk while you were writing. Nothing is overwritten until you decide.`,
        [
          {
            label: 'Show both',
            press: () => {
              this.conflict(buffer);
            },
          },
        ],
      );
    }
  }

  private conflict(buffer: Buffer): void {
    const { foreign } = buffer;
    if (foreign === undefined) {
      return;
    }
    this.changedOnDisk(buffer);
    showConflict(buffer.path, buffer.text, foreign.text, [
      {
        label: 'Save mine over it',
        press: () => {
          this.notices.take(`disk ${buffer.path}`);
          this.files.keepMine(buffer);
          void this.saveOne(buffer);
        },
      },
      {
        label: 'Take the text of the disk',
        press: () => {
          this.notices.take(`disk ${buffer.path}`);
          this.files.takeTheirs(buffer);
          this.retell();
        },
      },
      { label: 'Decide later', press: () => undefined },
    ]);
  }

  private broughtBack(buffer: Buffer, at: Date): void {
    const when = at.toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
    this.notices.tell(
      `draft ${buffer.path}`,
      `What you wrote in ${buffer.path} until ${when} and did not save is back.`,
      [
        { label: 'Keep it', press: () => undefined },
        {
          label: 'Back to the saved text',
          press: () => {
            buffer.change({
              changes: { from: 0, to: buffer.state.doc.length, insert: buffer.saved },
            });
          },
        },
      ],
    );
    if (buffer.foreign !== undefined) {
      this.changedOnDisk(buffer);
    }
  }

  /** A text was written in, or is as it is on the disk again: its state and its figures are told anew. */
  private retell(): void {
    this.bench.refresh();
    this.tellState();
  }

  private async bufferOf(uri: string): Promise<Buffer | null> {
    const open = this.buffers.getFile(uri);
    const listed = this.files.byUri(uri);
    if (open !== null || listed === undefined) {
      return open;
    }
    const buffer = await this.files.open(listed);
    const meanwhile = this.buffers.getFile(uri);
    if (meanwhile !== null) {
      return meanwhile;
    }
    this.buffers.add(buffer);
    return buffer;
  }

  private async open(file: Listed): Promise<void> {
    try {
      await this.display(file.uri);
    } catch (failure) {
      this.notices.tell('open', failure instanceof Refusal ? failure.message : String(failure));
    }
  }

  private async display(uri: string): Promise<EditorView | null> {
    const buffer = await this.bufferOf(uri);
    if (buffer === null) {
      await this.bench.page(uri);
      return null;
    }
    if (buffer !== this.current) {
      this.keepNow();
      this.client.sync();
      this.current?.leave();
      this.current = buffer;
      this.view.setState(buffer.state);
      buffer.view = this.view;
      history.replaceState(null, '', `#${encodeURIComponent(buffer.path)}`);
      this.asking.all(this.view);
      this.bench.opened();
      this.tellState();
      this.tellFindings();
    }
    return this.view;
  }

  private keepSoon(): void {
    clearTimeout(this.keeping);
    this.keeping = setTimeout(() => {
      this.keepNow();
    }, 250);
  }

  private keepNow(): void {
    clearTimeout(this.keeping);
    if (!this.ended) {
      this.buffers.files.forEach((buffer) => {
        this.files.keep(buffer);
      });
    }
  }

  /** Saves every text that is not saved, the one in front first; a conflict is shown and waits. */
  private async save(): Promise<void> {
    const { current } = this;
    const others = this.buffers.files.filter((file) => file !== current && file.isDirty);
    for (const buffer of current === undefined ? others : [current, ...others]) {
      await this.saveOne(buffer);
    }
    this.tellState();
  }

  private async saveOne(buffer: Buffer): Promise<void> {
    if (buffer.foreign !== undefined) {
      this.conflict(buffer);
      return;
    }
    const outcome = await this.files.save(buffer);
    if (outcome === 'conflict') {
      this.conflict(buffer);
    } else if (outcome === 'saved') {
      this.notices.take(`draft ${buffer.path}`);
      this.notices.take(`disk ${buffer.path}`);
    }
  }

  private tellState(): void {
    const { current } = this;
    const words = [];
    if (current !== undefined) {
      words.push(`${current.path} ${current.isDirty ? 'is not saved' : 'is saved'}`);
    }
    const others = this.buffers.files.filter((file) => file !== current && file.isDirty).length;
    if (others > 0) {
      words.push(`${String(others)} other ${others === 1 ? 'file is' : 'files are'} not saved`);
    }
    if (!this.buffers.online) {
      words.push('the language server is away');
    }
    const said = words.join('; ');
    const state = byId('state');
    if (state.textContent !== said) {
      state.textContent = said;
    }
    showCards(byId('cards'), this.buffers.files, current, (buffer) => {
      void this.display(buffer.uri).then(() => {
        this.view.focus();
      });
    });
  }

  private showFindings(view: EditorView, diagnostics: readonly Diagnostic[]): void {
    const uri = LSPPlugin.get(view)?.uri;
    if (uri !== undefined) {
      underline(view, diagnostics, (at) => {
        view.dispatch({ selection: { anchor: at } });
        void this.menu();
      });
      this.found.set(uri, diagnostics);
      this.tellFindings();
    }
  }

  private async folderFindings(): Promise<void> {
    const answer = await this.server
      .ask<{ items: { uri: string; items?: Diagnostic[] }[] }>('workspace/diagnostic', {
        previousResultIds: [],
      })
      .catch(() => undefined);
    for (const { uri, items } of answer?.items ?? []) {
      if (uri !== this.current?.uri) {
        this.found.set(uri, items ?? []);
      }
    }
    this.tellFindings();
  }

  private tellFindings(): void {
    const placed = [...this.found].flatMap(([uri, diagnostics]) => {
      const path = this.files.byUri(uri)?.path;
      return path === undefined
        ? []
        : diagnostics.map((diagnostic): Placed => ({ uri, path, diagnostic }));
    });
    this.findings.show(
      placed.sort(
        (a, b) =>
          (a.diagnostic.severity ?? 1) - (b.diagnostic.severity ?? 1) ||
          a.path.localeCompare(b.path) ||
          a.diagnostic.range.start.line - b.diagnostic.range.start.line,
      ),
      this.current?.uri,
      this.current !== undefined && this.found.has(this.current.uri),
    );
  }

  private async goToFinding({ uri, diagnostic }: Placed): Promise<void> {
    await this.goToPlace(uri, diagnostic.range.start.line, diagnostic.range.start.character);
  }

  private async goToPlace(uri: string, line: number, character = 0): Promise<void> {
    if ((await this.display(uri)) !== null) {
      this.goTo(line, character);
    }
  }

  private goTo(line: number, character = 0): void {
    const anchor = offsetOf(this.view.state.doc, { line, character });
    this.view.dispatch({
      selection: { anchor },
      effects: EditorView.scrollIntoView(anchor, { y: 'center' }),
    });
    this.view.focus();
  }

  private place(): { uri: string; line: number; dirty: boolean } | undefined {
    const { current } = this;
    if (current === undefined) {
      return undefined;
    }
    const { doc, selection } = this.view.state;
    return {
      uri: current.uri,
      line: positionOf(doc, selection.main.head).line,
      dirty: this.buffers.files.some((file) => file.isDirty),
    };
  }

  private async menu(): Promise<void> {
    const { current } = this;
    if (current === undefined) {
      return;
    }
    const { doc, selection } = this.view.state;
    const { from, to } = selection.main;
    try {
      const actions = await this.server.ask<(CodeAction | Command)[] | null>(
        'textDocument/codeAction',
        {
          textDocument: { uri: current.uri },
          range: rangeOf(doc, from, to),
          context: { diagnostics: [] },
        },
      );
      showMenu(actions ?? [], (action) => {
        void this.carryOut(action);
      });
    } catch (failure) {
      this.complain(failure);
    }
  }

  private async carryOut(action: CodeAction | Command): Promise<void> {
    if (typeof action.command === 'string') {
      await this.run(action as Command);
      return;
    }
    const chosen = action as CodeAction;
    try {
      const whole =
        chosen.edit === undefined && chosen.data !== undefined
          ? await this.server.ask<CodeAction>('codeAction/resolve', chosen)
          : chosen;
      if (whole.edit !== undefined && !(await this.apply(whole.edit))) {
        throw new Error('the text has changed meanwhile; ask again');
      }
      if (whole.command !== undefined) {
        await this.run(whole.command);
      }
      this.view.focus();
    } catch (failure) {
      this.complain(failure);
    }
  }

  private async run({ command, arguments: [argument] = [] }: Command): Promise<void> {
    const values = (argument ?? {}) as Record<string, string>;
    try {
      if (command === OWN_COMMANDS.scale) {
        await this.bench.scale();
      } else if (command === OWN_COMMANDS.table) {
        await this.bench.table(values);
      } else if (command === OWN_COMMANDS.whatIf) {
        await this.bench.whatIf(values);
      } else if (command !== '') {
        await this.server.run(command, values);
      }
    } catch (failure) {
      this.complain(failure);
    }
  }

  /** Applies an edit to as many files as it names; all of it, or nothing where a text has changed since. */
  private async apply(edit: WorkspaceEdit): Promise<boolean> {
    const files = filesOf(edit);
    if (files === undefined) {
      return false;
    }
    const targets = await Promise.all(
      files.map(async ({ uri, version, edits }) => {
        const wasOpen = this.buffers.getFile(uri) !== null;
        return { buffer: await this.bufferOf(uri), version: wasOpen ? version : undefined, edits };
      }),
    );
    this.client.sync();
    if (
      targets.some(
        ({ buffer, version }) =>
          buffer === null || (version !== undefined && version !== buffer.version),
      )
    ) {
      return false;
    }
    for (const { buffer, edits } of targets) {
      buffer?.change({
        changes: changesOf(buffer.state.doc, edits),
        userEvent: 'input.server',
      });
    }
    this.client.sync();
    this.keepNow();
    this.tellState();
    return true;
  }

  /** Asks for a new name of what stands at the cursor and writes it wherever it is used. */
  private askName(): void {
    const { current } = this;
    const { doc, selection } = this.view.state;
    const position = positionOf(doc, selection.main.head);
    if (current === undefined) {
      return;
    }
    const textDocument = { uri: current.uri };
    void this.server
      .ask<{ placeholder?: string } | null>('textDocument/prepareRename', {
        textDocument,
        position,
      })
      .then((ready) => {
        if (ready === null) {
          throw new Error('there is no name at the cursor that could be changed');
        }
        const input = h('input', {
          id: 'new-name',
          autocomplete: 'off',
          value: ready.placeholder ?? '',
        });
        const problem = h('p', { class: 'problem', role: 'alert' });
        const dialog = openDialog('Rename', [
          h(
            'form',
            {
              submit: (event) => {
                event.preventDefault();
                void this.rename(textDocument, position, input.value.trim()).then(
                  () => {
                    dialog.close();
                    this.view.focus();
                  },
                  (failure: unknown) => {
                    problem.textContent =
                      failure instanceof Error ? failure.message : String(failure);
                  },
                );
              },
            },
            h('label', { for: 'new-name' }, 'New name, in all files'),
            input,
            h('button', { type: 'submit', class: 'main' }, 'Rename'),
            problem,
          ),
        ]);
        input.select();
      })
      .catch((failure: unknown) => {
        this.complain(failure);
      });
  }

  private async rename(textDocument: object, position: object, newName: string): Promise<void> {
    const edit = await this.server.ask<WorkspaceEdit | null>('textDocument/rename', {
      textDocument,
      position,
      newName,
    });
    if (edit !== null && !(await this.apply(edit))) {
      throw new Error('the text has changed meanwhile; try again');
    }
  }

  private library(): void {
    showLibrary(this.files.list, {
      open: (path) => {
        const file = this.files.list.find((one) => one.path === path);
        if (file !== undefined) {
          void this.open(file).then(() => {
            this.view.focus();
          });
        }
      },
      create: (path) => this.create(path),
      tally: (uri) => tally(this.found.get(uri) ?? []),
    });
  }

  private async create(path: string): Promise<string> {
    try {
      if (!(await this.files.create(path, ''))) {
        return `${path} is there already`;
      }
      await this.files.look();
      const file = this.files.list.find((one) => one.path === path);
      if (file !== undefined) {
        await this.open(file);
        this.view.focus();
      }
      return '';
    } catch (failure) {
      return failure instanceof Error ? failure.message : String(failure);
    }
  }

  /** What the server asks of this page; undefined for what it does not know. */
  private answer(method: string, params: unknown): unknown {
    switch (method) {
      case 'workspace/applyEdit': {
        const { edit } = params as { edit: WorkspaceEdit };
        return this.apply(edit).then((applied) => ({ applied }));
      }
      case 'window/showDocument': {
        const { uri } = params as { uri: string };
        void this.display(uri);
        return { success: true };
      }
      case 'workspace/diagnostic/refresh':
      case 'workspace/inlayHint/refresh':
      case 'workspace/codeLens/refresh':
        if (this.current !== undefined) {
          this.asking.all(this.view);
        }
        return null;
      default:
        return undefined;
    }
  }

  private async end(): Promise<void> {
    this.keepNow();
    this.ended = true;
    this.link.end();
    await endServer().catch(() => undefined);
    this.notices.tell(
      'link',
      'The workbench has ended. What is not saved is kept by this browser and comes back with kettlemark open.',
    );
  }

  private complain(failure: unknown): void {
    this.notices.tell('failure', failure instanceof Error ? failure.message : String(failure), [
      { label: 'Good', press: () => undefined },
    ]);
  }
}

/** A formula to begin with, and not the house or the pantry. */
function firstOf(files: readonly Listed[]): Listed | undefined {
  return (
    files.find(({ path }) => !/^(house|pantry|products|sheets|trials)\.kettle$/.test(path)) ??
    files[0]
  );
}
