package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class SyrupIntoUnwhippedFoamTest {

  private final RuleFixture unwhippedFoam = RuleFixture.of(new SyrupIntoUnwhippedFoam());

  @Test
  void marksAFoamThatWasNeverWhipped() {
    unwhippedFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          mix     for 1 min
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
                             ^^^^ syrup-into-unwhipped-foam: hot syrup meets `foam` before it is whipped
          whip    on high until stiff-peak
        """);
  }

  @Test
  void doubtsAFoamThatIsNotSaidToBeAtSoftPeak() {
    unwhippedFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    on medium for 5 min
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          pour    syrup into foam
                             ^^^^ syrup-into-unwhipped-foam: `foam` is whipped, but not said to be at soft peak
          whip    on high until stiff-peak
        """);
  }

  @Test
  void isContentWithSoftPeakOrMore() {
    unwhippedFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    on medium until firm-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
          whip    on high until stiff-peak
        """);
  }

  @Test
  void looksAtAFoamInTheSameStage() {
    unwhippedFoam.check("""
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          30 %    egg-white-pasteurised
          all of  syrup
          pour    syrup into egg-white-pasteurised
                             ^^^^^^^^^^^^^^^^^^^^^ syrup-into-unwhipped-foam: hot syrup meets `egg-white-pasteurised` before it is whipped
          whip    on high until stiff-peak
        """);
  }

  @Test
  void leavesAColdSyrupAlone() {
    unwhippedFoam.check("""
        formula meringue
        stage body
          30 %    egg-white-pasteurised
          70 %    glucose-syrup-42
          pour    glucose-syrup-42 into egg-white-pasteurised
          whip    on high until stiff-peak
        """);
  }

  @Test
  void leavesAProteinThatIsNotWhippedAlone() {
    unwhippedFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          mix     for 1 min
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
          mix     for 1 min
        """);
  }

  @Test
  void leavesAMassWithoutFoamingAgentAlone() {
    unwhippedFoam.check("""
        formula marshmallow
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          30 %    invert-syrup
          all of  syrup
          pour    syrup into invert-syrup
          whip    on high until firm-peak
        """);
  }

  @Test
  void marksAFoamThatAVariantMakesAnew() {
    unwhippedFoam.check("""
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
          whip    on high until stiff-peak

        variant lazy of meringue
                        ^^^^^^^^ syrup-into-unwhipped-foam: hot syrup meets `foam` before it is whipped
        stage foam again
          mix     for 1 min
        """);
  }

  @Test
  void whipsTheFoamFirst() {
    unwhippedFoam.checkFix("Whip it until soft-peak first", """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          mix     for 1 min
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
          whip    on high until stiff-peak
        """, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          mix     for 1 min
          whip      on medium until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
          whip    on high until stiff-peak
        """);
  }

  @Test
  void saysHowFarToWhip() {
    unwhippedFoam.checkFix("Whip it until soft-peak", """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    on medium for 5 min
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
          whip    on high until stiff-peak
        """, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    on medium for 5 min until soft-peak
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam while whisking on medium
          whip    on high until stiff-peak
        """);
  }

  @Test
  void whipsInTheSameStageBeforeThePour() {
    unwhippedFoam.checkFix("Whip it until soft-peak first", """
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          30 %    egg-white-pasteurised
          all of  syrup
          pour    syrup into egg-white-pasteurised
          whip    on high until stiff-peak
        """, """
        formula meringue
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          30 %    egg-white-pasteurised
          all of  syrup
          whip      on medium until soft-peak
          pour    syrup into egg-white-pasteurised
          whip    on high until stiff-peak
        """);
  }

  @Test
  void isMilderWhereTheFoamIsWhippedSomehow() {
    unwhippedFoam.checkSeverity(Severity.ERROR, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          mix     for 1 min
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
          whip    on high until stiff-peak
        """);
    unwhippedFoam.checkSeverity(Severity.WARNING, """
        formula meringue
        stage foam
          30 %    egg-white-pasteurised
          whip    for 5 min
        stage syrup
          50 %    white-sugar
          20 %    water
          cook    to 119 °C
        stage body
          all of  foam
          all of  syrup
          stream  syrup into foam
          whip    on high until stiff-peak
        """);
  }
}
