package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.features.FormulaTable.Row;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FormulaTableTest {

  private static final String GEL = """
      formula gel "Gel | with *gum*"
        percent   of charge
        batch     500 g
        basis     liquid = water in pan

      stage pan
        0.40 % of liquid    xanthan-gum
        10.00 %             white-sugar
        q.s.                water
        boil      xanthan-gum, white-sugar, water under lid until dissolved

      stage half
        part 1/2 of         pan
        2.0 g               sea-salt
        mix       sea-salt, pan
      """;

  private static FormulaTable table(String text) {
    List<Document> documents = new ArrayList<>(Pantry.documents());
    documents.add(Document.of("a.kettle", text));
    Snapshot snapshot = Snapshot.of(Library.of(documents));
    return FormulaTable.of(Formulas.computed(
            snapshot, snapshot.library().find(Kind.MATERIAL, "gel").orElseThrow())
        .orElseThrow());
  }

  /**
   * By hand: with salt 0.4 % and sugar 10 %, gum and water make 89.6 %, of which water is
   * 89.6 / 1.004.
   */
  @Test
  void showsAmountsAsWrittenAndOfTheCharge() {
    StageRows pan = table(GEL).stages().get(0);
    Row gum = pan.rows().get(0);
    assertEquals("0.40 % of liquid", gum.written());
    double water = 89.6 / 1.004;
    assertEquals(
        0.004 * water, gum.share().orElseThrow().toOptional().orElseThrow().percent(), 1e-9);
    Row rest = pan.rows().get(2);
    assertEquals("q.s.", rest.written());
    assertEquals(5 * water, rest.mass().orElse(Mass.ZERO).grams(), 1e-9);
  }

  /** By hand: half of 498 g, with 2 g of salt. */
  @Test
  void showsWhatAStageTakes() {
    StageRows half = table(GEL).stages().get(1);
    Row taken = half.rows().get(1);
    assertTrue(taken.taken());
    assertEquals("part 1/2 of", taken.written());
    assertTrue(taken.share().isEmpty());
    assertEquals(249, taken.mass().orElse(Mass.ZERO).grams(), 1e-9);
    assertEquals(251, half.left().orElse(Mass.ZERO).grams(), 1e-9);
  }

  @Test
  void countsTheWholeChargeOnce() {
    FormulaTable table = table(GEL);
    assertEquals(500, table.totals().charge().grams(), 1e-9);
    assertEquals(1, table.totals().share().fraction(), 1e-12);
    assertFalse(table.nominal());
  }

  @Test
  void marksAStagePartlyUnknown() {
    FormulaTable table = table(GEL.replace("xanthan-gum", "moon-gum"));
    assertFalse(table.totals().water().isKnown());
    assertTrue(table.markdown().contains("unknown: nobody has described"), table.markdown());
  }

  @Test
  void keepsMarkdownFromReadingNamesAsMarks() {
    String markdown = table(GEL).markdown();
    assertTrue(markdown.startsWith("# Gel \\| with \\*gum\\*\n"), markdown);
    assertTrue(
        markdown.contains("| xanthan-gum | 0.40 % of liquid | 0.36 % | 1.78 g |\n"), markdown);
    assertTrue(markdown.contains("| part 1/2 of pan |  |  | 249.0 g |\n"), markdown);
  }
}
