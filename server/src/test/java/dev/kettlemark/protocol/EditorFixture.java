package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Today;
import dev.kettlemark.files.CacheFolder;
import dev.kettlemark.protocol.wire.MessageCheck;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeActionCapabilities;
import org.eclipse.lsp4j.CodeActionKindCapabilities;
import org.eclipse.lsp4j.CodeActionLiteralSupportCapabilities;
import org.eclipse.lsp4j.ConfigurationItem;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentClientCapabilities;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageServer;

/** An editor at the other end of a pipe: it opens, types, and waits for what the server says. */
final class EditorFixture implements AutoCloseable {

  private static final long PATIENCE_SECONDS = 20;

  /** The client's library complains of pipes that a test closes; nobody need read that. */
  private static final Logger CLIENT_LOG = Logger.getLogger("org.eclipse.lsp4j");

  static {
    CLIENT_LOG.setLevel(Level.OFF);
    System.setProperty(CacheFolder.PROPERTY, Path.of("target", "cache").toString());
  }

  private final RecordingClient client = new RecordingClient();
  private final LanguageServer server;
  private final Thread serving;
  private final CompletableFuture<Integer> exitCode = new CompletableFuture<>();
  private final Map<String, String> texts = new ConcurrentHashMap<>();
  private final Map<String, Integer> versions = new ConcurrentHashMap<>();
  private final InitializeResult initialized;
  private final MessageCheck check = new MessageCheck();

  private EditorFixture(InitializeParams params) throws Exception {
    this(params, item -> "");
  }

  private EditorFixture(InitializeParams params, Function<ConfigurationItem, Object> settings)
      throws Exception {
    this(params, settings, () -> Today.DAY);
  }

  private EditorFixture(
      InitializeParams params,
      Function<ConfigurationItem, Object> settings,
      Supplier<LocalDate> today)
      throws Exception {
    client.settings = settings;
    PipedInputStream toServer = new PipedInputStream(1 << 16);
    PipedInputStream toClient = new PipedInputStream(1 << 16);
    OutputStream fromClient = check.ofClient(new PipedOutputStream(toServer));
    OutputStream fromServer = check.ofServer(new PipedOutputStream(toClient));
    serving = new Thread(() -> exitCode.complete(
        KettlemarkServer.serve("test", toServer, fromServer, OptionalLong.empty(), today)));
    serving.setDaemon(true);
    serving.start();
    var launcher = LSPLauncher.createClientLauncher(client, toClient, fromClient);
    var unused = launcher.startListening();
    server = launcher.getRemoteProxy();
    initialized = server.initialize(params).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    server.initialized(new InitializedParams());
  }

  static EditorFixture withoutFolder() throws Exception {
    return new EditorFixture(params());
  }

  /** An editor on a machine whose clock somebody may set. */
  static EditorFixture at(Supplier<LocalDate> today) throws Exception {
    return new EditorFixture(params(), item -> "", today);
  }

  static EditorFixture onFolder(Path folder) throws Exception {
    InitializeParams params = params();
    params.setWorkspaceFolders(List.of(new WorkspaceFolder(folder.toUri().toString(), "kitchen")));
    return new EditorFixture(params);
  }

  /** An editor of some kind on folders. */
  static EditorFixture onFolders(InitializeParams params, Path... folders) throws Exception {
    return onFolders(params, item -> "", folders);
  }

  /**
   * An editor of some kind on folders.
   *
   * @param settings what it answers when it is asked for settings
   */
  static EditorFixture onFolders(
      InitializeParams params, Function<ConfigurationItem, Object> settings, Path... folders)
      throws Exception {
    params.setWorkspaceFolders(Stream.of(folders)
        .map(folder ->
            new WorkspaceFolder(folder.toUri().toString(), String.valueOf(folder.getFileName())))
        .toList());
    return new EditorFixture(params, settings);
  }

  /** An editor that can what it says. */
  static EditorFixture onFolder(Path folder, ClientCapabilities capabilities) throws Exception {
    InitializeParams params = params();
    params.setCapabilities(capabilities);
    params.setWorkspaceFolders(List.of(new WorkspaceFolder(folder.toUri().toString(), "kitchen")));
    return new EditorFixture(params);
  }

  /** An editor that fills in placeholders of edits. */
  static EditorFixture readingSnippets() throws Exception {
    InitializeParams params = params();
    WorkspaceEditCapabilities edits = new WorkspaceEditCapabilities();
    edits.setDocumentChanges(true);
    edits.setSnippetEditSupport(true);
    WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
    workspace.setWorkspaceEdit(edits);
    params.getCapabilities().setWorkspace(workspace);
    return new EditorFixture(params);
  }

  static EditorFixture counting(String encoding) throws Exception {
    InitializeParams params = params();
    GeneralClientCapabilities general = new GeneralClientCapabilities();
    general.setPositionEncodings(List.of(encoding));
    params.getCapabilities().setGeneral(general);
    return new EditorFixture(params);
  }

  /** Any editor that the test describes. */
  static EditorFixture with(InitializeParams params) throws Exception {
    return new EditorFixture(params);
  }

  /** An editor of the usual kind: it reads code actions and applies edits, and is told findings. */
  static InitializeParams params() {
    InitializeParams params = new InitializeParams();
    CodeActionCapabilities actions = new CodeActionCapabilities();
    actions.setCodeActionLiteralSupport(
        new CodeActionLiteralSupportCapabilities(new CodeActionKindCapabilities(List.of(""))));
    actions.setDisabledSupport(true);
    TextDocumentClientCapabilities text = new TextDocumentClientCapabilities();
    text.setCodeAction(actions);
    ClientCapabilities capabilities = new ClientCapabilities();
    capabilities.setTextDocument(text);
    params.setCapabilities(capabilities);
    return params;
  }

  /** What both sides have said. */
  MessageCheck said() {
    return check;
  }

  RecordingClient client() {
    return client;
  }

  LanguageServer server() {
    return server;
  }

  InitializeResult initialized() {
    return initialized;
  }

  void open(String uri, String text) {
    texts.put(uri, text);
    versions.put(uri, 1);
    server
        .getTextDocumentService()
        .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "kettlemark", 1, text)));
  }

  /** Replaces the only occurrence of a text, as typing does. */
  void type(String uri, String old, String fresh) {
    String text = text(uri);
    int start = text.indexOf(old);
    if (start < 0) {
      throw new AssertionError("`" + old + "` does not stand in " + text);
    }
    Range range = new Range(position(text, start), position(text, start + old.length()));
    texts.put(uri, text.substring(0, start) + fresh + text.substring(start + old.length()));
    change(uri, range, fresh);
  }

  void change(String uri, Range range, String fresh) {
    int version = versions.merge(uri, 1, Integer::sum);
    server
        .getTextDocumentService()
        .didChange(new DidChangeTextDocumentParams(
            new VersionedTextDocumentIdentifier(uri, version),
            List.of(new TextDocumentContentChangeEvent(range, fresh))));
  }

  void close(String uri) {
    server
        .getTextDocumentService()
        .didClose(new DidCloseTextDocumentParams(new TextDocumentIdentifier(uri)));
  }

  String text(String uri) {
    return Objects.requireNonNull(texts.get(uri));
  }

  int version(String uri) {
    return Objects.requireNonNull(versions.get(uri));
  }

  /** The findings of the text as it stands, once the server has told them. */
  List<Diagnostic> diagnostics(String uri) throws InterruptedException {
    return diagnostics(uri, version(uri));
  }

  /** What the server says of a file that no editor holds. */
  List<Diagnostic> diagnosticsOfClosed(String uri) throws InterruptedException {
    while (true) {
      PublishDiagnosticsParams told = next();
      if (told.getUri().equals(uri) && told.getVersion() == null) {
        return told.getDiagnostics();
      }
    }
  }

  private List<Diagnostic> diagnostics(String uri, int version) throws InterruptedException {
    while (true) {
      PublishDiagnosticsParams told = next();
      if (told.getUri().equals(uri) && told.getVersion() != null && told.getVersion() == version) {
        return told.getDiagnostics();
      }
    }
  }

  private PublishDiagnosticsParams next() throws InterruptedException {
    return RecordingClient.next(client.told);
  }

  <T> T await(CompletableFuture<T> answer) throws Exception {
    T given = answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
    assertEquals(List.of(), check.faults());
    return given;
  }

  static TextDocumentIdentifier id(String uri) {
    return new TextDocumentIdentifier(uri);
  }

  /** Where a text stands, in UTF-16 units. */
  Position positionOf(String uri, String what) {
    String text = text(uri);
    int offset = text.indexOf(what);
    if (offset < 0) {
      throw new AssertionError("`" + what + "` does not stand in " + text);
    }
    return position(text, offset);
  }

  static Position position(String text, int offset) {
    int line = (int) text.substring(0, offset).chars().filter(c -> c == '\n').count();
    return new Position(line, offset - (text.lastIndexOf('\n', offset - 1) + 1));
  }

  /** Applies edits as an editor would, from the last to the first. */
  static String applied(String text, List<? extends TextEdit> edits) {
    StringBuilder result = new StringBuilder(text);
    edits.stream()
        .sorted((a, b) -> Integer.compare(
            offset(text, b.getRange().getStart()), offset(text, a.getRange().getStart())))
        .forEach(edit -> result.replace(
            offset(text, edit.getRange().getStart()),
            offset(text, edit.getRange().getEnd()),
            edit.getNewText()));
    return result.toString();
  }

  static int offset(String text, Position position) {
    int start = 0;
    for (int line = 0; line < position.getLine(); line++) {
      start = text.indexOf('\n', start) + 1;
    }
    return start + position.getCharacter();
  }

  int shutDown() throws Exception {
    await(server.shutdown());
    server.exit();
    return await(exitCode);
  }

  /** Ends the server; every message of both sides must have been as the protocol describes it. */
  @Override
  public void close() throws IOException {
    server.exit();
    serving.interrupt();
    assertEquals(List.of(), check.faults());
  }
}
