package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class OverUsualDoseTest {

  private final RuleFixture overUsualDose = RuleFixture.of(new OverUsualDose());

  @Test
  void marksTooMuchSalt() {
    overUsualDose.check("""
        formula syrup
          batch   1000 g
        stage pan
          80.00 %  white-sugar
           2.00 %  sea-salt
           ^^^^^^ over-usual-dose: 2.00 % of `sea-salt` is 2.00 % of charge, usual is 0.05–1 %
          q.s.     water
        """);
  }

  @Test
  void countsAllLinesOfOneName() {
    overUsualDose.check("""
        formula syrup
          batch   1000 g
        stage pan
          80.00 %  white-sugar
           0.60 %  sea-salt
           ^^^^^^ over-usual-dose: 0.60 % of `sea-salt` is 1.20 % of charge, usual is 0.05–1 %
           0.60 %  sea-salt
           ^^^^^^ over-usual-dose: 0.60 % of `sea-salt` is 1.20 % of charge, usual is 0.05–1 %
          q.s.     water
        """);
  }

  @Test
  void allowsTheUsualDose() {
    overUsualDose.check("""
        formula syrup
          batch   1000 g
        stage pan
          80.00 %  white-sugar
           1.00 %  sea-salt
          q.s.     water
        """);
  }

  @Test
  void leavesFoodAndAgentsAlone() {
    overUsualDose.check("""
        formula syrup
          batch   1000 g
        stage pan
           9.00 %  xanthan-gum
          40.00 %  white-sugar
          16.00 %  cocoa-powder
          q.s.     water
        """);
  }

  @Test
  void isAnErrorWhereItCannotBeMeant() {
    overUsualDose.checkSeverity(Severity.ERROR, """
        formula syrup
          batch   1000 g
        stage pan
          80.00 %  white-sugar
          10.00 %  sea-salt
          q.s.     water
        """);
  }

  @Test
  void lowersIt() {
    overUsualDose.checkFix("Lower it to 1.00 % and scale the rest", """
        formula syrup
          batch   1000 g
        stage pan
          80.00 %  white-sugar
           2.00 %  sea-salt
          q.s.     water
        """, """
        formula syrup
          batch   1000 g
        stage pan
          80.82 %  white-sugar
           1.00 %  sea-salt
          q.s.     water
        """);
  }
}
