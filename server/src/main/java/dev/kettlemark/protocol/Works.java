package dev.kettlemark.protocol;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.lsp4j.PartialResultParams;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.WorkDoneProgressParams;
import org.eclipse.lsp4j.jsonrpc.CompletableFutures;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/**
 * All work that is under way, and the two ways to stop it: cancelling the request, and the button beside
 * its progress. Both end in the same answer.
 */
final class Works {

  private final Executor workers;
  private final Supplier<LanguageClient> client;
  private final Map<Either<String, Integer>, AtomicBoolean> stops = new ConcurrentHashMap<>();
  private final AtomicInteger lastToken = new AtomicInteger();

  Works(Executor workers, Supplier<LanguageClient> client) {
    this.workers = workers;
    this.client = client;
  }

  /** Does work on another thread, telling under the token of its request how far it is. */
  <T extends @Nullable Object> CompletableFuture<T> start(
      WorkDoneProgressParams params, String title, Function<Work, T> job) {
    Optional<Either<String, Integer>> token = Optional.ofNullable(params.getWorkDoneToken());
    Optional<Progress> progress =
        token.map(given -> new Progress(client.get()::notifyProgress, given, title, true));
    AtomicBoolean stop = new AtomicBoolean();
    token.ifPresent(given -> stops.put(given, stop));
    return CompletableFutures.computeAsync(workers, request -> {
      Work work = new Work(request, progress, stop);
      try {
        work.check();
        progress.ifPresent(Progress::open);
        return job.apply(work);
      } finally {
        progress.ifPresent(Progress::end);
        token.ifPresent(given -> stops.remove(given, stop));
      }
    });
  }

  /** Does work at once that no request asked for; the client opens a place to show it, if it has one. */
  void own(boolean shown, String title, Consumer<Work> job) {
    if (!shown) {
      job.accept(Work.unwatched());
      return;
    }
    Either<String, Integer> token = Either.forLeft("kettlemark-" + lastToken.incrementAndGet());
    Progress progress = new Progress(client.get()::notifyProgress, token, title, false);
    Work work = new Work(() -> {}, Optional.of(progress), new AtomicBoolean());
    // Nobody waits for the answer: work must not hang on a client that gives none.
    var unused = client
        .get()
        .createProgress(new WorkDoneProgressCreateParams(token))
        .thenRun(progress::open);
    try {
      job.accept(work);
    } finally {
      progress.end();
    }
  }

  /** The user wants to wait no longer. */
  void stop(Either<String, Integer> token) {
    Optional.ofNullable(stops.get(token)).ifPresent(stop -> stop.set(true));
  }

  /** Where parts of a result go; empty for a request that wants its answer whole. */
  <T> Optional<Consumer<List<T>>> parts(PartialResultParams params) {
    return parts(params, part -> part);
  }

  /** Where parts of a result go, in the form of the request. */
  <T> Optional<Consumer<List<T>>> parts(
      PartialResultParams params, Function<List<T>, Object> form) {
    return Optional.ofNullable(params.getPartialResultToken())
        .map(token -> part -> client
            .get()
            .notifyProgress(new ProgressParams(token, Either.forRight(form.apply(part)))));
  }
}
