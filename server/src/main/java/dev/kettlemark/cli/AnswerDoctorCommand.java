package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.answers.DoctorExchange;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer doctor}: how much sugar to exchange for syrup. */
@Command(
    name = "doctor",
    header = "How much sugar must be exchanged for syrup?",
    sortOptions = false,
    description = {
      "",
      "Takes a stage to a wanted share of doctor sugars: of all saccharides, those that are not"
          + " sucrose. Dry solids and charge stay the same; the stage's water gives up the difference."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n")
final class AnswerDoctorCommand extends AnswerVerb {

  @Parameters(index = "0", paramLabel = "FORMULA", description = "A formula or variant.")
  private String formula = "";

  @Parameters(index = "1", paramLabel = "STAGE", description = "The stage that holds the sugar.")
  private String stage = "";

  @Option(
      names = "--share",
      required = true,
      paramLabel = "SHARE",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "The doctor share wanted, as 25%%.")
  private Optional<String> share = Optional.empty();

  @Option(
      names = "--syrup",
      paramLabel = "INGREDIENT",
      description = "The syrup; the stage's own or glucose-syrup-42 if not given.")
  private Optional<String> syrup = Optional.empty();

  AnswerDoctorCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    LibraryFolder folder = folder();
    ComputedFormula computed = formula(folder, formula);
    Ratio wanted = Ratio.ofFraction(AmountPhrase.share(share.orElse("")).doubleValue());
    return tell(
        DoctorExchange.of(computed, shelf(folder), stage(computed, stage), wanted, syrup),
        answer -> Asked.of(
            "doctor",
            computed,
            answer,
            stage,
            computed.formula().shownName(),
            Display.percent(wanted)));
  }
}
