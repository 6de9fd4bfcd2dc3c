package dev.kettlemark.protocol;

import dev.kettlemark.Today;
import dev.kettlemark.files.CacheFolder;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.GeneralClientCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
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

  private final Client client = new Client();
  private final LanguageServer server;
  private final Thread serving;
  private final CompletableFuture<Integer> exitCode = new CompletableFuture<>();
  private final Map<String, String> texts = new ConcurrentHashMap<>();
  private final Map<String, Integer> versions = new ConcurrentHashMap<>();
  private final InitializeResult initialized;

  private EditorFixture(InitializeParams params) throws Exception {
    PipedInputStream toServer = new PipedInputStream(1 << 16);
    PipedInputStream toClient = new PipedInputStream(1 << 16);
    PipedOutputStream fromClient = new PipedOutputStream(toServer);
    PipedOutputStream fromServer = new PipedOutputStream(toClient);
    serving = new Thread(() -> exitCode.complete(KettlemarkServer.serve(
        "test", toServer, fromServer, OptionalLong.empty(), () -> Today.DAY)));
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

  static EditorFixture onFolder(Path folder) throws Exception {
    InitializeParams params = params();
    params.setWorkspaceFolders(List.of(new WorkspaceFolder(folder.toUri().toString(), "kitchen")));
    return new EditorFixture(params);
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

  private static InitializeParams params() {
    InitializeParams params = new InitializeParams();
    params.setCapabilities(new ClientCapabilities());
    return params;
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
    PublishDiagnosticsParams told = client.told.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (told == null) {
      throw new AssertionError("the server told nothing");
    }
    return told;
  }

  <T> T await(CompletableFuture<T> answer) throws Exception {
    return answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
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

  private static int offset(String text, Position position) {
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

  @Override
  public void close() throws IOException {
    server.exit();
    serving.interrupt();
  }

  private static final class Client implements LanguageClient {

    final BlockingQueue<PublishDiagnosticsParams> told = new LinkedBlockingQueue<>();

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
      told.add(diagnostics);
    }

    @Override
    public void telemetryEvent(Object object) {
      throw new AssertionError("the server sends nothing about its user");
    }

    @Override
    public void showMessage(MessageParams message) {}

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(
        ShowMessageRequestParams request) {
      return CompletableFuture.completedFuture(null);
    }

    @Override
    public void logMessage(MessageParams message) {}
  }
}
