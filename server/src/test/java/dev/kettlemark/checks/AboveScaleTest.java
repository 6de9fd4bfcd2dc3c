package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class AboveScaleTest {

  private final RuleFixture aboveScale = RuleFixture.of(new AboveScale());

  @Test
  void marksMoreThanTheLargestScaleHolds() {
    aboveScale.check("""
        house small
          scale bench reads 1 g to 6000 g
          scale fine reads 0.01 g to 200 g
        formula paste
          batch 12000 g
        stage pan
          60 % icing-sugar
               ^^^^^^^^^^^ above-scale: 7200 g of `icing-sugar` is more than scale `bench` holds, 6000 g
          40 % water
        """);
  }

  @Test
  void isContentAtTheCapacity() {
    aboveScale.check("""
        house small
          scale bench reads 1 g to 6000 g
          scale fine reads 0.01 g to 200 g
        formula paste
          batch 10000 g
        stage pan
          60 % icing-sugar
          40 % water
        """);
  }

  @Test
  void saysNothingWithoutScales() {
    aboveScale.check("""
        formula paste
          batch 12000 g
        stage pan
          60 % icing-sugar
          40 % water
        """);
  }
}
