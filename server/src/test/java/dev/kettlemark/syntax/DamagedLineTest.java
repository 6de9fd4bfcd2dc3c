package dev.kettlemark.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.text.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A broken line spoils only itself, whatever is wrong with it. */
class DamagedLineTest {

  private static final List<String> DAMAGE = List.of(
      "=",
      ",",
      "%",
      "±",
      "of",
      "all",
      "part",
      "q.s.",
      "per",
      "\"",
      "§",
      "12",
      "1/0",
      "x",
      "to",
      "= =",
      ",,",
      "% %",
      "all all",
      "part part",
      "per per",
      "= x",
      "x =",
      "± ±",
      "of of",
      "in",
      "\uD83C",
      "\uD83C\uDF6F",
      "e\u0301",
      "\u0000",
      "\t",
      "2026-99-99",
      ".5",
      "1,2",
      "-",
      "#");

  @Test
  void leavesAllOtherLinesAsTheyWere() {
    AtomicInteger damaged = new AtomicInteger();
    int rounds = Chance.rounds(3, random -> {
      for (Document document : SampleTexts.library()) {
        String text = document.text().source().text();
        List<Line> before = lines(text);
        Source source = Source.of(text);
        for (int line = 0; line < source.lineCount(); line++) {
          if (!opensSection(before.get(line))) {
            assertOnlyThatLineChanges(text, source, line, before, random);
            damaged.incrementAndGet();
          }
        }
      }
    });
    assertEquals(true, damaged.get() > 350 * rounds, "only " + damaged + " damages");
  }

  /** The heading of a section may be damaged too, as long as it still opens one. */
  @ParameterizedTest
  @ValueSource(strings = {"=", ",", "%", "= x", ", ,", "± 1", "per", "§ =", "all of", "\" = %"})
  void leavesTheBodyWhenTheHeadingBreaks(String damage) {
    String body = "\n  batch 1200 g\nstage foam\n  5 % sugar\n  q.s. water\n  whip on high\n";
    List<Line> whole = lines("formula nougat" + body);
    List<Line> broken = lines("formula nougat " + damage + body);
    assertEquals(whole.size(), broken.size());
    for (int i = 1; i < whole.size(); i++) {
      assertEquals(shape(whole.get(i)), shape(broken.get(i)));
    }
  }

  @Test
  void tellsOneProblemForEachBrokenLineWhateverEndsTheLines() {
    for (String end : List.of("\n", "\r\n", "\r")) {
      String text = String.join(end, "formula a", "stage b", "x = =", "% 5", "blend ,", "cut");
      assertEquals(3, ParsedText.of(text).sections().get(0).section().problems().size(), end);
    }
  }

  private static void assertOnlyThatLineChanges(
      String text, Source source, int line, List<Line> before, Random random) {
    int start = source.line(line).start();
    int end = source.line(line).end();
    int place = start + random.nextInt(end - start + 1);
    int behind = Math.min(end, place + random.nextInt(6));
    String damage = " " + DAMAGE.get(random.nextInt(DAMAGE.size())) + " ";
    String broken = text.substring(0, place) + damage + text.substring(behind);
    List<Line> after = lines(broken);
    assertEquals(before.size(), after.size(), broken);
    for (int i = 0; i < before.size(); i++) {
      if (i != line) {
        assertEquals(
            shape(before.get(i)), shape(after.get(i)), "line " + i + " after damage of " + line);
      }
    }
  }

  private static List<Line> lines(String text) {
    List<Line> lines = new ArrayList<>();
    List<ParsedText.PlacedSection> sections = ParsedText.of(text).sections();
    for (int i = 0; i < sections.size(); i++) {
      List<Line> own = sections.get(i).section().lines();
      // Each section but the last ends with the empty line in front of the next one's first word.
      lines.addAll(i + 1 < sections.size() ? own.subList(0, own.size() - 1) : own);
    }
    return lines;
  }

  private static boolean opensSection(Line line) {
    return line instanceof Line.SectionLine section && section.keyword().opensSection();
  }

  /** A line without its places, which move with the damage above it. */
  private static String shape(Line line) {
    return line.toString()
        .replaceAll("[sS]pan=Span\\[start=\\d+, end=\\d+]|Span\\[start=\\d+, end=\\d+]", "");
  }
}
