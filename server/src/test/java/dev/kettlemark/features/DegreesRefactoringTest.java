package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.ParsedText;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;
import org.junit.jupiter.api.Test;

class DegreesRefactoringTest {

  private static final String CANDY = """
      formula candy "Candy"
        percent   of charge
        batch     1000 g
        caution   hot-sugar

      stage syrup
        70.00 %             white-sugar
         q.s.               water              at 12-18 °C
        boil      under lid until dissolved
        cook      to 143 °C ± 1
        cool      to 45 °C
      """;

  @Test
  void turnsOneLineOver() {
    RefactoringFixture fixture = RefactoringFixture.at(CANDY, "cook ");
    List<Refactoring> found = DegreesRefactoring.at(fixture.site());
    // 143 × 9/5 + 32 = 289.4; a tolerance is a difference and turns by 9/5 alone.
    assertEquals("Write 143 °C ± 1 as 289 °F ± 1.8", found.get(0).title());
    assertTrue(fixture.applied(found, "Write 143").contains("  cook      to 289 °F ± 1.8\n"));
  }

  @Test
  void turnsTheWholeFormulaOverAndBack() {
    RefactoringFixture fixture = RefactoringFixture.at(CANDY, "formula candy");
    String there = fixture.applied(DegreesRefactoring.at(fixture.site()), "Write all 3");
    assertTrue(there.contains("at 54-64 °F\n"), there);
    assertTrue(there.contains("to 113 °F\n"), there);
    RefactoringFixture back = RefactoringFixture.at(there, "formula candy");
    String again = back.applied(DegreesRefactoring.at(back.site()), "Write all 3");
    assertTrue(again.contains("cook      to 142.8 °C ± 1\n"), again);
    assertTrue(again.contains("at 12.2-17.8 °C\n"), again);
  }

  @Test
  void keepsASignApartFromARange() {
    Quantity cold = new Quantity(
        new BigFraction(-20), new BigFraction(-18), Optional.of(Unit.CELSIUS), Optional.empty(), 0);
    assertEquals("-4–0 °F", DegreesRefactoring.written(cold, Unit.FAHRENHEIT));
    ParsedText text = ParsedText.of("formula a\n\nstage b\n  rest at -4–0 °F\n");
    Atom.QuantityAtom figure = text.sections().get(0).section().lines().stream()
        .filter(Line.StatementLine.class::isInstance)
        .flatMap(Pointed::temperatures)
        .findFirst()
        .orElseThrow();
    assertEquals(-20, figure.quantity().orElseThrow().lowInBase().doubleValue(), 0.3);
  }

  /** Half a degree is what a probe of a kitchen reads to. */
  @Test
  void staysWithinHalfADegreeThereAndBack() {
    for (int tenths = -400; tenths < 2000; tenths++) {
      BigFraction celsius = new BigFraction(tenths, 10);
      Quantity one = new Quantity(celsius, celsius, Optional.of(Unit.CELSIUS), Optional.empty(), 1);
      String there = DegreesRefactoring.written(one, Unit.FAHRENHEIT);
      BigFraction fahrenheit =
          new BigFraction(Integer.parseInt(there.substring(0, there.indexOf(' '))));
      String back = DegreesRefactoring.written(
          new Quantity(fahrenheit, fahrenheit, Optional.of(Unit.FAHRENHEIT), Optional.empty(), 0),
          Unit.CELSIUS);
      assertEquals(
          tenths / 10.0, Double.parseDouble(back.substring(0, back.indexOf(' '))), 0.5, there);
    }
  }
}
