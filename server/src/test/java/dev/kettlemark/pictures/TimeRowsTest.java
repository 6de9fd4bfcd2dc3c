package dev.kettlemark.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class TimeRowsTest {

  /** CSS Values and Units Level 4, section 6.2: an inch is 96 px and 72 pt. */
  private static final double POINTS_PER_PIXEL = 72.0 / 96;

  /** ISO 216: A4 is 210 mm wide; the sheets leave 15 mm on each side. */
  private static final double TEXT_WIDTH = (210 - 2 * 15) / 25.4 * 96;

  /** A picture that is wider than the text is shrunk, and its letters with it. */
  @Test
  void lettersAreAtLeastEightPointsOnPaper() {
    Snapshot samples = Drawn.samples();
    for (Entry entry : Drawn.formulas(samples)) {
      Picture picture = Pictures.of(samples, entry, PictureKind.TIME).orElseThrow();
      double width = Drawn.number(Drawn.root(picture), "width");
      double shrunk = Math.min(1, TEXT_WIDTH / width);
      assertTrue(TextWidth.SMALL * shrunk * POINTS_PER_PIXEL >= 8, picture.title() + " " + width);
    }
  }

  /** Every step stands once, in its order, however the rows are broken. */
  @Test
  void everyStepStandsOnce() {
    Snapshot samples = Drawn.samples();
    for (Entry entry : Drawn.formulas(samples)) {
      ComputedFormula formula = Formulas.computed(samples, entry).orElseThrow();
      List<TimeChunk> chunks =
          TimeRows.of(formula).stream().flatMap(List::stream).toList();
      IntStream.range(0, formula.process().stages().size()).forEach(stage -> {
        List<TimeColumn> drawn = chunks.stream()
            .filter(chunk -> chunk.stage() == stage)
            .flatMap(chunk -> chunk.columns().stream())
            .toList();
        assertEquals(TimeRows.columns(formula.process().stages().get(stage)), drawn);
      });
    }
  }

  /** On paper no part is higher than asked for, unless one row alone is; together they show every stage. */
  @Test
  void isTakenApartForPaper() {
    Snapshot samples = Drawn.samples();
    for (Entry entry : Drawn.formulas(samples)) {
      ComputedFormula formula = Formulas.computed(samples, entry).orElseThrow();
      List<Picture> parts = TimePicture.within(formula, 420);
      String all = String.join("", parts.stream().map(Picture::svg).toList());
      for (int i = 0; i < formula.process().stages().size(); i++) {
        assertTrue(all.contains("-stage-" + i + "\""), entry.uri() + " " + i);
      }
      for (Picture part : parts) {
        assertTrue(Drawn.number(Drawn.root(part), "height") <= 420, part.title());
      }
      assertEquals(
          parts.size(), parts.stream().map(Picture::id).distinct().count(), "ids of their own");
    }
  }
}
