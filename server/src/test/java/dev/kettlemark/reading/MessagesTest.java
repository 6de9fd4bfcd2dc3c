package dev.kettlemark.reading;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.Pinned;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What is said of texts that cannot be read: each message stands under the words it marks.
 *
 * <p>The committed file holds small texts between lines {@code --- what is wrong}; the test takes the
 * marks out, reads each text, and draws the marks back in.
 */
class MessagesTest {

  private static final Pattern MARK = Pattern.compile(" *(\\^+|\\|) .*");

  private record Told(Span span, String message) {}

  @Test
  void everyMessageStandsUnderTheWordsItMarks() {
    Pinned file = Pinned.resource("reading/messages.txt");
    StringBuilder redrawn = new StringBuilder();
    int messages = 0;
    for (String text : file.text().split("(?m)^(?=--- )")) {
      String title = text.substring(0, text.indexOf('\n') + 1);
      String body = text.substring(title.length())
          .lines()
          .filter(line -> !MARK.matcher(line).matches())
          .map(line -> line + "\n")
          .reduce("", String::concat);
      List<Told> told = told(body);
      messages += told.size();
      redrawn.append(title).append(draw(body, told));
    }
    file.check(redrawn.toString(), MessagesTest.class);
    assertTrue(messages >= 50, "only " + messages + " messages");
  }

  private static List<Told> told(String text) {
    List<Told> told = new ArrayList<>();
    for (ParsedText.PlacedSection placed : ParsedText.of(text).sections()) {
      placed
          .section()
          .problems()
          .forEach(p -> told.add(new Told(p.span().shiftedBy(placed.offset()), p.message())));
      Reading.of(placed.section())
          .problems()
          .forEach(p -> told.add(new Told(p.span().shiftedBy(placed.offset()), p.message())));
    }
    told.sort(Comparator.<Told>comparingInt(t -> t.span().start()).thenComparing(Told::message));
    return told;
  }

  private static String draw(String text, List<Told> told) {
    Source source = Source.of(text);
    StringBuilder drawn = new StringBuilder();
    for (int line = 0; line + 1 < source.lineCount(); line++) {
      Span span = source.line(line);
      drawn.append(span.of(text)).append('\n');
      for (Told one : told) {
        if (source.lineAt(one.span().start()) == line) {
          String mark = one.span().isEmpty() ? "|" : "^".repeat(one.span().length());
          drawn
              .append(" ".repeat(one.span().start() - span.start()))
              .append(mark)
              .append(' ')
              .append(one.message())
              .append('\n');
        }
      }
    }
    return drawn.toString();
  }
}
