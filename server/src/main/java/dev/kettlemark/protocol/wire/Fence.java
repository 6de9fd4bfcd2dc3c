package dev.kettlemark.protocol.wire;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.jsonrpc.Endpoint;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * Keeps one failed call from harming another.
 *
 * <p>Whatever a handler throws, stack overflow and exhausted memory included, becomes a failed answer to that call
 * alone. The client gets a short sentence, the log the whole story.
 */
final class Fence implements Endpoint {

  private static final Logger LOG = Logger.getLogger(Fence.class.getName());

  private final Endpoint server;
  private final CallListener listener;

  Fence(Endpoint server, CallListener listener) {
    this.server = server;
    this.listener = listener;
  }

  @Override
  public CompletableFuture<?> request(String method, Object params) {
    long start = System.nanoTime();
    CompletableFuture<?> answer = answer(method, params);
    var unused = answer.whenComplete((result, failure) -> listener.answered(
        method,
        failure == null ? "answered" : answer.isCancelled() ? "cancelled" : "failed",
        Duration.ofNanos(System.nanoTime() - start)));
    return answer;
  }

  private CompletableFuture<?> answer(String method, Object params) {
    try {
      CompletableFuture<?> answer = server.request(method, params);
      return answer != null
          ? answer
          : CompletableFuture.failedFuture(new NullPointerException(method));
    } catch (Throwable failure) {
      return CompletableFuture.failedFuture(failure);
    }
  }

  @Override
  public void notify(String method, Object params) {
    try {
      server.notify(method, params);
    } catch (Throwable failure) {
      if (!isNotImplemented(failure)) {
        LOG.log(Level.SEVERE, "bug: " + method + " failed", failure);
      }
    }
  }

  /** What the client is told about a failed request. */
  static ResponseError describe(Throwable failure) {
    Throwable cause = failure;
    while ((cause instanceof CompletionException || cause instanceof ExecutionException)
        && cause.getCause() != null) {
      cause = cause.getCause();
    }
    if (cause instanceof ResponseErrorException deliberate) {
      return deliberate.getResponseError();
    }
    if (isNotImplemented(cause)) {
      return new ResponseError(
          ResponseErrorCode.MethodNotFound, "this server does not have the method", null);
    }
    LOG.log(Level.SEVERE, "bug: a request failed", cause);
    String name = cause.getClass().getSimpleName();
    return new ResponseError(
        ResponseErrorCode.InternalError,
        "internal error (" + name + "); the server's log says more",
        null);
  }

  /** LSP4J's default methods throw this themselves; thrown by anyone else it is a bug like any other. */
  private static boolean isNotImplemented(Throwable failure) {
    StackTraceElement[] trace = failure.getStackTrace();
    return failure instanceof UnsupportedOperationException
        && trace.length > 0
        && trace[0].getClassName().startsWith("org.eclipse.lsp4j.services.");
  }
}
