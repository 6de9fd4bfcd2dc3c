package dev.kettlemark.checks;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** How a fix writes into a section without breaking its columns. */
final class Columns {

  private static final String USUAL_INDENT = "  ";
  private static final Pattern GAP = Pattern.compile("[\\s\\p{Zs}\\u200B\\uFEFF]+");
  private static final int USUAL_WORD_WIDTH = 10;

  private final Section section;

  Columns(Section section) {
    this.section = section;
  }

  /** Replaces a stretch; what follows it on the line stays in its column where there is room. */
  TextEdit replace(Span span, String replacement) {
    int gap = gapBehind(span.end());
    int growth = replacement.length() - span.length();
    if (growth > 0) {
      return new TextEdit(
          new Span(span.start(), span.end() + Math.min(growth, Math.max(0, gap - 2))), replacement);
    }
    boolean somethingFollows = gap > 0 && !endsAt(span.end() + gap);
    return new TextEdit(span, somethingFollows ? replacement + " ".repeat(-growth) : replacement);
  }

  /** Replaces how much a line asks for. */
  TextEdit replaceMeasure(AmountLine line, String measure) {
    return replace(line.measure().span(), measure);
  }

  /** Writes a fact on a line of its own: before the first fact of a word, else below the last fact. */
  TextEdit addFact(Optional<String> before, String word, String rest) {
    List<Line> lines = section.lines();
    int end = 1;
    while (end < lines.size() && facts(lines.get(end))) {
      end++;
    }
    List<Line> facts = lines.subList(0, end).stream()
        .filter(line -> !(line instanceof Line.EmptyLine))
        .toList();
    Optional<Line.StatementLine> next = facts.stream()
        .flatMap(line -> statement(line).stream())
        .filter(fact -> before.filter(fact.head().text()::equals).isPresent())
        .findFirst();
    String fact = spelt(
        next.or(() -> facts.stream()
            .flatMap(line -> statement(line).stream())
            .filter(line -> !line.objects().isEmpty())
            .reduce((one, other) -> other)),
        word,
        rest);
    if (next.isPresent()) {
      return TextEdit.insert(startOfLine(next.get().span().start()), fact + lineEnd());
    }
    int last = endOfLine(facts.get(facts.size() - 1).span().end());
    return TextEdit.insert(last, lineEnd() + fact);
  }

  /** A figure as written, each gap as one space, so that no message is as wide as the page. */
  static String shown(String written) {
    return GAP.matcher(written).replaceAll(" ");
  }

  private static boolean facts(Line line) {
    return !(line instanceof Line.SectionLine);
  }

  private static Optional<Line.StatementLine> statement(Line line) {
    return line instanceof Line.StatementLine statement ? Optional.of(statement) : Optional.empty();
  }

  /** A fact in the columns of a neighbour. */
  private String spelt(Optional<Line.StatementLine> neighbour, String word, String rest) {
    String indent = neighbour
        .map(line ->
            new Span(startOfLine(line.span().start()), line.span().start()).of(section.text()))
        .orElse(USUAL_INDENT);
    int width = neighbour
        .flatMap(line -> line.objects().stream()
            .findFirst()
            .map(group -> group.span().start() - line.span().start()))
        .orElse(USUAL_WORD_WIDTH);
    return indent + word + " ".repeat(Math.max(1, width - word.length())) + rest;
  }

  private String lineEnd() {
    return LineEnds.of(section.text());
  }

  private int startOfLine(int offset) {
    return section.text().lastIndexOf('\n', offset - 1) + 1;
  }

  private int endOfLine(int offset) {
    int end = offset;
    while (!endsAt(end)) {
      end++;
    }
    return end;
  }

  private boolean endsAt(int offset) {
    return offset >= section.text().length()
        || section.text().charAt(offset) == '\n'
        || section.text().charAt(offset) == '\r';
  }

  private int gapBehind(int offset) {
    int end = offset;
    while (end < section.text().length() && section.text().charAt(end) == ' ') {
      end++;
    }
    return end - offset;
  }
}
