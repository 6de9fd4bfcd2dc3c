package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.SugarExchange;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.reading.Suggestions;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.hipparchus.fraction.BigFraction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer sugar}: one sugar or syrup for another. */
@Command(
    name = "sugar",
    header = "How much of one sugar or syrup for another?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Dry solids and charge stay the same; the water of the stage makes up the difference. Sweetness,"
          + " graining and colour do not stay."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example, in samples/gannet-slip:",
      "  kettlemark answer sugar heather-nougat glucose-syrup-42 --by white-sugar --part 20%%"
    })
final class AnswerSugarCommand extends AnswerVerb {

  @Parameters(index = "0", paramLabel = "FORMULA", description = "A formula or variant.")
  private String formula = "";

  @Parameters(index = "1", paramLabel = "SUGAR", description = "The sugar or syrup that goes.")
  private String sugar = "";

  @Option(
      names = "--by",
      required = true,
      paramLabel = "OTHER",
      description = "The sugar or syrup that comes.")
  private String by = "";

  @Option(
      names = "--part",
      paramLabel = "SHARE",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "How much of it goes, as 20%%; all of it if not given.")
  private Optional<String> part = Optional.empty();

  AnswerSugarCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    LibraryFolder folder = folder();
    ComputedFormula computed = formula(folder, formula);
    Material fresh = shelf(folder)
        .material(by)
        .filter(SugarExchange::isSugar)
        .orElseThrow(() -> new UsageMistake(
            "`" + Visible.of(by) + "` is no sugar or syrup that the library describes"));
    int index = line(computed);
    Material old = computed.material(sugar).orElseThrow();
    BigFraction share = part.map(AmountPhrase::share).orElse(BigFraction.ONE);
    return tell(
        SugarExchange.of(computed, index, fresh, share),
        answer -> Asked.of(
                "sugar",
                computed,
                answer,
                shown(old),
                shown(fresh),
                computed.formula().shownName())
            .replacing(old, fresh));
  }

  /** Its first line, which is where most of it stands. */
  private int line(ComputedFormula computed) {
    List<String> names = computed.formula().amounts().stream()
        .map(AmountLine::ingredient)
        .map(name -> name.value())
        .toList();
    int index = names.indexOf(sugar);
    if (index < 0) {
      throw new UsageMistake("`" + Visible.of(formula) + "` weighs no `" + Visible.of(sugar) + "`"
          + Suggestions.sentence(sugar, names));
    }
    return index;
  }

  private static String shown(Material material) {
    return material.ingredient().map(i -> i.shownName()).orElse(material.name());
  }
}
