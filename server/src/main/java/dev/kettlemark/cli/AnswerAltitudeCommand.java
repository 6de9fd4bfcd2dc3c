package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.LocalCook;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer altitude}: how hot to cook at another height. */
@Command(
    name = "altitude",
    header = "How hot must a syrup be cooked at another altitude?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Finds the temperature that leaves the same solids. The band is that of the weather, which moves"
          + " the air pressure by some 3 %%."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  kettlemark answer altitude 143 °C --from 0 m --to 1609 m",
      "  kettlemark answer altitude 260F --to 2000m --syrup FORMULA STAGE"
    })
final class AnswerAltitudeCommand extends AnswerVerb {

  @Parameters(
      index = "0",
      paramLabel = "TEMPERATURE",
      parameterConsumer = AmountPhrase.TemperatureWords.class,
      description = "The cook temperature as written, such as 143 °C.")
  private Optional<String> temperature = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "HEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "Where it was written; 0 m if not given.")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--to",
      paramLabel = "HEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "Where it is to be cooked; the house's altitude if not given.")
  private Optional<String> to = Optional.empty();

  @Option(
      names = "--syrup",
      arity = "2",
      paramLabel = "NAME",
      description = "A formula and its stage, for what is cooked; sucrose if not given.")
  private List<String> syrup = List.of();

  AnswerAltitudeCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    String written = Display.celsius(AmountPhrase.temperature(temperature.orElse("")));
    return tell(
        answer(), answer -> Asked.of("altitude", answer, written, metres(from), metres(to)));
  }

  private static String metres(Optional<String> height) {
    return height
        .map(text -> Display.trimmed(AmountPhrase.length(text).metres(), 0) + " m")
        .orElse("–");
  }

  private Outcome<Answer> answer() {
    Temperature written = AmountPhrase.temperature(temperature.orElse(""));
    Length start = from.map(AmountPhrase::length).orElse(Length.ofMetres(0));
    if (syrup.isEmpty()) {
      Length end = to.map(AmountPhrase::length)
          .orElseThrow(() -> new UsageMistake("say where it is to be cooked, with --to"));
      return LocalCook.of(Composition.of(Component.SUCROSE), written, start, end);
    }
    ComputedFormula computed = formula(folder(), syrup.get(0));
    Length end =
        to.map(AmountPhrase::length).orElse(Length.ofMetres(computed.kitchen().altitudeMetres()));
    int index = stage(computed, syrup.get(1));
    return computed
        .process()
        .stages()
        .get(index)
        .left()
        .composition()
        .flatMap(mass -> LocalCook.of(mass, written, start, end));
  }
}
