package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class UnknownSubjectTest {

  private static final String SYRUP = """
      formula plain-syrup
      stage bowl
        60.00 % white-sugar
        40.00 % water
        mix     white-sugar, water
      product syrup-jar
        centre  40 g plain-syrup
      """;

  private final RuleFixture unknownSubject = RuleFixture.of(new UnknownSubject());

  @Test
  void marksATrialOfNothing() {
    unknownSubject.check(SYRUP + """
        trial T-1 of plane-syrup on 2026-03-02
                     ^^^^^^^^^^^ unknown-subject: the library has no formula `plane-syrup`; did you mean `plain-syrup`?
          measured 3 g weight of bowl
        """);
  }

  /** An ingredient is bought, and nobody tries it out. */
  @Test
  void marksATrialOfAnIngredient() {
    unknownSubject.check(SYRUP + """
        trial T-1 of white-sugar on 2026-03-02
                     ^^^^^^^^^^^ unknown-subject: the library has no formula `white-sugar`
        """);
  }

  @Test
  void marksASheetOfNothing() {
    unknownSubject.check(SYRUP + """
        sheet for-home of syrup-jam for home in en-GB
                          ^^^^^^^^^ unknown-subject: the library has no formula or product `syrup-jam`; did you mean `syrup-jar`?
        """);
  }

  @Test
  void marksAHouseThatIsNotThere() {
    unknownSubject.check(SYRUP + """
        house lantern-yard
          room 20 °C
        trial T-1 of plain-syrup on 2026-03-02 at lantern-yart
                                                  ^^^^^^^^^^^^ unknown-subject: the library has no house `lantern-yart`; did you mean `lantern-yard`?
        """);
  }

  @Test
  void marksAStageThatTheFormulaDoesNotHave() {
    unknownSubject.check(SYRUP + """
        trial T-1 of plain-syrup on 2026-03-02
          measured 300 g weight of bowel
                                   ^^^^^ unknown-subject: `plain-syrup` has no stage `bowel`; did you mean `bowl`?
        """);
    unknownSubject.checkSeverity(Severity.WARNING, SYRUP + """
        trial T-1 of plain-syrup on 2026-03-02
          measured 300 g weight of pan
        """);
  }

  @Test
  void staysQuietOverWhatIsThere() {
    unknownSubject.check(SYRUP + """
        variant thin-syrup of plain-syrup
          replace white-sugar by 60.00 % caster-sugar
        trial T-1 of thin-syrup on 2026-03-02
          measured 300 g weight of bowl
          measured 21 °C temperature of water
          measured 300 g finished of thin-syrup
        sheet for-chef of syrup-jar for chef in en-GB
        sheet for-all of thin-syrup for chef in en-GB
        """);
  }

  @Test
  void writesTheNearestName() {
    unknownSubject.checkFirstFix(
        "Write `plain-syrup`",
        SYRUP + "trial T-1 of plane-syrup on 2026-03-02\n",
        SYRUP + "trial T-1 of plain-syrup on 2026-03-02\n");
  }
}
