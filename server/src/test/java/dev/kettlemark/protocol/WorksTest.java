package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.WorkDoneProgressBegin;
import org.eclipse.lsp4j.WorkDoneProgressEnd;
import org.eclipse.lsp4j.WorkDoneProgressReport;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Slow work that is watched and stopped; the work itself is made up. */
class WorksTest {

  private static final int STEPS = 2000;

  private final RecordingClient client = new RecordingClient();
  private final ExecutorService threads = Executors.newFixedThreadPool(2);
  private final Works works = new Works(threads, () -> client);
  private final AtomicInteger done = new AtomicInteger();
  private final CountDownLatch begun = new CountDownLatch(3);
  private final CountDownLatch over = new CountDownLatch(1);

  @AfterEach
  void endTheThreads() {
    threads.shutdownNow();
  }

  private static ReferenceParams request() {
    ReferenceParams params = new ReferenceParams();
    params.setWorkDoneToken("w");
    params.setPartialResultToken(Either.forLeft("p"));
    return params;
  }

  /** Twenty seconds of work, if nobody stops it. */
  private CompletableFuture<String> slowly() {
    return works.start(request(), "Searching", work -> {
      try {
        for (int i = 0; i < STEPS; i++) {
          work.step(i, STEPS);
          done.incrementAndGet();
          begun.countDown();
          TimeUnit.MILLISECONDS.sleep(10);
        }
        return "all";
      } catch (InterruptedException stopped) {
        throw new AssertionError(stopped);
      } finally {
        over.countDown();
      }
    });
  }

  @Test
  void aCancelledRequestStopsItsWork() throws Exception {
    CompletableFuture<String> answer = slowly();
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    answer.cancel(true);
    assertTrue(over.await(10, TimeUnit.SECONDS));
    assertTrue(done.get() < STEPS, () -> "went on to step " + done);
    assertTrue(answer.isCancelled());
  }

  @Test
  void theButtonBesideTheProgressStopsIt() throws Exception {
    CompletableFuture<String> answer = slowly();
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    works.stop(Either.forLeft("w"));
    assertTrue(over.await(10, TimeUnit.SECONDS));
    assertTrue(done.get() < STEPS, () -> "went on to step " + done);
    ExecutionException failure =
        assertThrows(ExecutionException.class, () -> answer.get(10, TimeUnit.SECONDS));
    assertTrue(failure.getCause() instanceof CancellationException);
  }

  @Test
  void aTokenOfOtherWorkStopsNothing() throws Exception {
    var unused = slowly();
    assertTrue(begun.await(10, TimeUnit.SECONDS));
    works.stop(Either.forLeft("another"));
    assertFalse(over.await(200, TimeUnit.MILLISECONDS));
  }

  @Test
  void progressBeginsOnceRisesAndEndsOnce() throws Exception {
    works
        .start(
            request(),
            "Searching",
            work ->
                work.forEach(IntStream.range(0, 300).boxed().toList(), List::of, Optional.empty()))
        .get(10, TimeUnit.SECONDS);
    List<ProgressParams> told = new ArrayList<>(client.progress);
    assertTrue(told.get(0).getValue().getLeft() instanceof WorkDoneProgressBegin);
    assertTrue(told.get(told.size() - 1).getValue().getLeft() instanceof WorkDoneProgressEnd);
    List<Integer> percents = told.subList(1, told.size() - 1).stream()
        .map(each -> ((WorkDoneProgressReport) each.getValue().getLeft()).getPercentage())
        .toList();
    assertEquals(percents.stream().sorted().distinct().toList(), percents);
    assertEquals(100, percents.get(percents.size() - 1));
    assertTrue(percents.size() <= 101, () -> percents.size() + " reports");
  }

  @Test
  void partsTogetherAreTheWholeAndTheAnswerRepeatsNone() throws Exception {
    List<Integer> rest = works
        .start(
            request(),
            "Searching",
            work -> work.forEach(
                IntStream.range(0, 300).boxed().toList(),
                List::of,
                works.<Integer>parts(request())))
        .get(10, TimeUnit.SECONDS);
    assertEquals(List.of(), rest);
    List<Object> parts = new ArrayList<>();
    for (ProgressParams each : client.progress) {
      if (each.getToken().equals(Either.forLeft("p"))) {
        parts.addAll((List<?>) each.getValue().getRight());
      }
    }
    assertEquals(IntStream.range(0, 300).boxed().toList(), parts);
  }

  @Test
  void workOfTheServersOwnIsShownOnlyWhereTheClientShowsIt() {
    works.own(false, "Opening", work -> work.step(1, 2));
    assertEquals(0, client.created.size() + client.progress.size());
    works.own(true, "Opening", work -> work.step(1, 2));
    assertEquals(1, client.created.size());
    assertEquals(
        List.of("begin", "report", "end"),
        client.progress.stream()
            .map(each -> each.getValue().getLeft().getKind().name())
            .toList());
  }

  @Test
  void progressThatIsOpenedTooLateTellsNothing() {
    List<ProgressParams> told = new ArrayList<>();
    Progress late = new Progress(told::add, Either.forLeft("w"), "Opening", false);
    late.report(1, 2);
    late.end();
    late.open();
    assertEquals(List.of(), told);
    Progress later = new Progress(told::add, Either.forLeft("w"), "Opening", false);
    later.report(1, 2);
    later.open();
    WorkDoneProgressBegin begin = (WorkDoneProgressBegin) told.get(0).getValue().getLeft();
    assertEquals(50, begin.getPercentage());
    assertEquals("1 of 2", begin.getMessage());
  }
}
