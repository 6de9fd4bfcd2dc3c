package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.reading.Suggestions;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What all questions of {@code kettlemark answer} share. */
abstract class AnswerVerb implements Callable<Integer> {

  /** How an answer is written. */
  enum Format {
    TEXT,
    JSON
  }

  private final Terminal terminal;
  private final Supplier<Paint> paint;

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text or json; text if not given.")
  private Format format = Format.TEXT;

  @Option(names = "--explain", description = "Add how the answer came about.")
  private boolean explain;

  AnswerVerb(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  /** Writes the one answer that a question has. */
  Integer tell(Outcome<Answer> outcome) {
    Answer answer = outcome.fold(known -> known, unknown -> {
      throw new UsageMistake("there is no answer: " + unknown.because());
    });
    if (isJson()) {
      Json.write(AnswerText.json(answer), terminal.out());
    } else {
      text().write(answer);
    }
    return ExitCode.DONE;
  }

  LibraryFolder folder() {
    return library.read(terminal);
  }

  static ComputedFormula formula(LibraryFolder folder, String name) {
    return NamedEntry.formula(folder, name).computed();
  }

  static Shelf shelf(LibraryFolder folder) {
    return new Shelf(folder.snapshot());
  }

  /** The index of a stage; the last of that name, as takes have it. */
  static int stage(ComputedFormula formula, String name) {
    List<String> names =
        formula.formula().stages().stream().map(Stage::name).map(n -> n.value()).toList();
    int index = names.lastIndexOf(name);
    if (index < 0) {
      throw new UsageMistake("`" + formula.formula().name().value() + "` has no stage `"
          + Visible.of(name) + "`" + Suggestions.sentence(name, names));
    }
    return index;
  }

  boolean isJson() {
    return format == Format.JSON;
  }

  AnswerText text() {
    return new AnswerText(terminal.out(), paint.get(), terminal.width(), explain);
  }

  Terminal terminal() {
    return terminal;
  }
}
