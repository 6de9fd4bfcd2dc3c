package dev.kettlemark.checks;

import org.junit.jupiter.api.Test;

class CelsiusOnUsSheetTest {

  private final RuleFixture celsiusOnUsSheet = RuleFixture.of(new CelsiusOnUsSheet());

  @Test
  void marksASheetForAmericanHomes() {
    celsiusOnUsSheet.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-US
                                                     ^^^^^ celsius-on-us-sheet: a sheet for `home` in en-US shows °C alone, such as 118 °C
        """);
  }

  @Test
  void mendsMarksASheetForAmericanHomes() {
    celsiusOnUsSheet.checkFirstFix("Show °F as well", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-US
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-US
          show      fahrenheit
        """);
  }

  @Test
  void addsToWhatIsShown() {
    celsiusOnUsSheet.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-US
                                                     ^^^^^ celsius-on-us-sheet: a sheet for `home` in en-US shows °C alone, such as 118 °C
          show      volumes
        """);
  }

  @Test
  void mendsAddsToWhatIsShown() {
    celsiusOnUsSheet.checkFirstFix("Show °F as well", """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-US
          show      volumes
        """, """
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-US
          show      volumes, fahrenheit
        """);
  }

  @Test
  void staysQuietWithFahrenheit() {
    celsiusOnUsSheet.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-US
          show      fahrenheit, volumes
        """);
  }

  @Test
  void staysQuietWhereNothingIsInCelsius() {
    celsiusOnUsSheet.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 244 °F ± 2
        sheet syrup-sheet of plain-syrup for home in en-US
        """);
  }

  @Test
  void leavesOthersAlone() {
    celsiusOnUsSheet.check("""
        formula plain-syrup
          version   2 on 2026-03-01
          status    bench
          percent   of charge
          batch     1000 g
        stage syrup
          50.00 %   white-sugar
          25.00 %   glucose-syrup-42
          25.00 %   water
          boil      under lid for 3 min until dissolved
          cook      to 118 °C ± 1
        sheet syrup-sheet of plain-syrup for home in en-GB
        sheet other of plain-syrup for chef in en-US
        """);
  }
}
