package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

/** By hand for 28 % on 42 g: of centre 0.28 × 42 = 11.76 g, of finished 42 × 0.28 / 0.72 = 16.33 g. */
class CoatWithoutBasisTest {

  private final RuleFixture coatWithoutBasis = RuleFixture.of(new CoatWithoutBasis());

  @Test
  void tellsBothReadingsInGrams() {
    coatWithoutBasis.check("""
        product bite
          centre 42.0 g soft-nougat
          coat 28 % couverture-dark-62
               ^^^^ coat-without-basis: 28 % of what: of finished it is 16.3 g a piece, of centre 11.8 g
        """);
  }

  @Test
  void countsTheOtherPartsOfThePiece() {
    coatWithoutBasis.check("""
        product bite
          centre 10.0 g soft-nougat
          filling 5.0 g chewy-caramel
          coat 25 % couverture-dark-62
               ^^^^ coat-without-basis: 25 % of what: of finished it is 5.00 g a piece, of centre 2.50 g
        """);
  }

  @Test
  void staysQuietWhereTheBasisOrAWeightStands() {
    coatWithoutBasis.check("""
        product bite
          centre 10.0 g soft-nougat
          filling 5.0 g chewy-caramel
          layer 10 % of centre chewy-caramel
          coat 25 % of finished couverture-dark-62
          loss 5 %
          spare 60 % couverture-dark-62
        """);
  }

  @Test
  void saysNoGramsWithoutACentre() {
    coatWithoutBasis.check("""
        product bite
          coat 28 % couverture-dark-62
               ^^^^ coat-without-basis: 28 % of what
        """);
  }

  @Test
  void addsOfFinishedFirst() {
    coatWithoutBasis.checkFirstFix("Add `of finished`, 16.3 g a piece", """
        product bite
          centre 42.0 g soft-nougat
          coat 28 % couverture-dark-62
        """, """
        product bite
          centre 42.0 g soft-nougat
          coat 28 % of finished couverture-dark-62
        """);
  }

  @Test
  void addsOfCentre() {
    coatWithoutBasis.checkFix("Add `of centre`, 11.8 g a piece", """
        product bite
          centre 42.0 g soft-nougat
          coat 28 % couverture-dark-62
        """, """
        product bite
          centre 42.0 g soft-nougat
          coat 28 % of centre couverture-dark-62
        """);
  }
}
