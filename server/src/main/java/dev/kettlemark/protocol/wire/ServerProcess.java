package dev.kettlemark.protocol.wire;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.jsonrpc.RemoteEndpoint;
import org.eclipse.lsp4j.jsonrpc.json.JsonRpcMethod;
import org.eclipse.lsp4j.jsonrpc.json.MessageJsonHandler;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;
import org.eclipse.lsp4j.jsonrpc.services.ServiceEndpoints;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/**
 * Runs a language server over a pair of byte streams until its client is gone.
 *
 * <p>Four daemon threads share the work, so that none can hold up another: one reads and checks; one calls the server,
 * message after message in the order of arrival; one hands it the client's answers, so that a call may wait for them;
 * one writes. A fifth looks after the parent process.
 */
public final class ServerProcess {

  private static final Logger LOG = Logger.getLogger(ServerProcess.class.getName());

  /** For the last calls, and again for the last answers, after the end; together well below a second. */
  private static final Duration GRACE = Duration.ofMillis(300);

  private final Lifecycle lifecycle = new Lifecycle();
  private final CompletableFuture<String> ending = new CompletableFuture<>();
  private final Backlog backlog = new Backlog(ending::complete);
  private final FrameReader frames;
  private final MessageDecoder decoder;
  private final Outbox outbox;
  private final RemoteEndpoint remote;

  private ServerProcess(
      LanguageServer server, Class<?> clientType, InputStream in, OutputStream out) {
    Map<String, JsonRpcMethod> methods =
        new LinkedHashMap<>(ServiceEndpoints.getSupportedMethods(clientType));
    methods.putAll(ServiceEndpoints.getSupportedMethods(server.getClass()));
    MessageJsonHandler json = new MessageJsonHandler(methods, builder -> {
      WholeNumbers.register(builder);
      NullVersions.register(builder);
      Resent.register(builder);
    });
    frames = new FrameReader(in);
    decoder = new MessageDecoder(json);
    CallListener listener =
        server instanceof CallListener own ? own : (method, outcome, took) -> {};
    outbox = new Outbox(out, json, ending::complete);
    remote = new RemoteEndpoint(
        outbox, new Fence(ServiceEndpoints.toEndpoint(server), listener), Fence::describe);
    json.setMethodProvider(remote);
    remote.setJsonHandler(json);
  }

  /**
   * Serves one client; returns when it has sent {@code exit}, closed a pipe or died.
   *
   * <p>All threads that this method starts are daemons, but the one that reads may still wait for input, so the caller
   * should end the process. The streams stay open.
   *
   * @param server answers the calls; its own methods, and those of its segments, may add requests to LSP's
   * @param clientType what the server may ask of its client, LSP's methods and any of its own
   * @param connect is handed the client before the first call
   * @param in what the client sends
   * @param out what the client reads; nothing else may be written to it
   * @param parentProcess the process to end with; the client's {@code initialize} may name another
   * @return the exit code of LSP 3.17: 0 if the client had asked for shutdown, otherwise 1
   */
  public static <C extends LanguageClient> int run(
      LanguageServer server,
      Class<C> clientType,
      Consumer<C> connect,
      InputStream in,
      OutputStream out,
      OptionalLong parentProcess) {
    ServerProcess process = new ServerProcess(server, clientType, in, out);
    connect.accept(ServiceEndpoints.toServiceObject(process.remote, clientType));
    parentProcess.ifPresent(process::endWith);
    return process.serve();
  }

  private int serve() {
    outbox.start();
    Thread reader = new Thread(this::readAll, "kettlemark-reader");
    reader.setDaemon(true);
    reader.start();
    String reason = ending.join();
    // That a client leaves as it should is no news.
    LOG.log(lifecycle.exitCode() == 0 ? Level.FINE : Level.INFO, "the server ends: {0}", reason);
    try {
      if (!backlog.close(GRACE)) {
        LOG.warning("a call did not return in time");
      }
      outbox.close(GRACE);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
    return lifecycle.exitCode();
  }

  private void readAll() {
    try {
      boolean more = true;
      while (more && !ending.isDone()) {
        more = readOne();
      }
      ending.complete("the client has left");
    } catch (IOException broken) {
      ending.complete(String.valueOf(broken.getMessage()));
    } finally {
      ending.complete("the reader failed");
    }
  }

  /** Reads one message; says whether another may follow. */
  private boolean readOne() throws IOException {
    try {
      Optional<String> text = frames.next();
      return text.isPresent() && accept(text.get());
    } catch (Refusal refusal) {
      refuse(refusal);
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError failure) {
      LOG.log(Level.SEVERE, "bug: a message could not be read", failure);
      refuse(Refusal.of(ResponseErrorCode.InternalError, "internal error while reading a message"));
    }
    return true;
  }

  private boolean accept(String text) throws Refusal {
    Envelope envelope = Envelope.of(text);
    lifecycle.admit(envelope);
    Message message = decoder.decode(envelope);
    lifecycle.passed(envelope);
    if (message instanceof RequestMessage request
        && request.getParams() instanceof InitializeParams params) {
      Optional.ofNullable(params.getProcessId()).ifPresent(this::endWith);
    }
    if (message instanceof ResponseMessage) {
      backlog.answer(text.length(), () -> remote.consume(message));
    } else {
      backlog.call(text.length(), () -> remote.consume(message));
    }
    return !Lifecycle.isExit(envelope);
  }

  /** Answers from the thread of the calls: the reader must not wait for a client that does not read. */
  private void refuse(Refusal refusal) {
    LOG.fine(() -> "refused: " + refusal.getMessage());
    refusal.answer().ifPresent(answer -> backlog.call(1, () -> outbox.consume(answer)));
  }

  private void endWith(long processId) {
    ParentWatch.start(processId, () -> ending.complete("process " + processId + " is gone"));
  }
}
