package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class TotalRefactoringTest {

  private static final String SHORT = """
      formula candy "Candy"
        percent   of charge
        batch     1000 g

      stage syrup
        66.00 %             white-sugar
         2.00 % of water    sea-salt
        30.00 %             water
        boil      under lid until dissolved
      """;

  @Test
  void letsWaterTakeUpTheRest() {
    RefactoringFixture fixture = RefactoringFixture.at(SHORT, "percent");
    List<Refactoring> found = TotalRefactoring.at(fixture.site());
    assertEquals(
        "Let water take up the rest, q.s.: 30.00 % → 33.40 %", found.get(0).title());
    String after = fixture.applied(found, "Let water");
    assertTrue(after.contains("   q.s.               water\n"), after);
  }

  @Test
  void scalesAllLinesInProportion() {
    RefactoringFixture fixture = RefactoringFixture.at(SHORT, "percent");
    // 66.00 + 30.00 + 2 % of 30.00 = 96.60.
    String after = fixture.applied(
        TotalRefactoring.at(fixture.site()),
        "Bring to 100 %: all lines in proportion, × 1.0352 from 96.60 %");
    assertEquals(
        1.0, RefactoringFixture.formula(after, "candy").amounts().total().doubleValue(), 1e-6);
    assertTrue(after.contains("31.06   %           water\n"), after);
  }

  /** With 2 % of the water as salt, the water must be 34 / 1.02 = 33.33 %, not 33.40 %. */
  @Test
  void putsTheGapOnTheLineUnderTheCursorAndWhatHangsOnIt() {
    RefactoringFixture fixture = RefactoringFixture.at(SHORT, "30.00 %");
    String after = fixture.applied(
        TotalRefactoring.at(fixture.site()), "Bring to 100 % on this line: 30.00 % → 33.33 %");
    assertEquals(
        1.0, RefactoringFixture.formula(after, "candy").amounts().total().doubleValue(), 1e-6);
    RefactoringFixture sugar = RefactoringFixture.at(SHORT, "66.00 %");
    assertTrue(sugar
        .applied(
            TotalRefactoring.at(sugar.site()), "Bring to 100 % on this line: 66.00 % → 69.40 %")
        .contains("69.40 %             white-sugar\n"));
  }

  @Test
  void movesTheRestToAnotherLine() {
    String text = SHORT.replace("30.00 %             water", " q.s.               water");
    RefactoringFixture fixture = RefactoringFixture.at(text, "66.00 %");
    List<Refactoring> found = TotalRefactoring.rest(fixture.site());
    assertEquals(
        "Let white-sugar take up the rest, q.s.: the same 66.00 %", found.get(0).title());
    String after = fixture.applied(found, "Let white-sugar");
    assertTrue(after.contains(" q.s.             "), after);
    RefactoringFixture back = RefactoringFixture.at(after, "33.33");
    assertEquals(
        text, back.applied(TotalRefactoring.rest(back.site()), "Let water take up the rest"));
  }

  @Test
  void saysNothingOfATotalThatIsRight() {
    String text = SHORT.replace("66.00 %", "69.40 %");
    assertEquals(
        List.of(), TotalRefactoring.at(RefactoringFixture.at(text, "percent").site()));
  }
}
