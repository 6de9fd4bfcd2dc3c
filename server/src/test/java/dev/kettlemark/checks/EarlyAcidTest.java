package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class EarlyAcidTest {

  private final RuleFixture earlyAcid = RuleFixture.of(new EarlyAcid());

  @Test
  void marksAcidInTheSamePot() {
    earlyAcid.check("""
        formula jelly
        stage pot
          1 %    pectin-hm-slow
          6 %    caster-sugar
          1 %    citric-acid
                 ^^^^^^^^^^^ early-acid: `citric-acid` goes in before `pectin-hm-slow` has taken up water
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
          boil   for 2 min
        stage slab
          all of pot
          set    for 20 h
        """);
  }

  @Test
  void leavesATraceAlone() {
    earlyAcid.check("""
        formula jelly
        stage pot
          1 %    pectin-hm-slow
          6 %    caster-sugar
          0.05 % citric-acid
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
          boil   for 2 min
        stage slab
          all of pot
          set    for 20 h
        """);
  }

  @Test
  void isContentWithAcidAfterTheBoil() {
    earlyAcid.check("""
        formula jelly
        stage pot
          1 %    agar
          90 %   water
          sprinkle agar into water
          boil   for 2 min
        stage body
          1 %    citric-acid
          all of pot
          mix    citric-acid, pot
        """);
  }

  @Test
  void leavesGelatineInJuiceAlone() {
    earlyAcid.check("""
        formula jelly
        stage pot
          2 %    gelatine-200
          90 %   lemon-juice
          sprinkle gelatine-200 into lemon-juice
          soak   for 10 min
        """);
  }

  @Test
  void isAnError() {
    earlyAcid.checkSeverity(Severity.ERROR, """
        formula jelly
        stage pot
          1 %    pectin-hm-slow
          6 %    caster-sugar
          1 %    citric-acid
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
          boil   for 2 min
        stage slab
          all of pot
          set    for 20 h
        """);
  }

  @Test
  void isDoubtfulBesideABuffer() {
    earlyAcid.checkSeverity(Severity.WARNING, """
        formula jelly
        stage pot
          1 %    pectin-hm-slow
          6 %    caster-sugar
          1 %    citric-acid
          0.3 %  trisodium-citrate
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
          boil   for 2 min
        stage slab
          all of pot
          set    for 20 h
        """);
  }

  @Test
  void addsItLater() {
    earlyAcid.checkFix("Add it in `slab` instead", """
        formula jelly
        stage pot
          1 %    pectin-hm-slow
          6 %    caster-sugar
          1 %    citric-acid
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
          boil   for 2 min
        stage slab
          all of pot
          set    for 20 h
        """, """
        formula jelly
        stage pot
          1 %    pectin-hm-slow
          6 %    caster-sugar
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
          boil   for 2 min
        stage slab
          1 %    citric-acid
          all of pot
          mix       citric-acid into pot
          set    for 20 h
        """);
  }

  @Test
  void leavesASourFruitAlone() {
    earlyAcid.check("""
        formula jelly
        stage pot
          1 %    pectin-hm-slow
          6 %    caster-sugar
          30 %   lemon-juice
          90 %   water
          blend  pectin-hm-slow, caster-sugar
          sprinkle pectin-hm-slow into water
          boil   for 2 min
        stage slab
          all of pot
          set    for 20 h
        """);
  }

  @Test
  void leavesStarchCookedWithAcidAlone() {
    earlyAcid.check("""
        formula lokum
        stage pot
          10 %   thin-boiling-starch
          0.5 %  citric-acid
          80 %   water
          mix    all
          boil   for 10 min
        """);
  }
}
