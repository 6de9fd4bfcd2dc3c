package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class ShortCoatingBathTest {

  private final RuleFixture shortCoatingBath = RuleFixture.of(new ShortCoatingBath());

  /** By hand: 42 g · 28 / 72 · 37 = 604.3 g. */
  @Test
  void marksACoatWithoutSpare() {
    shortCoatingBath.check("""
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished couverture-dark-62
               ^^^^ short-coating-bath: 604.3 g of `couverture-dark-62` stays on the pieces, and no spare is planned
          make 37 pieces
        """);
  }

  /** By hand: 42 g · 28 / 72 · 8 = 130.7 g, and 196.0 g with the spare. */
  @Test
  void marksABathTooSmallToTemper() {
    shortCoatingBath.check("""
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished couverture-dark-62
               ^^^^ short-coating-bath: 196.0 g of `couverture-dark-62` with its spare is less than the 250 g that can be worked with
          make 8 pieces
          spare 50 %
        """);
  }

  @Test
  void isContentWithASpare() {
    shortCoatingBath.check("""
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished couverture-dark-62
          make 37 pieces
          spare 50 %
        """);
  }

  @Test
  void leavesASugarCoatAlone() {
    shortCoatingBath.check("""
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished icing-sugar
          make 37 pieces
        """);
  }

  @Test
  void plansASpare() {
    shortCoatingBath.checkFix("Plan a spare of 50 %", """
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished couverture-dark-62
          make 37 pieces
        """, """
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished couverture-dark-62
          make 37 pieces
          spare 50 % couverture-dark-62
        """);
  }

  @Test
  void plansALargerSpare() {
    shortCoatingBath.checkFix("Plan a spare of 92 %", """
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished couverture-dark-62
          make 8 pieces
          spare 50 %
        """, """
        formula paste
          batch 1700 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          coat 28 % of finished couverture-dark-62
          make 8 pieces
          spare 92 %
        """);
  }
}
