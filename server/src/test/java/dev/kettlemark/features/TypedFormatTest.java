package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Chance;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class TypedFormatTest {

  private static final List<String> PIECES = List.of(
      "",
      " ",
      "   ",
      "\n",
      "\n\n",
      "\n \n",
      "\r",
      "\r\n",
      "\t",
      "# why\n",
      "  # why\n",
      "formula z\n",
      "\n formula",
      "formula\u0000",
      "formula =\n",
      "house\n",
      "stage y\n",
      "\nstage",
      "\"",
      "=",
      "5 % of water agar");

  /** The text after a line end was typed at the cursor. */
  private static String typed(String marked) {
    int offset = marked.indexOf("<|>");
    String text = marked.replace("<|>", "\n");
    return TextEdit.applyAll(text, TypedFormat.atNewLine(ParsedText.of(text), offset + 1));
  }

  @Test
  void bringsTheStageAboveIntoItsColumns() {
    assertEquals("""
        formula f

        stage s
           1.50 %             agar
          12.00 % of liquid   water
        \s\s
        """, typed("""
        formula f

        stage s
         1.50 % agar
         12.00 % of liquid water<|>""" + "\n").replace("\n  \n\n", "\n  \n"));
  }

  @Test
  void spellsTheToleranceAsTheFormatterDoes() {
    assertEquals(
        "formula f\n\nstage s\n  cook      to 118 °C ± 1\n  ",
        typed("formula f\n\nstage s\n  cook to 118 °C +- 1<|>"));
  }

  @Test
  void leavesTheLineOfTheCursorAndAllBelowAlone() {
    assertEquals(
        "formula f\n\nstage s\n   1.00 %             agar\n5 % x\n 7 %   water\n",
        typed("formula f\n\nstage s\n 1.00 % agar<|>5 % x\n 7 %   water\n"));
  }

  @Test
  void leavesOtherStagesAndBlankLinesAlone() {
    assertEquals(
        "formula f\n 1 g x\n\n\nstage s\n   1 g                water\n  ",
        typed("formula f\n 1 g x\n\n\nstage s\n 1 g water<|>"));
  }

  @Test
  void skipsALineThatCannotBeRead() {
    assertEquals(
        "formula f\n\nstage s\n  mix       \n 5 % \"x\n  ".replace("mix       ", "mix"),
        typed("formula f\n\nstage s\n  mix\n 5 % \"x<|>"));
  }

  @Test
  void neverChangesMoreThanSpaceAndSpellings() {
    for (Document document : SampleTexts.all()) {
      Source source = document.text().source();
      for (int line = 0; line < source.lineCount(); line += 7) {
        int end = source.line(line).end();
        TextEdit key = new TextEdit(Span.at(end), "\n");
        ParsedText text = document.text().with(key);
        List<TextEdit> edits = TypedFormat.atNewLine(text, end + 1);
        String after = TextEdit.applyAll(text.source().text(), edits);
        assertEquals(bare(text.source().text()), bare(after), document.uri());
        int here = text.source().lineAt(end + 1);
        assertTrue(
            edits.stream()
                .allMatch(edit -> text.source().lineAt(edit.span().end()) < here
                    || edit.replacement().isBlank()),
            document.uri());
        assertEquals(text.source().lineCount(), Source.of(after).lineCount());
      }
    }
  }

  /** It lays out one section, and no line of it differs from what the whole text would give it. */
  @Test
  void givesEachLineWhatTheWholeLayoutGivesIt() {
    List<Document> documents = SampleTexts.all();
    AtomicInteger edits = new AtomicInteger();
    int rounds = Chance.rounds(400, random -> {
      Document document = documents.get(random.nextInt(documents.size()));
      for (int damage = random.nextInt(6); damage > 0; damage--) {
        document = document.with(damage(document.text().source().length(), random));
      }
      for (int key = 0; key < 8; key++) {
        int end = random.nextInt(document.text().source().length() + 1);
        ParsedText text = document.text().with(new TextEdit(Span.at(end), "\n"));
        edits.addAndGet(assertAsInTheWhole(text, end + 1));
      }
    });
    assertTrue(edits.get() > 4 * rounds, "only " + edits + " edits");
  }

  private static int assertAsInTheWhole(ParsedText text, int offset) {
    Source source = text.source();
    int here = source.lineAt(offset);
    List<WrittenLine> lines = WrittenLine.of(text);
    int first = here - 1;
    while (first > 0 && !lines.get(first).isHeading() && !lines.get(first).isBlank()) {
      first--;
    }
    Span above = new Span(source.line(first).start(), source.line(here - 1).end());
    List<TextEdit> whole = Formatter.edits(text, above).stream()
        .filter(edit -> source.line(source.lineAt(edit.span().start())).contains(edit.span()))
        .filter(edit -> edit.replacement().chars().noneMatch(c -> c == '\n' || c == '\r'))
        .toList();
    List<TextEdit> typed = TypedFormat.atNewLine(text, offset).stream()
        .filter(edit -> source.lineAt(edit.span().start()) < here)
        .toList();
    assertEquals(whole, typed, () -> "at " + offset + " of:\n" + source.text());
    return typed.size();
  }

  private static TextEdit damage(int length, Random random) {
    int start = random.nextInt(length + 1);
    int end = Math.min(length, start + random.nextInt(random.nextBoolean() ? 3 : 50));
    return new TextEdit(new Span(start, end), PIECES.get(random.nextInt(PIECES.size())));
  }

  private static String bare(String text) {
    return Formatter.format(text).replaceAll("\\s+", "");
  }
}
