package dev.kettlemark.cli;

import dev.kettlemark.cards.Side;
import dev.kettlemark.cards.SideBySide;
import dev.kettlemark.cards.SwapCard;
import dev.kettlemark.features.ChangesText;
import dev.kettlemark.features.WhatIf;
import dev.kettlemark.library.Snapshot;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark answer swap}: what becomes of a formula with one material for another. */
@Command(
    name = "swap",
    header = "What changes with one material in the place of another?",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Amounts, water, water activity, texture, sweetness, allergens, claims and findings are told"
          + " before and after, of the formula and of all that is made of it. No text is changed."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example, in samples/gannet-slip:",
      "  kettlemark answer swap heather-nougat heather-honey --by agave-syrup"
    })
final class AnswerSwapCommand extends AnswerVerb {

  @Parameters(index = "0", paramLabel = "FORMULA", description = "The formula or variant.")
  private String formula = "";

  @Parameters(index = "1", paramLabel = "MATERIAL", description = "What goes.")
  private String material = "";

  @Option(
      names = "--by",
      required = true,
      paramLabel = "OTHER",
      description = "What comes: a name, or an amount and a name, such as \"14 %% agave-syrup\".")
  private String by = "";

  AnswerSwapCommand(Terminal terminal, Supplier<Paint> paint) {
    super(terminal, paint);
  }

  @Override
  public Integer call() {
    LibraryFolder folder = folder();
    formula(folder, formula);
    WhatIf answer = WhatIf.of(folder.snapshot(), formula, material, by)
        .fold(known -> known, unknown -> {
          throw new UsageMistake("there is no answer: " + unknown.because());
        });
    if (isCard()) {
      SideBySide both = SideBySide.of(
          side(folder.snapshot(), Optional.empty()),
          side(answer.then(), Optional.of(answer.title())));
      return card(SwapCard.of(
          both, material, by.strip().substring(by.strip().lastIndexOf(' ') + 1), locale()));
    }
    if (isJson()) {
      Json.write(
          ChangesJson.of("as written", answer.title(), answer.comparison()),
          terminal().out());
    } else {
      ChangesText.lines(
              "as written", answer.title(), answer.comparison(), terminal().width())
          .forEach(line -> terminal().out().println(Visible.of(line)));
    }
    return ExitCode.DONE;
  }

  private Side side(Snapshot snapshot, Optional<String> state) {
    return Side.of(snapshot, formula, state, Optional.empty()).fold(known -> known, unknown -> {
      throw new UsageMistake("there is no answer: " + Visible.of(unknown.because()));
    });
  }
}
