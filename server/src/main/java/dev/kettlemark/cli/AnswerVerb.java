package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.cards.AnswerCard;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.reading.Suggestions;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafHtml;
import dev.kettlemark.sheets.LeafMarkdown;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What all questions of {@code kettlemark answer} share. */
abstract class AnswerVerb implements Callable<Integer> {

  /** How an answer is written. */
  enum Format {
    TEXT,
    CARD,
    HTML,
    MARKDOWN,
    JSON
  }

  private final Terminal terminal;
  private final Supplier<Paint> paint;

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text or json; card, html or markdown for half a page with changes, cautions"
          + " and what is not known; text if not given.")
  private Format format = Format.TEXT;

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "Of a card: en-GB, en-US, de-DE or fr-FR; en-GB if not given.")
  private String language = "en-GB";

  @Mixin
  private OutOption out = new OutOption();

  @Option(names = "--explain", description = "Add how the answer came about.")
  private boolean explain;

  AnswerVerb(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  /** Writes the one answer that a question has, with what its card must know besides. */
  Integer tell(Outcome<Answer> outcome, Function<Answer, Asked> asked) {
    Answer answer = outcome.fold(known -> known, unknown -> {
      throw new UsageMistake("there is no answer: " + unknown.because());
    });
    if (isCard()) {
      return card(AnswerCard.of(asked.apply(answer), locale(), terminal.today()));
    }
    if (isJson()) {
      out.write(Json.text(AnswerText.json(answer)), terminal);
    } else {
      text().write(answer);
    }
    return ExitCode.DONE;
  }

  /** Whether half a page is wanted. */
  boolean isCard() {
    return format == Format.CARD || format == Format.HTML || format == Format.MARKDOWN;
  }

  Locale locale() {
    return Locale.forLanguageTag(language);
  }

  /** Writes half a page. */
  Integer card(Optional<Leaf> card) {
    Leaf leaf = card.orElseThrow(() -> new UsageMistake(
        "there are no words in `" + Visible.of(language) + "`; there are in en, de and fr"));
    out.write(
        switch (format) {
          case HTML -> LeafHtml.of(leaf);
          case MARKDOWN -> LeafMarkdown.of(leaf);
          default -> LeafText.of(leaf, paint.get(), terminal.width());
        },
        terminal);
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
