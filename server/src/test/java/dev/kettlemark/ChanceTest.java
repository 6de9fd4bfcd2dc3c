package dev.kettlemark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ChanceTest {

  private static List<Integer> drawn(int rounds, long first) {
    List<Integer> drawn = new ArrayList<>();
    Chance.rounds(rounds, Optional.empty(), first, random -> drawn.add(random.nextInt(1_000_000)));
    return drawn;
  }

  @Test
  void playsTheSameRoundUnderTheSameNumber() {
    assertEquals(drawn(40, 1).subList(17, 40), drawn(23, 18));
  }

  @Test
  void beginsEachRoundDifferently() {
    Set<Integer> tenths = new HashSet<>();
    drawn(200, 1).forEach(figure -> tenths.add(figure / 100_000));
    assertEquals(10, tenths.size());
    assertNotEquals(drawn(1, 1), drawn(1, 2));
  }

  @Test
  void tellsTheNumberOfTheRoundThatFails() {
    AssertionError failure = assertThrows(
        AssertionError.class,
        () -> Chance.rounds(9, Optional.empty(), 4700, random -> {
          if (drawn(1, 4707).equals(List.of(random.nextInt(1_000_000)))) {
            throw new IllegalStateException("too sweet");
          }
        }));
    assertEquals("round 4707, again with -Dkettlemark.seed=4707: too sweet", failure.getMessage());
    assertTrue(failure.getCause() instanceof IllegalStateException);
  }

  @Test
  void playsUntilTheBudgetIsSpent() {
    long start = System.nanoTime();
    int played = Chance.rounds(1, Optional.of(Duration.ofMillis(50)), 1, random -> Thread.sleep(1));
    assertTrue(System.nanoTime() - start >= 50_000_000);
    assertTrue(played > 1, played + " rounds");
  }

  @Test
  void playsOneRoundWithoutAnyBudget() {
    assertEquals(1, Chance.rounds(7, Optional.of(Duration.ZERO), 1, random -> {}));
  }
}
