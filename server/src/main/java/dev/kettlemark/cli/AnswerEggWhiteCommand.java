package dev.kettlemark.cli;

import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.answers.WhiteExchange;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer egg-white}: fresh for dried and back. */
@Command(
    name = "egg-white",
    header = "How much dried egg white for fresh, or fresh for dried?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "The protein stays the same, or with --solids the dry solids, and water makes up the rest, so"
          + " that the whole weighs the same."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {"", "Example:", "  kettlemark answer egg-white 134 g --to dried"})
final class AnswerEggWhiteCommand extends AnswerVerb {

  /** How the egg white wanted comes. */
  enum Kind {
    DRIED,
    FRESH
  }

  private static final String FRESH = "egg-white";
  private static final String DRIED = "egg-white-powder";

  @Parameters(
      index = "0",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "What the recipe asks for, such as 134 g.")
  private Optional<String> weight = Optional.empty();

  @Option(
      names = "--to",
      required = true,
      paramLabel = "KIND",
      description = "What is at hand: dried or fresh.")
  private Kind to = Kind.DRIED;

  @Option(names = "--solids", description = "Keep the dry solids instead of the protein.")
  private boolean solids;

  AnswerEggWhiteCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    return tell(answer());
  }

  private Outcome<Answer> answer() {
    Shelf shelf = shelf(folder());
    Material fresh = material(shelf, FRESH);
    Material dried = material(shelf, DRIED);
    Mass mass = Mass.ofGrams(AmountPhrase.grams(weight.orElse("")).doubleValue());
    WhiteExchange.Equal equal = solids ? WhiteExchange.Equal.SOLIDS : WhiteExchange.Equal.PROTEIN;
    return to == Kind.DRIED
        ? WhiteExchange.of(mass, fresh, dried, equal)
        : WhiteExchange.of(mass, dried, fresh, equal);
  }

  private static Material material(Shelf shelf, String name) {
    return shelf
        .material(name)
        .orElseThrow(() -> new UsageMistake("the library has no ingredient `" + name + "`"));
  }
}
