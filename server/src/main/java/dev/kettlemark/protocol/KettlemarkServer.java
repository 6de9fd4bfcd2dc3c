package dev.kettlemark.protocol;

import dev.kettlemark.protocol.wire.ServerProcess;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import org.jspecify.annotations.Nullable;

/**
 * The language server: what it can do, and when it starts and ends.
 *
 * <p>Life-cycle rules, exit codes and broken messages are the wire's business.
 */
public final class KettlemarkServer implements LanguageServer {

  private static final int WORKERS = 2;

  private final ExecutorService workers = Executors.newFixedThreadPool(WORKERS, task -> {
    Thread thread = new Thread(task, "kettlemark-worker");
    thread.setDaemon(true);
    return thread;
  });

  private final String version;
  private final ServerState state;
  private final DocumentService documents;
  private final LibraryService library;

  private KettlemarkServer(
      String version, Supplier<LanguageClient> client, Supplier<LocalDate> today) {
    this.version = version;
    this.state = new ServerState(workers, client, today);
    this.documents = new DocumentService(state);
    this.library = new LibraryService(state);
  }

  /**
   * Serves one client until it is gone.
   *
   * @param version of the program, told to the client
   * @param in what the client sends
   * @param out what the client reads; nothing else may be written to it
   * @param parentProcess the process to end with
   * @param today tells the day
   * @return the exit code that the protocol asks for
   */
  public static int serve(
      String version,
      InputStream in,
      OutputStream out,
      OptionalLong parentProcess,
      Supplier<LocalDate> today) {
    AtomicReference<@Nullable LanguageClient> client = new AtomicReference<>();
    KettlemarkServer server =
        new KettlemarkServer(version, () -> Objects.requireNonNull(client.get()), today);
    return ServerProcess.run(server, LanguageClient.class, client::set, in, out, parentProcess);
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    state.initialize(params);
    return CompletableFuture.completedFuture(new InitializeResult(
        Capabilities.of(state.traits()), new ServerInfo("kettlemark", version)));
  }

  @Override
  public void initialized(InitializedParams params) {
    if (state.traits().watchesOnRequest()) {
      // Nobody waits for the answer: a client that cannot watch sends no events, which is all.
      var unused = state.client().registerCapability(Capabilities.watchedFiles());
    }
    state.publishAll();
  }

  @Override
  public CompletableFuture<Object> shutdown() {
    workers.shutdown();
    return CompletableFuture.completedFuture(new Object());
  }

  @Override
  public void exit() {
    workers.shutdownNow();
  }

  @Override
  public void setTrace(SetTraceParams params) {
    // The wire keeps no trace of its own; clients log what passes.
  }

  @Override
  public TextDocumentService getTextDocumentService() {
    return documents;
  }

  @Override
  public WorkspaceService getWorkspaceService() {
    return library;
  }
}
