package dev.kettlemark.bench.stdio;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;

/**
 * A floor: the protocol's library as it comes, and nothing behind it.
 *
 * <p>With {@code parse} it keeps the text and reads all of it anew at each change, with our own grammar and
 * nothing else: what a server costs that only finds mistakes of syntax.
 */
public final class EchoServer implements LanguageServer, LanguageClientAware {

  private final Consumer<Edit> reader;
  private LanguageClient client;

  /** One message about a text: the whole of it where it was opened, otherwise its changes. */
  record Edit(String whole, List<TextDocumentContentChangeEvent> changes) {}

  private EchoServer(Consumer<Edit> reader) {
    this.reader = reader;
  }

  public static void main(String[] arguments) throws InterruptedException, ExecutionException {
    boolean parses = arguments.length > 0 && arguments[0].equals("parse");
    EchoServer server = new EchoServer(parses ? new WholeReader() : edit -> {});
    Launcher<LanguageClient> launcher =
        LSPLauncher.createServerLauncher(server, System.in, System.out);
    server.connect(launcher.getRemoteProxy());
    launcher.startListening().get();
    System.exit(0);
  }

  @Override
  public void connect(LanguageClient to) {
    client = to;
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    ServerCapabilities capabilities = new ServerCapabilities();
    capabilities.setTextDocumentSync(TextDocumentSyncKind.Incremental);
    return CompletableFuture.completedFuture(new InitializeResult(capabilities));
  }

  @Override
  public CompletableFuture<Object> shutdown() {
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void exit() {
    System.exit(0);
  }

  private void answer(String uri, int version) {
    client.publishDiagnostics(new PublishDiagnosticsParams(uri, List.of(), version));
  }

  @Override
  public TextDocumentService getTextDocumentService() {
    return new TextDocumentService() {
      @Override
      public void didOpen(DidOpenTextDocumentParams params) {
        reader.accept(new Edit(params.getTextDocument().getText(), List.of()));
        answer(params.getTextDocument().getUri(), params.getTextDocument().getVersion());
      }

      @Override
      public void didChange(DidChangeTextDocumentParams params) {
        reader.accept(new Edit("", params.getContentChanges()));
        answer(params.getTextDocument().getUri(), params.getTextDocument().getVersion());
      }

      @Override
      public void didClose(DidCloseTextDocumentParams params) {}

      @Override
      public void didSave(DidSaveTextDocumentParams params) {}
    };
  }

  @Override
  public WorkspaceService getWorkspaceService() {
    return new WorkspaceService() {
      @Override
      public void didChangeConfiguration(DidChangeConfigurationParams params) {}

      @Override
      public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {}
    };
  }
}
