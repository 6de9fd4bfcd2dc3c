package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SemanticTokensTest {

  /** {@code word:type+modifier}, a line for each line of the text. */
  private static String drawn(String text) {
    FeatureFixture fixture = FeatureFixture.of(text);
    StringBuilder drawing = new StringBuilder();
    for (Entry entry : fixture.document().entries()) {
      Source source = Source.of(entry.section().text());
      int line = 0;
      String gap = "";
      for (SemanticTokens.Mark mark : SemanticTokens.of(fixture.snapshot(), entry)) {
        int at = source.lineAt(mark.span().start());
        drawing.append(at > line ? "\n" : gap);
        line = at;
        gap = " ";
        drawing
            .append(mark.span().of(entry.section().text()).replace(' ', '_'))
            .append(':')
            .append(mark.type().word())
            .append(mark.modifiers().stream()
                .map(modifier -> "+" + modifier.word())
                .sorted()
                .collect(Collectors.joining()));
      }
      drawing.append('\n');
    }
    return drawing.toString();
  }

  @Test
  void coloursWordsByWhatTheyMean() {
    assertEquals("""
        formula:keyword gel:class+declaration+definition "Gel":string
        percent:property of:operator charge:parameter+defaultLibrary+readonly
        basis:property liquid:parameter+declaration =:operator water:variable+defaultLibrary+readonly in:operator soak:type
        texture:property gelled:enumMember+defaultLibrary
        stage:keyword soak:type+declaration
        1.50:number %:modifier of:operator liquid:parameter agar:variable+defaultLibrary+readonly #_dry:comment
        q.s.:keyword water:variable+defaultLibrary+readonly at:operator 12-18:number+temperature °C:modifier+temperature
        sprinkle:function+defaultLibrary agar:variable+defaultLibrary+readonly into:operator water:variable+defaultLibrary+readonly while:operator whisking:enumMember+defaultLibrary on:operator low:enumMember+defaultLibrary
        cook:function+defaultLibrary to:operator 118:number+temperature °C:modifier+temperature ±:operator+temperature 1:number+temperature
        stage:keyword body:type+declaration
        all:keyword of:operator soak:type
        whip:function+defaultLibrary until:operator soft-peak:enumMember+defaultLibrary
        """.replace("±:operator+temperature", "±:operator"), drawn("""
        formula gel "Gel"
          percent of charge
          basis liquid = water in soak
          texture gelled
        stage soak
          1.50 % of liquid agar # dry
          q.s. water at 12-18 °C
          sprinkle agar into water while whisking on low
          cook to 118 °C ± 1
        stage body
          all of soak
          whip until soft-peak
        """));
  }

  @Test
  void leavesUnknownNamesPlain() {
    assertEquals("""
        formula:keyword gel:class+declaration+definition
        stage:keyword pot:type+declaration
        1.50:number %:modifier
        foldd:x
        mix:function+defaultLibrary until:operator
        """.replace("foldd:x\n", ""), drawn("""
        formula gel
        stage pot
          1.50 % moon-dust
          foldd nuts
          mix nothing until wondrous
        """));
  }

  @Test
  void tellsAHousesOwnIngredientFromThePantry() {
    String drawn = drawn("""
        ingredient moon-honey
          role sweetening, magic
          contains 17 % water
          status discontinued
        formula bar
        stage pot
          1 g moon-honey
        product bar-1
          centre 9 g bar
          coat 28 % of finished couverture-dark-62
        """);
    assertTrue(
        drawn.contains("1:number g:modifier moon-honey:variable+deprecated+readonly"), drawn);
    assertTrue(drawn.contains("role:property sweetening:enumMember+defaultLibrary\n"), drawn);
    assertTrue(drawn.contains("%:modifier water:enumMember+defaultLibrary\n"), drawn);
    assertTrue(drawn.contains("centre:property 9:number g:modifier bar:class\n"), drawn);
    assertTrue(drawn.contains("of:operator finished:parameter+defaultLibrary+readonly"), drawn);
  }

  @Test
  void marksOfAllTextsAreInOrderAndNeverMeet() {
    List<Document> documents = new ArrayList<>(SampleTexts.all());
    Snapshot snapshot = Snapshot.of(Library.of(documents));
    int marks = 0;
    for (Document document : documents) {
      for (Entry entry : document.entries()) {
        int end = 0;
        for (SemanticTokens.Mark mark : SemanticTokens.of(snapshot, entry)) {
          assertTrue(mark.span().start() >= end && !mark.span().isEmpty(), document.uri());
          String word = mark.span().of(entry.section().text());
          assertTrue(word.indexOf('\n') < 0 && word.indexOf('\r') < 0, word);
          end = mark.span().end();
          marks++;
        }
      }
    }
    assertTrue(marks > 10_000, marks + " marks");
  }

  /** The position of each word, found again from the encoded figures, is the same stretch of the text. */
  @Test
  void coversTheSameCharactersHoweverAnEditorCounts() {
    List<Document> documents = new ArrayList<>(SampleTexts.all());
    documents.add(
        Document.of(
            "strange.kettle",
            "\uFEFF# 🍯 first\r\nformula crème \"Crème 🍮\" \r\nstage пот\r  2 % сахар-🍬 # 🍬\n  cook to 118 °C"));
    Snapshot snapshot = Snapshot.of(Library.of(documents));
    for (Document document : documents) {
      List<Span> expected = spans(snapshot, document);
      for (PositionEncoding encoding : PositionEncoding.values()) {
        Source source = document.text().source();
        int[] data = SemanticTokens.encoded(snapshot, document, encoding);
        assertEquals(expected, decoded(source, data, encoding), document.uri());
      }
    }
  }

  private static List<Span> spans(Snapshot snapshot, Document document) {
    List<Span> spans = new ArrayList<>();
    for (Entry entry : document.entries()) {
      SemanticTokens.of(snapshot, entry)
          .forEach(mark -> spans.add(mark.span().shiftedBy(entry.placed().offset())));
    }
    return spans;
  }

  private static List<Span> decoded(Source source, int[] data, PositionEncoding encoding) {
    List<Span> spans = new ArrayList<>();
    int line = 0;
    int column = 0;
    for (int i = 0; i < data.length; i += 5) {
      column = data[i] == 0 ? column + data[i + 1] : data[i + 1];
      line += data[i];
      spans.add(new Span(
          source.offset(new dev.kettlemark.text.Position(line, column), encoding),
          source.offset(new dev.kettlemark.text.Position(line, column + data[i + 2]), encoding)));
    }
    return spans;
  }

  @Test
  void aRangeHoldsTheWordsOfItsLines() {
    Document document = SampleTexts.library().get(1);
    Snapshot snapshot = FeatureFixture.snapshot(SampleTexts.library());
    Source source = document.text().source();
    int first = source.line(5).start();
    int last = source.line(12).end();
    List<Span> wanted = spans(snapshot, document).stream()
        .filter(span -> first <= span.start() && span.end() <= last)
        .toList();
    int[] data =
        SemanticTokens.encoded(snapshot, document, PositionEncoding.UTF16, new Span(first, last));
    assertEquals(wanted, decoded(source, data, PositionEncoding.UTF16));
  }

  @Test
  void aKeyLeavesTheWordsOfOtherSectionsAsTheyAre() {
    Document document = Document.of("a.kettle", """
        formula one
        stage pot
          1 g water
        formula two
        stage pot
          1 g one
        """);
    Snapshot before = FeatureFixture.snapshot(List.of(document));
    List<SemanticTokens.Mark> two = SemanticTokens.of(before, document.entries().get(1));
    int water = document.text().source().text().indexOf("water");
    Document edited = document.with(new TextEdit(new Span(water, water + 5), "agar  # \n"));
    Snapshot after = before.with(before.library().with(edited));
    assertSame(two, SemanticTokens.of(after, edited.entries().get(1)));
  }

  @Test
  void everyTypeIsAWordOfTheStandardLegend() {
    // The predefined types of the protocol, version 3.17, "SemanticTokenTypes".
    List<String> standard = List.of(
        "namespace",
        "type",
        "class",
        "enum",
        "interface",
        "struct",
        "typeParameter",
        "parameter",
        "variable",
        "property",
        "enumMember",
        "event",
        "function",
        "method",
        "macro",
        "keyword",
        "modifier",
        "comment",
        "string",
        "number",
        "regexp",
        "operator",
        "decorator");
    for (TokenType type : TokenType.values()) {
      assertTrue(standard.contains(type.word()), type.word().toLowerCase(Locale.ROOT));
    }
  }
}
