package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import dev.kettlemark.features.LabelText;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.labelling.Market;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark label}: what the label of a formula or product must and may say. */
@Command(
    name = "label",
    header = "Draft the label of a formula or product for a market.",
    sortOptions = false,
    description = {
      "",
      "Follows every ingredient through sub-formulas, variants and parts, and prints its allergens and"
          + " traces, the diets it keeps, whether its claims hold, the cautions it ought to carry, a draft"
          + " of the list of ingredients and an estimate of its nutrition. What no ingredient states is"
          + " said to be unknown. It is a draft: check it against current local law."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 shown, 2 there is no such formula or product or it cannot be read.",
      "",
      "Examples:",
      "  kettlemark label caramel-dome --in samples/gannet-slip",
      "  kettlemark label egg-honey-nougat --in samples/gannet-slip --market US"
    })
final class LabelCommand implements Callable<Integer> {

  /** How the label is written. */
  enum Format {
    TEXT,
    JSON
  }

  private final Terminal terminal;

  @Parameters(paramLabel = "NAME", description = "The name of a formula, variant or product.")
  private String name = "";

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = "--market",
      paramLabel = "MARKET",
      description = "EU or US; the markets of the house if not given, or else both.")
  private Optional<Market> market = Optional.empty();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text or json; text if not given.")
  private Format format = Format.TEXT;

  LabelCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    NamedEntry entry = NamedEntry.formulaOrProduct(library.read(terminal), name);
    Label label = Labels.label(entry.folder().snapshot(), entry.entry())
        .orElseThrow(() -> new UsageMistake(
            "`" + Visible.of(name) + "` cannot be worked out; run check to see why"));
    List<Market> markets = market.map(List::of).orElseGet(label::markets);
    PrintWriter out = terminal.out();
    switch (format) {
      case JSON -> Json.write(json(label, markets), out);
      case TEXT -> {
        for (int i = 0; i < markets.size(); i++) {
          if (i > 0) {
            out.println();
            out.println();
          }
          LabelText.lines(label, markets.get(i), terminal.width())
              .forEach(line -> out.println(Visible.of(line)));
        }
      }
    }
    return ExitCode.DONE;
  }

  private static JsonElement json(Label label, List<Market> markets) {
    JsonArray all = new JsonArray();
    markets.forEach(market -> all.add(LabelData.json(label, market)));
    return all;
  }
}
