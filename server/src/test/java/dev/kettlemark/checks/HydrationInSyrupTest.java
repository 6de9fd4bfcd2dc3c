package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class HydrationInSyrupTest {

  private final RuleFixture hydrationInSyrup = RuleFixture.of(new HydrationInSyrup());

  @Test
  void marksAgarInASyrup() {
    hydrationInSyrup.check("""
        formula jelly
        stage pot
          70 %   white-sugar
          1 %    agar
          29 %   water
          boil   for 3 min
          ^^^^ hydration-in-syrup: `agar` should take up water here, among 70.6 % sugar; it stands 40.0 %
        stage slab
          all of pot
          set    for 4 h
        """);
  }

  @Test
  void isContentWithFreeWater() {
    hydrationInSyrup.check("""
        formula jelly
        stage pot
          39 %   white-sugar
          1 %    agar
          60 %   water
          boil   for 3 min
        stage slab
          all of pot
          set    for 4 h
        """);
  }

  @Test
  void isAnErrorInAThickSyrup() {
    hydrationInSyrup.checkSeverity(Severity.ERROR, """
        formula jelly
        stage pot
          70 %   white-sugar
          1 %    agar
          29 %   water
          boil   for 3 min
        stage slab
          all of pot
          set    for 4 h
        """);
  }

  @Test
  void isAWarningInAThinnerOne() {
    hydrationInSyrup.checkSeverity(Severity.WARNING, """
        formula jelly
        stage pot
          55 %   white-sugar
          1 %    agar
          44 %   water
          boil   for 3 min
        stage slab
          all of pot
          set    for 4 h
        """);
  }

  @Test
  void isWorthKnowingJustAboveThePantryLimit() {
    hydrationInSyrup.checkSeverity(Severity.INFORMATION, """
        formula jelly
        stage pot
          33 %   white-sugar
          0.5 %  gellan-low-acyl
          66 %   water
          boil   for 3 min
        """);
  }

  @Test
  void leavesColdAgentsToOthers() {
    hydrationInSyrup.check("""
        formula jelly
        stage pot
          70 %   white-sugar
          1 %    agar
          29 %   water
          mix    for 3 min
        """);
  }

  @Test
  void boilsItInItsWaterFirst() {
    hydrationInSyrup.checkFix("Boil it in `water` first", """
        formula jelly
        stage pot
          70 %   white-sugar
          1 %    agar
          29 %   water
          boil   for 3 min
        stage slab
          all of pot
          set    for 4 h
        """, """
        formula jelly
        stage pot
          70 %   white-sugar
          1 %    agar
          29 %   water
          sprinkle  agar into water
          boil      agar for 2 min until hydrated
          boil   for 3 min
        stage slab
          all of pot
          set    for 4 h
        """);
  }
}
