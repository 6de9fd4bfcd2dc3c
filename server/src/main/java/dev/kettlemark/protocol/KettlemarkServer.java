package dev.kettlemark.protocol;

import dev.kettlemark.protocol.wire.CallListener;
import dev.kettlemark.protocol.wire.ServerProcess;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.InitializedParams;
import org.eclipse.lsp4j.LogTraceParams;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.TraceValue;
import org.eclipse.lsp4j.WorkDoneProgressCancelParams;
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
public final class KettlemarkServer implements LanguageServer, CallListener {

  private static final int WORKERS = 2;

  /** Of two that wait it takes the one that worked last, whose processor has the formula at hand. */
  private final ExecutorService workers =
      new ForkJoinPool(WORKERS, KettlemarkServer::worker, null, true);

  private final String version;
  private final ServerState state;
  private final DocumentService documents;
  private final LibraryService library;
  private volatile String trace = TraceValue.Off;

  private KettlemarkServer(
      String version, Supplier<LanguageClient> client, Supplier<LocalDate> today) {
    this.version = version;
    this.state = new ServerState(workers, client, today);
    this.documents = new DocumentService(state);
    this.library = new LibraryService(state);
  }

  private static ForkJoinWorkerThread worker(ForkJoinPool pool) {
    ForkJoinWorkerThread worker = ForkJoinPool.defaultForkJoinWorkerThreadFactory.newThread(pool);
    worker.setName("kettlemark-worker");
    return worker;
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
    try {
      return ServerProcess.run(server, LanguageClient.class, client::set, in, out, parentProcess);
    } finally {
      // A client that just goes must leave nothing behind in a process that serves others too.
      server.exit();
    }
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    state.initialize(params);
    trace = params.getTrace() == null ? TraceValue.Off : params.getTrace();
    return CompletableFuture.completedFuture(new InitializeResult(
        Capabilities.of(state.traits()), new ServerInfo("kettlemark", version)));
  }

  @Override
  public void initialized(InitializedParams params) {
    List<Registration> wanted = Capabilities.registrations(state.traits());
    if (!wanted.isEmpty()) {
      // Nobody waits for the answer: a client that cannot tell sends no events, which is all.
      var unused = state.client().registerCapability(new RegistrationParams(wanted));
    }
    state.begin();
  }

  @Override
  public CompletableFuture<@Nullable Object> shutdown() {
    workers.shutdown();
    state.close();
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void exit() {
    workers.shutdownNow();
    state.close();
  }

  @Override
  public void setTrace(SetTraceParams params) {
    trace = params.getValue();
  }

  @Override
  public void cancelProgress(WorkDoneProgressCancelParams params) {
    state.works().stop(params.getToken());
  }

  /** Language Server Protocol 3.17, "LogTrace Notification": more only where the client wants more. */
  @Override
  public void answered(String method, String outcome, Duration took) {
    String wanted = trace;
    if (wanted.equals(TraceValue.Messages) || wanted.equals(TraceValue.Verbose)) {
      LogTraceParams told =
          new LogTraceParams(method + " " + outcome + " in " + took.toMillis() + " ms");
      if (wanted.equals(TraceValue.Verbose)) {
        Runtime machine = Runtime.getRuntime();
        told.setVerbose(((machine.totalMemory() - machine.freeMemory()) >> 20) + " MiB in use, by "
            + Thread.currentThread().getName());
      }
      state.client().logTrace(told);
    }
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
