package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class IdleCavitiesTest {

  private final RuleFixture idleCavities = RuleFixture.of(new IdleCavities());

  @Test
  void tellsOfEmptyCavities() {
    idleCavities.check("""
        house small
          mould dome has 12 pieces of 9.5 mL
        formula paste
          batch 1000 g
        stage pan
          60 % icing-sugar
          40 % water
        product bite
          centre 10 g paste
          make 37 pieces in dome
               ^^^^^^^^^ idle-cavities: 37 pieces take 4 moulds `dome`, and the last one has 11 of 12 cavities empty
        """);
  }

  @Test
  void isContentWithFullMoulds() {
    idleCavities.check("""
        house small
          mould dome has 12 pieces of 9.5 mL
        formula paste
          batch 1000 g
        stage pan
          60 % icing-sugar
          40 % water
        product bite
          centre 10 g paste
          make 36 pieces in dome
        """);
  }

  @Test
  void looksWhereAFormulaIsDeposited() {
    idleCavities.check("""
        house small
          mould dome has 12 pieces of 9.5 mL
        formula paste
          batch 1000 g
          makes 30 pieces of 10 g
                ^^^^^^^^^ idle-cavities: 30 pieces take 3 moulds `dome`, and the last one has 6 of 12 cavities empty
        stage pan
          60 % icing-sugar
          40 % water
          deposit into dome
        """);
  }

  @Test
  void makesFewer() {
    idleCavities.checkFix("Make 36 pieces", """
        house small
          mould dome has 12 pieces of 9.5 mL
        formula paste
          batch 1000 g
        stage pan
          60 % icing-sugar
          40 % water
        product bite
          centre 10 g paste
          make 37 pieces in dome
        """, """
        house small
          mould dome has 12 pieces of 9.5 mL
        formula paste
          batch 1000 g
        stage pan
          60 % icing-sugar
          40 % water
        product bite
          centre 10 g paste
          make 36 pieces in dome
        """);
  }

  @Test
  void makesMore() {
    idleCavities.checkFix("Make 48 pieces", """
        house small
          mould dome has 12 pieces of 9.5 mL
        formula paste
          batch 1000 g
        stage pan
          60 % icing-sugar
          40 % water
        product bite
          centre 10 g paste
          make 37 pieces in dome
        """, """
        house small
          mould dome has 12 pieces of 9.5 mL
        formula paste
          batch 1000 g
        stage pan
          60 % icing-sugar
          40 % water
        product bite
          centre 10 g paste
          make 48 pieces in dome
        """);
  }
}
