package dev.kettlemark.cli;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;

import dev.kettlemark.features.TextTable;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.science.Check;
import dev.kettlemark.science.CheckTable;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;

/** {@code kettlemark verify-models}: every published figure beside the project's own. */
@Command(
    name = "verify-models",
    header = "Hold the models against published figures.",
    sortOptions = false,
    description = {
      "",
      "Computes each published case anew and prints both figures, their difference, the tolerance that"
          + " the model claims, and where the figure is printed. Figures are shown with six digits."
          + " \"From memory\" means that the figure was noted from memory of that source and not read"
          + " there again."
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Exit codes: 0 all agree, 1 at least one lies outside its tolerance."})
final class VerifyModelsCommand implements Callable<Integer> {

  /** What fits beside a case on a line; the difference tells the rest. */
  private static final int DIGITS = 6;

  private final Terminal terminal;
  private final Supplier<Paint> paint;

  VerifyModelsCommand(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  @Override
  public Integer call() {
    List<Check> checks = CheckTable.all();
    lines(checks, terminal.width()).forEach(terminal.out()::println);
    long outside = checks.stream().filter(check -> !check.passes()).count();
    long printed = checks.stream().filter(Check::isPublished).count();
    String verdict =
        printed + " published and " + (checks.size() - printed) + " recomputed figures, "
            + (outside == 0 ? "all within their tolerance" : outside + " outside their tolerance");
    terminal.out().println();
    terminal
        .out()
        .println(outside == 0 ? paint.get().good(verdict) : paint.get().bad(verdict));
    return outside == 0 ? ExitCode.DONE : ExitCode.FOUND;
  }

  /** The table, with model and source above each run of cases that share them. */
  static List<String> lines(List<Check> checks, int width) {
    TextTable table = new TextTable(2, LEFT, RIGHT, RIGHT, RIGHT, RIGHT);
    table.row("", "published", "computed", "difference", "tolerance");
    String heading = "";
    for (Check check : checks) {
      String next =
          check.model() + " (" + check.source() + (fromMemory(check) ? ", from memory" : "") + ")";
      if (!next.equals(heading)) {
        table.paragraph(next, 0, width);
        heading = next;
      }
      String unit = check.unit().isEmpty() ? "" : ", " + check.unit();
      table.row(
          check.subject() + unit,
          Display.significant(check.published(), DIGITS),
          computed(check),
          difference(check),
          Display.significant(check.tolerance(), 2));
    }
    return table.lines(width);
  }

  private static boolean fromMemory(Check check) {
    return check.provenance() == Check.Provenance.FROM_MEMORY;
  }

  private static String computed(Check check) {
    return Double.isNaN(check.computed())
        ? "unknown"
        : Display.significant(check.computed(), DIGITS);
  }

  private static String difference(Check check) {
    if (Double.isNaN(check.computed())) {
      return "outside";
    }
    String difference = Display.significant(check.difference(), 2);
    return check.passes() ? difference : "outside " + difference;
  }
}
