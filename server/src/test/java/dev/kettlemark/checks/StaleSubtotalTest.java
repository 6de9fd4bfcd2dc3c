package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class StaleSubtotalTest {

  private final RuleFixture staleSubtotal = RuleFixture.of(new StaleSubtotal());

  @Test
  void marksAStaleSubtotal() {
    staleSubtotal.check("""
        formula mix
          batch 1000 g
        stage pan
          57.00 % white-sugar
          1.00 % citric-acid
          check subtotal 57.00 %
                         ^^^^^^^ stale-subtotal: `pan` adds up to 58.00 %, not 57.00 %
        stage jar
          42.00 % icing-sugar
          all of pan
        """);
  }

  @Test
  void marksStaleGrams() {
    staleSubtotal.check("""
        formula mix
          batch 1000 g
        stage pan
          57.00 % white-sugar
          1.00 % citric-acid
          check subtotal 570 g
                         ^^^^^ stale-subtotal: `pan` adds up to 580 g, not 570 g
        stage jar
          42.00 % icing-sugar
          all of pan
        """);
  }

  @Test
  void isContent() {
    staleSubtotal.check("""
        formula mix
          batch 1000 g
        stage pan
          57.00 % white-sugar
          1.00 % citric-acid
          check subtotal 58.00 %
        stage jar
          42.00 % icing-sugar
          all of pan
        formula other
          batch 1000 g
        stage pan
          57.00 % white-sugar
          1.00 % citric-acid
          check subtotal 580 g
        stage jar
          42.00 % icing-sugar
          all of pan
        """);
  }

  @Test
  void writesTheSum() {
    staleSubtotal.checkFix("Write `58.00 %`", """
        formula mix
          batch 1000 g
        stage pan
          57.00 % white-sugar
          1.00 % citric-acid
          check subtotal 57.00 %
        stage jar
          42.00 % icing-sugar
          all of pan
        """, """
        formula mix
          batch 1000 g
        stage pan
          57.00 % white-sugar
          1.00 % citric-acid
          check subtotal 58.00 %
        stage jar
          42.00 % icing-sugar
          all of pan
        """);
  }
}
