package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class BelowScaleTest {

  private final RuleFixture belowScale = RuleFixture.of(new BelowScale());

  @Test
  void marksADoseThatTheScaleCannotShow() {
    belowScale.check("""
        house small
          scale   bench reads 1 g to 6000 g
        formula paste
          batch   470 g
        stage pan
          99.90 % icing-sugar
           0.10 % xanthan-gum
                  ^^^^^^^^^^^ below-scale: 0.470 g of `xanthan-gum` is little for scale `bench`, which reads 1 g
        """);
  }

  @Test
  void takesTheFinestScale() {
    belowScale.check("""
        house small
          scale   bench reads 1 g to 6000 g
          scale   fine reads 0.01 g to 200 g
        formula paste
          batch   470 g
        stage pan
          99.90 % icing-sugar
           0.10 % xanthan-gum
        """);
  }

  @Test
  void takesAScaleThatHoldsTheAmount() {
    belowScale.check("""
        house small
          scale   pocket reads 0.01 g to 10 g
          scale   floor reads 50 g to 60000 g
        formula paste
          batch   500 g
        stage pan
          90.00 % icing-sugar
                  ^^^^^^^^^^^ below-scale: 450.0 g of `icing-sugar` is little for scale `floor`, which reads 50 g
          10.00 % water
                  ^^^^^ below-scale: 50.0 g of `water` is little for scale `floor`, which reads 50 g
        """);
  }

  @Test
  void isStricterWithWhatActsByASmallDose() {
    belowScale.check("""
        house small
          scale   bench reads 1 g to 6000 g
        formula paste
          batch   1000 g
        stage pan
           1.50 % honey
           1.50 % xanthan-gum
                  ^^^^^^^^^^^ below-scale: 15.0 g of `xanthan-gum` is little for scale `bench`, which reads 1 g
          97.00 % icing-sugar
        """);
  }

  @Test
  void allowsTheLimitItself() {
    belowScale.check("""
        house small
          scale   bench reads 1 g to 6000 g
        formula paste
          batch   1000 g
        stage pan
           1.00 % honey
           2.00 % xanthan-gum
          97.00 % icing-sugar
        """);
  }

  @Test
  void saysNothingWithoutAHouseOrABatch() {
    belowScale.check("""
        formula paste
          batch   470 g
        stage pan
          99.90 % icing-sugar
           0.10 % xanthan-gum
        """);
  }

  @Test
  void seesABatchThatAVariantMakesSmaller() {
    belowScale.check("""
        house small
          scale   bench reads 1 g to 6000 g
          scale   fine reads 0.01 g to 200 g
        formula paste
          batch   470 g
        stage pan
          99.90 % icing-sugar
           0.10 % xanthan-gum

        variant trial-size of paste
                              ^^^^^ below-scale: 0.100 g of `xanthan-gum` is little for scale `fine`, which reads 0.01 g
          batch   100 g
        """);
  }

  @Test
  void isAnErrorOnlyForWhatActsByASmallDose() {
    belowScale.checkSeverity(Severity.ERROR, """
        house small
          scale   bench reads 1 g to 6000 g
        formula paste
          batch   500 g
        stage pan
          99.90 % icing-sugar
           0.10 % xanthan-gum
        """);
    belowScale.checkSeverity(Severity.WARNING, """
        house small
          scale   bench reads 1 g to 6000 g
        formula paste
          batch   500 g
        stage pan
          99.00 % icing-sugar
           1.00 % honey
        """);
  }

  /** By hand: 0.5 g in 1 + 49 parts is 25 g of mix with 24.5 g of sugar, and one gram is 4 % of it. */
  @Test
  void proposesAPremixWithASugarOfTheStage() {
    belowScale.checkNote(
        "mix 1 part of it with 49 parts of `icing-sugar`, weigh 25.0 g of the mix, and weigh 24.5 g"
            + " less of `icing-sugar`",
        """
        house small
          scale   bench reads 1 g to 6000 g
        formula paste
          batch   500 g
        stage pan
          99.90 % icing-sugar
           0.10 % xanthan-gum
        """);
  }

  @Test
  void saysHowCoarseTheScaleIsWhereNothingCarriesAPremix() {
    belowScale.checkNote(
        "one step of the scale is 200.0 % of it; make a larger batch, or weigh it on a finer scale",
        """
        house small
          scale   bench reads 1 g to 6000 g
        formula paste
          batch   500 g
        stage pan
          99.90 % water
           0.10 % xanthan-gum
        """);
  }
}
