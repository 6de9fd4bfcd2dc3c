package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.cards.Asked;
import dev.kettlemark.cards.MouldAnswer;
import java.util.Optional;
import java.util.function.Supplier;
import org.hipparchus.fraction.BigFraction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer mould}: one mould or frame for another. */
@Command(
    name = "mould",
    header = "What changes with another mould or frame?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Takes the mass that fills some moulds or frames of the house to others: how many it fills, how"
          + " many pieces of what weight come of it, and what charge fills the last one."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example, in samples/gannet-slip:",
      "  kettlemark answer mould heather-nougat --from 1x frame-slab --to frame-small"
    })
final class AnswerMouldCommand extends AnswerVerb {

  @Parameters(index = "0", paramLabel = "FORMULA", description = "A formula or variant.")
  private String formula = "";

  @Option(
      names = "--from",
      required = true,
      paramLabel = "COUNTx MOULD",
      parameterConsumer = AmountPhrase.CountWords.class,
      description = "What is filled now, as 4x dome-24.")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--to",
      required = true,
      paramLabel = "MOULD",
      description = "The other mould or frame of the house.")
  private String to = "";

  @Option(
      names = "--loss",
      paramLabel = "SHARE",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "What is lost in handling, as 4%%; none if not given.")
  private Optional<String> loss = Optional.empty();

  AnswerMouldCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    ComputedFormula computed = formula(folder(), formula);
    AmountPhrase now = AmountPhrase.counted(from.orElse(""));
    BigFraction lost = loss.map(AmountPhrase::share).orElse(BigFraction.ZERO);
    return tell(
        MouldAnswer.of(computed, now.name(), now.figure().intValue(), to, lost),
        answer -> Asked.of(
            "mould", computed, answer, from.orElse(""), to, computed.formula().shownName()));
  }
}
