package dev.kettlemark.cli;

import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.GelatineExchange;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.science.Bloom;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer gelatine}: how much of another strength. */
@Command(
    name = "gelatine",
    header = "How much gelatine of another strength?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Two rules circulate: the root rule follows the strength of the gel, the linear rule is custom in"
          + " kitchens. Both are shown."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {"", "Example:", "  kettlemark answer gelatine 12 g --from 250 --to 200"})
final class AnswerGelatineCommand extends AnswerVerb {

  @Parameters(
      index = "0",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "What the recipe asks for, such as 12 g.")
  private Optional<String> weight = Optional.empty();

  @Option(
      names = "--from",
      required = true,
      paramLabel = "BLOOM",
      description = "The strength that the recipe asks for.")
  private double from;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "BLOOM",
      description = "The strength at hand.")
  private double to;

  @Option(names = "--linear", description = "Use the linear rule.")
  private boolean linear;

  AnswerGelatineCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    return tell(
        answer(),
        answer -> Asked.of(
            "gelatine",
            answer,
            weight.orElse(""),
            Display.trimmed(from, 0),
            Display.trimmed(to, 0)));
  }

  private Outcome<Answer> answer() {
    Mass mass = Mass.ofGrams(AmountPhrase.grams(weight.orElse("")).doubleValue());
    return Outcome.known(GelatineExchange.of(
        mass,
        bloom(from),
        bloom(to),
        linear ? GelatineExchange.Rule.LINEAR : GelatineExchange.Rule.ROOT));
  }

  private static Bloom bloom(double grams) {
    if (!Bloom.isGrade(grams)) {
      throw new UsageMistake("a bloom lies from 50 to 325");
    }
    return new Bloom(grams);
  }
}
