package dev.kettlemark.checks;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;

/** The lines of one stage, with the comment lines right above its heading. */
record StageBlock(Span span) {

  /**
   * Finds the lines of a stage.
   *
   * @param formula as written in the text
   */
  static StageBlock of(String text, Formula formula, Stage stage) {
    Source source = Source.of(text);
    int index = formula.stages().indexOf(stage);
    int start = start(source, stage);
    int limit = index + 1 < formula.stages().size()
        ? start(source, formula.stages().get(index + 1))
        : lastWritten(source, stage);
    return new StageBlock(new Span(start, trimmedEnd(text, start, limit)));
  }

  /** Moves a block up, before another; what stands between the two keeps its distance. */
  static TextEdit moveUp(String text, StageBlock moved, StageBlock before) {
    Span passed =
        new Span(before.span.start(), trimmedEnd(text, before.span.start(), moved.span.start()));
    String gap = text.substring(passed.end(), moved.span.start());
    return new TextEdit(before.span.to(moved.span), moved.span.of(text) + gap + passed.of(text));
  }

  private static int start(Source source, Stage stage) {
    int line = source.lineAt(stage.span().start());
    while (line > 0 && isComment(source, line - 1)) {
      line--;
    }
    return source.line(line).start();
  }

  /** Comments behind the last line of the last stage belong to the section that follows. */
  private static int lastWritten(Source source, Stage stage) {
    int line = source.lineCount() - 1;
    int heading = source.lineAt(stage.span().start());
    while (line > heading && (isBlank(source, line) || isComment(source, line))) {
      line--;
    }
    return source.line(line).end();
  }

  private static int trimmedEnd(String text, int start, int end) {
    return start + text.substring(start, end).stripTrailing().length();
  }

  private static boolean isComment(Source source, int line) {
    return source.line(line).of(source.text()).strip().startsWith("#");
  }

  private static boolean isBlank(Source source, int line) {
    return source.line(line).of(source.text()).isBlank();
  }
}
