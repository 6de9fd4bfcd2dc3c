package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class LossTwiceTest {

  private final RuleFixture lossTwice = RuleFixture.of(new LossTwice());

  @Test
  void tellsOfTwoLosses() {
    lossTwice.check("""
        formula paste
          batch 1700 g
          makes 37 pieces of 42 g with 4 % loss
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          make 37 pieces
          loss 3 % of centre
               ^^^ loss-twice: a loss of 3.00 % stands here, and one of 4.00 % in `makes` of `paste`
        """);
  }

  @Test
  void isContentWithOne() {
    lossTwice.check("""
        formula paste
          batch 1700 g
          makes 37 pieces of 42 g
        stage pan
          60 % icing-sugar
          40 % water
        product bar
          centre 42 g paste
          make 37 pieces
          loss 3 % of centre
        formula other
          batch 1700 g
          makes 37 pieces of 42 g with 4 % loss
        stage pan
          60 % icing-sugar
          40 % water
        product slab
          centre 42 g other
          make 37 pieces
        """);
  }
}
