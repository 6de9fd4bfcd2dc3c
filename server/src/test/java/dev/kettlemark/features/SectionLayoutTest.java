package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is worked out of a few sections is what the whole text would give. */
class SectionLayoutTest {

  private static final List<String> PIECES = List.of(
      "",
      "  ",
      "\n",
      "\n\n",
      "\n\n\n",
      "\n \n",
      "\r",
      "\r\n",
      "# why\n",
      "\n# why\n\n# because\n",
      "  # why\n",
      "formula z\n",
      "\nvariant",
      "\nstage",
      "stage y\n",
      "\"",
      "=");

  private static final List<Document> TEXTS = SampleTexts.all();

  private static ParsedText damaged(Random random) {
    ParsedText text = TEXTS.get(random.nextInt(TEXTS.size())).text();
    for (int damage = random.nextInt(8); damage > 0; damage--) {
      int length = text.source().length();
      int start = random.nextInt(length + 1);
      int end = Math.min(length, start + random.nextInt(random.nextBoolean() ? 3 : 80));
      text =
          text.with(new TextEdit(new Span(start, end), PIECES.get(random.nextInt(PIECES.size()))));
    }
    return text;
  }

  @Test
  void cutsTheSameBlocks() {
    Chance.rounds(300, random -> {
      ParsedText text = damaged(random);
      List<Block> pieced = text.sections().stream()
          .flatMap(placed -> Block.of(text, placed).stream())
          .toList();
      assertEquals(Block.of(text), pieced, text.source()::text);
    });
  }

  @Test
  void laysOutARangeAsItLaysOutTheWhole() {
    Chance.rounds(300, random -> {
      ParsedText text = damaged(random);
      int length = text.source().length();
      int start = random.nextInt(length + 1);
      Span range = new Span(start, start + random.nextInt(length - start + 1));
      int first = text.source().lineAt(range.start());
      int last = text.source().lineAt(range.end());
      List<TextEdit> whole = Formatter.edits(text).stream()
          .filter(edit -> {
            int line = text.source().lineAt(edit.span().start());
            return first <= line && line <= last;
          })
          .toList();
      assertEquals(
          whole,
          Formatter.edits(text, range),
          () -> range + " of:\n" + text.source().text());
    });
  }
}
