package dev.kettlemark.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Chance;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Positions as editors count them; the encoders of the JDK are the judge of the units. */
class SourceTest {

  /** Line 0 has accents, line 1 a character of two UTF-16 units, line 2 is empty. */
  private static final Source MIXED = Source.of("a°e\u0301x\n🍯b\r\n\rlast");

  private static final List<String> PIECES = List.of(
      "a", "°", "e\u0301", "🍯", "𠮷", "\n", "\r", "\r\n", "\t", "\u00A0", "\u0000", "\u2028", "–",
      "\uFEFF");

  @ParameterizedTest
  @CsvSource({
    "2, UTF8, 0, 3", "2, UTF16, 0, 2", "2, UTF32, 0, 2",
    "4, UTF8, 0, 6", "4, UTF16, 0, 4", "4, UTF32, 0, 4",
    "8, UTF8, 1, 4", "8, UTF16, 1, 2", "8, UTF32, 1, 1",
    "9, UTF8, 1, 5", "9, UTF16, 1, 3", "9, UTF32, 1, 2",
    "11, UTF8, 2, 0", "12, UTF16, 3, 0", "16, UTF32, 3, 4"
  })
  void countsColumnsInTheUnitsOfTheEncoding(
      int offset, PositionEncoding encoding, int line, int column) {
    assertEquals(new Position(line, column), MIXED.position(offset, encoding));
    assertEquals(offset, MIXED.offset(new Position(line, column), encoding));
  }

  @Test
  void endsALineAtEachKindOfLineEnd() {
    Source source = Source.of("a\nb\r\nc\rd\n\re\r\r\nf");
    assertEquals(8, source.lineCount());
    assertEquals(
        List.of("a", "b", "c", "d", "", "e", "", "f"),
        IntStream.range(0, 8)
            .mapToObj(line -> source.line(line).of(source.text()))
            .toList());
  }

  @Test
  void knowsItsLinesAfterAnEditAsIfReadAnew() {
    Chance.rounds(200, random -> {
      Source source = Source.of("");
      for (int edit = 0; edit < 100; edit++) {
        source = edited(source, random);
        Source anew = Source.of(source.text());
        assertEquals(anew.lineCount(), source.lineCount());
        for (int line = 0; line < anew.lineCount(); line++) {
          assertEquals(anew.line(line), source.line(line));
        }
      }
    });
  }

  private static Source edited(Source source, Random random) {
    int start = random.nextInt(source.length() + 1);
    int end = Math.min(source.length(), start + random.nextInt(4));
    StringBuilder replacement = new StringBuilder();
    for (int i = random.nextInt(source.length() > 60 ? 3 : 8); i > 0; i--) {
      replacement.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return source.with(new TextEdit(new Span(start, end), replacement.toString()));
  }

  @Test
  void hasOneEmptyLineWhereThereIsNoText() {
    Source empty = Source.of("");
    assertEquals(1, empty.lineCount());
    assertEquals(Span.at(0), empty.line(0));
    assertEquals(new Position(0, 0), empty.position(7, PositionEncoding.UTF16));
  }

  @ParameterizedTest
  @EnumSource(PositionEncoding.class)
  void takesAColumnInsideACharacterAsItsStart(PositionEncoding encoding) {
    Source source = Source.of("🍯b");
    assertEquals(new Position(0, 0), source.position(1, encoding));
    if (encoding != PositionEncoding.UTF32) {
      assertEquals(0, source.offset(new Position(0, 1), encoding));
    }
  }

  @ParameterizedTest
  @EnumSource(PositionEncoding.class)
  void bringsAPositionOutsideTheTextInside(PositionEncoding encoding) {
    Source source = Source.of("ab\r\ncd");
    assertEquals(2, source.offset(new Position(0, 99), encoding));
    assertEquals(0, source.offset(new Position(0, -1), encoding));
    assertEquals(0, source.offset(new Position(-1, 3), encoding));
    assertEquals(6, source.offset(new Position(9, 0), encoding));
    assertEquals(new Position(1, 2), source.position(99, encoding));
  }

  @Test
  void countsALoneSurrogateAsOneUnit() {
    Source source = Source.of("a\uD83Cb\uDF6F");
    assertEquals(new Position(0, 3), source.position(3, PositionEncoding.UTF16));
    assertEquals(new Position(0, 3), source.position(3, PositionEncoding.UTF32));
    // Three bytes: what the replacement character U+FFFD takes in UTF-8.
    assertEquals(new Position(0, 5), source.position(3, PositionEncoding.UTF8));
  }

  @ParameterizedTest
  @EnumSource(PositionEncoding.class)
  void comesBackToTheSameOffset(PositionEncoding encoding) {
    Chance.rounds(2000, random -> {
      StringBuilder text = new StringBuilder();
      for (int piece = random.nextInt(14); piece > 0; piece--) {
        text.append(PIECES.get(random.nextInt(PIECES.size())));
      }
      Source source = Source.of(text.toString());
      for (int line = 0; line < source.lineCount(); line++) {
        Span span = source.line(line);
        int offset = span.start();
        while (offset <= span.end()) {
          Position position = source.position(offset, encoding);
          assertEquals(line, position.line());
          assertEquals(
              units(source.text().substring(span.start(), offset), encoding), position.column());
          assertEquals(offset, source.offset(position, encoding));
          offset +=
              offset < span.end() ? Character.charCount(source.text().codePointAt(offset)) : 1;
        }
      }
    });
  }

  private static int units(String text, PositionEncoding encoding) {
    return switch (encoding) {
      case UTF8 -> text.getBytes(StandardCharsets.UTF_8).length;
      case UTF16 -> text.getBytes(StandardCharsets.UTF_16LE).length / 2;
      case UTF32 -> text.getBytes(Charset.forName("UTF-32LE")).length / 4;
    };
  }
}
