package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnusedAmountTest {

  private final RuleFixture unusedAmount = RuleFixture.of(new UnusedAmount());

  @Test
  void marksWhatNoStepNames() {
    unusedAmount.check("""
        formula filling
        stage paste
          79.80 % almond-paste
          20.00 % honey
           0.20 % sea-salt
                  ^^^^^^^^ unused-amount: `sea-salt` is weighed in `paste`, but no step uses it
          mix     almond-paste, honey
        """);
  }

  @Test
  void takesABareStepToUseEverything() {
    unusedAmount.check("""
        formula syrup
        stage pan
          50.00 % white-sugar
          50.00 % water
          boil    under lid for 3 min until dissolved
          cook    to 118 °C
        """);
  }

  @Test
  void doesNotTakeWhippingAFoamFurtherToUseWhatWaitsBesideIt() {
    unusedAmount.check("""
        formula nougat
        stage foam
          20.00 % egg-white-pasteurised
          whip    on medium until soft-peak
        stage body
          79.80 % honey
           0.20 % sea-salt
                  ^^^^^^^^ unused-amount: `sea-salt` is weighed in `body`, but no step uses it
          all of  foam
          stream  honey into foam
          whip    on high for 3 min
        """);
  }

  @Test
  void takesTheFirstWhipToUseEverything() {
    unusedAmount.check("""
        formula foam
        stage foam
           5.00 % egg-white-powder
          95.00 % water
          whip    on high until soft-peak
        """);
  }

  @Test
  void doesNotTakeWaitingForAMassToUseWhatIsMissingInIt() {
    unusedAmount.check("""
        formula filling
        stage paste
          99.80 % almond-paste
           0.20 % sea-salt
                  ^^^^^^^^ unused-amount: `sea-salt` is weighed in `paste`, but no step uses it
          mix     almond-paste
          rest    for 12 h
          cut     20 x 20 mm
        """);
  }

  @Test
  void takesAWaitAsTheFirstStepToUseEverything() {
    unusedAmount.check("""
        formula soaked
        stage jar
          50.00 % raisin
          50.00 % water
          stand   for 12 h
        """);
  }

  @Test
  void countsNamesBehindConnectives() {
    unusedAmount.check("""
        formula dusted
        stage slab
          95.00 % almond-paste
           5.00 % icing-sugar
          spread  almond-paste
          dust    almond-paste with icing-sugar
        """);
  }

  @Test
  void countsTheMembersOfABasis() {
    unusedAmount.check("""
        formula warm
          basis   liquid = water, honey
        stage pan
          50.00 % water
          50.00 % honey
          warm    liquid to 40 °C
        """);
  }

  @Test
  void saysNothingOfAStageThatHasNoStepsYet() {
    unusedAmount.check("""
        formula filling
        stage paste
          79.80 % almond-paste
        """);
  }

  @Test
  void doesNotTakeANeverForAUse() {
    unusedAmount.check("""
        formula filling
        stage paste
          99.80 % almond-paste
           0.20 % sea-salt
                  ^^^^^^^^ unused-amount: `sea-salt` is weighed in `paste`, but no step uses it
          mix     almond-paste
          never   add sea-salt early
        """);
  }

  @Test
  void marksWhatAVariantAddsAndForgets() {
    unusedAmount.check("""
        formula filling
        stage paste
          100.00 % almond-paste
          mix      almond-paste

        variant salted of filling
          add     0.20 % sea-salt in paste
                         ^^^^^^^^ unused-amount: `sea-salt` is weighed in `paste`, but no step uses it
        """);
  }

  @Test
  void placesWhatAVariantInheritsAtItsParentsName() {
    unusedAmount.check("""
        formula filling
        stage paste
          99.00 % almond-paste
           1.00 % honey
                  ^^^^^ unused-amount: `honey` is weighed in `paste`, but no step uses it
          mix     almond-paste

        variant plain of filling
                         ^^^^^^^ unused-amount: `honey` is weighed in `paste`, but no step uses it
          change  99.50 % almond-paste
        """);
  }

  @Test
  void addsItToTheLastFold() {
    unusedAmount.checkFix("Add it to the last `fold`", """
        formula filling
        stage paste
          79.80 % almond-paste
          20.00 % honey
           0.20 % sea-salt
          mix     almond-paste
          fold    honey into almond-paste
          rest    for 12 h
        """, """
        formula filling
        stage paste
          79.80 % almond-paste
          20.00 % honey
           0.20 % sea-salt
          mix     almond-paste
          fold    honey, sea-salt into almond-paste
          rest    for 12 h
        """);
  }

  @Test
  void addsAStepWhereNoneTakesAnythingUp() {
    unusedAmount.checkFix("Add the step `mix sea-salt`", """
        formula filling
        stage paste
          99.80 % almond-paste
           0.20 % sea-salt
          spread  almond-paste
        """, """
        formula filling
        stage paste
          99.80 % almond-paste
           0.20 % sea-salt
          mix       sea-salt
          spread  almond-paste
        """);
  }
}
