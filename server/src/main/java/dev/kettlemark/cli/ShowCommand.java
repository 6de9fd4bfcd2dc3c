package dev.kettlemark.cli;

import dev.kettlemark.features.FormulaTable;
import dev.kettlemark.features.FormulaTableText;
import java.io.PrintWriter;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark show}: a formula as a table by stage. */
@Command(
    name = "show",
    header = "Show a formula as a table: percent, grams, what each stage leaves.",
    sortOptions = false,
    description = {
      "",
      "Each stage lists what is weighed in, as written, as a share of the charge and in grams, and then"
          + " what it leaves: weight, water, temperature and states. The end gives the yield, the water"
          + " and the water activity of the whole. A ± is the model's error, not a spread of batches."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 shown, 2 there is no such formula or it cannot be read.",
      "",
      "JSON gives full figures in the units that their names say, null for what is unknown. CSV gives"
          + " one line for each amount (kind weighed), each mass taken over (taken) and each mass a"
          + " stage leaves (left).",
      "",
      "Examples:",
      "  kettlemark show egg-honey-nougat --in samples/gannet-slip",
      "  kettlemark show egg-honey-nougat --in samples/gannet-slip --explain"
    })
final class ShowCommand implements Callable<Integer> {

  /** How the table is written. */
  enum Format {
    TEXT,
    JSON,
    CSV
  }

  private final Terminal terminal;
  private final Supplier<Paint> paint;

  @Parameters(paramLabel = "FORMULA", description = "The name of a formula or variant.")
  private String formula = "";

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text, json or csv; text if not given.")
  private Format format = Format.TEXT;

  @Option(names = "--explain", description = "Add how each computed figure came about.")
  private boolean explain;

  ShowCommand(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  @Override
  public Integer call() {
    NamedEntry entry = NamedEntry.formula(library.read(terminal), formula);
    FormulaTable table = FormulaTable.of(entry.computed());
    PrintWriter out = terminal.out();
    switch (format) {
      case JSON -> Json.write(FormulaTableData.json(table), out);
      case CSV -> FormulaTableData.csv(table).forEach(out::println);
      case TEXT -> {
        FormulaTableText.lines(table, terminal.width())
            .forEach(line -> out.println(Visible.of(line)));
        if (explain) {
          out.println();
          new Explanation(out, paint.get(), terminal.width()).write(table);
        }
      }
    }
    return ExitCode.DONE;
  }
}
