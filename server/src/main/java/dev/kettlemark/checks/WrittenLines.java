package dev.kettlemark.checks;

import dev.kettlemark.model.Stage;
import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Where a fix puts a whole line, and how the line is set in. */
final class WrittenLines {

  /** The samples' own columns; the formatter moves a line to those of its neighbours. */
  private static final String STEP = "  %-10s%s";

  private static final String AMOUNT = "  %-20s%s";

  private final Source source;
  private final Predicate<Span> isWrittenHere;

  private WrittenLines(String text, Predicate<Span> isWrittenHere) {
    this.source = Source.of(text);
    this.isWrittenHere = isWrittenHere;
  }

  static WrittenLines of(Subject subject) {
    return new WrittenLines(subject.text(), subject::isWrittenHere);
  }

  /** The lines of a section of which everything is its own. */
  static WrittenLines of(String text) {
    return new WrittenLines(text, span -> true);
  }

  static String step(String verb, String rest) {
    return STEP.formatted(verb, rest);
  }

  static String amount(String measure, String name) {
    return AMOUNT.formatted(measure, name);
  }

  /** Puts a line right below another. */
  TextEdit below(Span line, String content) {
    int end = source.line(source.lineAt(line.start())).end();
    return TextEdit.insert(end, lineEnd() + content);
  }

  /** Puts a line, or several, right above another. */
  TextEdit above(Span line, String content) {
    int start = source.line(source.lineAt(line.start())).start();
    return TextEdit.insert(start, content.replace("\n", lineEnd()) + lineEnd());
  }

  /** Takes a line away with its line end. */
  TextEdit without(Span line) {
    int number = source.lineAt(line.start());
    boolean isLast = number + 1 == source.lineCount();
    if (!isLast) {
      return TextEdit.delete(
          new Span(source.line(number).start(), source.line(number + 1).start()));
    }
    int start = number == 0 ? 0 : source.line(number - 1).end();
    return TextEdit.delete(new Span(start, source.line(number).end()));
  }

  /** Puts a section behind the last written line of this one. */
  TextEdit behindSection(String content) {
    int end = source.text().stripTrailing().length();
    return TextEdit.insert(end, lineEnd() + lineEnd() + content.replace("\n", lineEnd()));
  }

  /** Puts a line behind the last amount or take of a stage, or else behind its heading. */
  Optional<TextEdit> behindAmounts(Stage stage, String content) {
    return last(Stream.of(
                Stream.of(stage.span()),
                stage.amounts().stream().map(line -> line.span()),
                stage.takes().stream().map(line -> line.span()))
            .flatMap(spans -> spans))
        .map(span -> below(span, content));
  }

  /** Puts a line behind the last step of a stage, or else behind all it weighs. */
  Optional<TextEdit> behindSteps(Stage stage, String content) {
    return last(stage.steps().stream().map(step -> step.span()))
        .map(span -> below(span, content))
        .or(() -> behindAmounts(stage, content));
  }

  private Optional<Span> last(Stream<Span> spans) {
    return spans
        .filter(isWrittenHere)
        .reduce((one, other) -> one.start() < other.start() ? other : one);
  }

  private String lineEnd() {
    return LineEnds.of(source.text());
  }
}
