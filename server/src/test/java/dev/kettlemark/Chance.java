package dev.kettlemark;

import java.time.Duration;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;

/**
 * Rounds of random input, each with a number that makes it again.
 *
 * <p>The usual build plays a fixed number of rounds. {@code -Dkettlemark.fuzz.seconds=600} plays each test for
 * that long instead, and {@code -Dkettlemark.seed=4711} begins with that round, which is how a failure is
 * looked at.
 */
public final class Chance {

  private static final String SECONDS = "kettlemark.fuzz.seconds";
  private static final String FIRST = "kettlemark.seed";

  private Chance() {}

  /** What is tried with the input of one round; it must not know of other rounds. */
  public interface Round {
    void with(Random random) throws Exception;
  }

  /**
   * Plays the usual number of rounds, or as many as the budget has time for.
   *
   * @return how many were played
   */
  public static int rounds(int usual, Round round) {
    return rounds(usual, budget(), first(), round);
  }

  /** Plays for the usual time, or for the budget; so many rounds at least. */
  public static int rounds(Duration usual, int fewest, Round round) {
    int played = rounds(fewest, budget().or(() -> Optional.of(usual)), first(), round);
    if (played < fewest) {
      throw new AssertionError(played + " rounds only");
    }
    return played;
  }

  static int rounds(int usual, Optional<Duration> budget, long first, Round round) {
    long start = System.nanoTime();
    int played = 0;
    while (budget.isEmpty() ? played < usual : isWithin(budget.get(), start) || played == 0) {
      play(first + played, round);
      played++;
    }
    return played;
  }

  private static Optional<Duration> budget() {
    return Optional.ofNullable(Long.getLong(SECONDS)).map(Duration::ofSeconds);
  }

  private static long first() {
    return Long.getLong(FIRST, 1);
  }

  private static boolean isWithin(Duration budget, long start) {
    return System.nanoTime() - start < budget.toNanos();
  }

  private static void play(long number, Round round) {
    try {
      round.with(random(number));
    } catch (Exception | AssertionError | StackOverflowError failure) {
      throw new AssertionError(
          "round " + number + ", again with -D" + FIRST + "=" + number + ": "
              + failure.getMessage(),
          failure);
    }
  }

  /** Numbers that follow each other would begin nearly alike if they were seeds themselves. */
  private static Random random(long number) {
    return new Random(new SplittableRandom(number).nextLong());
  }
}
