package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.CookTemperature;
import dev.kettlemark.answers.Wish;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.quantity.Ratio;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer cook}: how hot to cook a stage. */
@Command(
    name = "cook",
    header = "How hot must a stage be cooked?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Runs the whole formula for each temperature it tries, so that what meets the syrup later"
          + " counts. The band is the boiling model's error of one percent point of water in the pan."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples, in samples/gannet-slip:",
      "  kettlemark answer cook egg-honey-nougat first-syrup --moisture 10%%",
      "  kettlemark answer cook peanut-brittle syrup --texture brittle --explain"
    })
final class AnswerCookCommand extends AnswerVerb {

  @Parameters(index = "0", paramLabel = "FORMULA", description = "A formula or variant.")
  private String formula = "";

  @Parameters(index = "1", paramLabel = "STAGE", description = "The stage that is cooked.")
  private String stage = "";

  @ArgGroup(exclusive = false, heading = "%nWhat is wanted, one of:%n")
  private Wanted wanted = new Wanted();

  AnswerCookCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  /** The ways to say what is wanted. */
  static final class Wanted {

    @Option(
        names = "--moisture",
        paramLabel = "SHARE",
        parameterConsumer = AmountPhrase.AmountWords.class,
        description = "Water in what the formula makes, as 10%%.")
    private Optional<String> moisture = Optional.empty();

    @Option(
        names = "--stage-moisture",
        paramLabel = "SHARE",
        parameterConsumer = AmountPhrase.AmountWords.class,
        description = "Water in what the stage leaves, as 4%%.")
    private Optional<String> stageMoisture = Optional.empty();

    @Option(
        names = "--texture",
        paramLabel = "WORD",
        description = "The bite of what the formula makes: brittle, chewy or soft.")
    private Optional<String> texture = Optional.empty();

    @Option(
        names = "--aw",
        paramLabel = "ACTIVITY",
        description = "Water activity of what the formula makes, at 25 °C, as 0.55.")
    private Optional<Double> activity = Optional.empty();

    /** The one wish that was given. */
    Wish wish() {
      long given = Stream.of(moisture, stageMoisture, texture, activity)
          .filter(Optional::isPresent)
          .count();
      if (given != 1) {
        throw new UsageMistake((given == 0 ? "say what is wanted: " : "say only one of ")
            + "--moisture, --stage-moisture, --texture, --aw");
      }
      return moisture
          .<Wish>map(text -> new Wish.FinishedMoisture(share(text)))
          .or(() -> stageMoisture.map(text -> new Wish.StageMoisture(share(text))))
          .or(() -> activity.map(figure -> new Wish.Activity(Ratio.ofFraction(figure))))
          .orElseGet(() -> new Wish.Texture(bite(texture.orElseThrow())));
    }

    private static Ratio share(String text) {
      return Ratio.ofFraction(AmountPhrase.share(text).doubleValue());
    }

    private static Wish.Bite bite(String word) {
      return Wish.Bite.ofWord(word)
          .orElseThrow(() -> new UsageMistake("`" + Visible.of(word)
              + "` is no texture that the glass transition decides; those are "
              + Arrays.stream(Wish.Bite.values())
                  .map(Wish.Bite::word)
                  .collect(Collectors.joining(", "))));
    }
  }

  @Override
  public Integer call() {
    ComputedFormula computed = formula(folder(), formula);
    stage(computed, stage);
    Wish wish = wanted.wish();
    return tell(
        CookTemperature.of(computed, stage, wish),
        answer -> Asked.of(
            "cook", computed, answer, stage, computed.formula().shownName(), wish.words()));
  }
}
