package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** All tests run on 2026-11-25. */
class OverdueReviewTest {

  private final RuleFixture overdueReview = RuleFixture.of(new OverdueReview());

  @Test
  void marksWhatIsDue() {
    overdueReview.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          reviewed  on 2021-04-02 every 12 months
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ overdue-review: the figures of `lime-honey` were due for a review on 2022-04-02
        """);
  }

  @Test
  void staysQuietOnTheLastDay() {
    overdueReview.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          reviewed  on 2025-11-25 every 12 months
        """);
  }

  @Test
  void countsOtherUnits() {
    overdueReview.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          reviewed  on 2026-11-01 every 3 weeks
          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ overdue-review: the figures of `lime-honey` were due for a review on 2026-11-22
        """);
  }

  @Test
  void leavesAReviewWithoutIntervalAlone() {
    overdueReview.check("""
        ingredient lime-honey
          role      sweetening
          contains  18 % water, 74 % fructose, 8 % other
          reviewed  on 2021-04-02
        """);
  }
}
