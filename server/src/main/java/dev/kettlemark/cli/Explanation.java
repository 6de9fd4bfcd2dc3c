package dev.kettlemark.cli;

import dev.kettlemark.features.FormulaTable;
import dev.kettlemark.features.FormulaTable.ExplainedStep;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.quantity.Derivation;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How the figures of a formula came about: stage by stage, then the whole. */
final class Explanation {

  /** The word by which the user asks for the water activity of the whole. */
  static final String WATER_ACTIVITY = "water-activity";

  private final PrintWriter out;
  private final Paint paint;
  private final int width;

  Explanation(PrintWriter out, Paint paint, int width) {
    this.out = out;
    this.paint = paint;
    this.width = width;
  }

  /** Everything that was computed. */
  void write(FormulaTable table) {
    table.stages().forEach(this::write);
    table.totals().explainedActivity().ifPresent(activity -> write("the whole", activity));
  }

  /**
   * What was computed for one stage, or for the water activity.
   *
   * @return whether there was anything to explain
   */
  boolean write(FormulaTable table, String value) {
    if (value.equals(WATER_ACTIVITY)) {
      Optional<Derivation> activity = table.totals().explainedActivity();
      activity.ifPresent(derivation -> write("the whole", derivation));
      return activity.isPresent();
    }
    Optional<StageRows> stage =
        table.stages().stream().filter(s -> s.name().equals(value)).findFirst();
    stage.ifPresent(this::write);
    return stage.filter(s -> !s.explained().isEmpty()).isPresent();
  }

  /** The words that {@link #write(FormulaTable, String)} knows. */
  static List<String> values(FormulaTable table) {
    return Stream.concat(table.stages().stream().map(StageRows::name), Stream.of(WATER_ACTIVITY))
        .toList();
  }

  private void write(StageRows stage) {
    for (ExplainedStep step : stage.explained()) {
      write(stage.name() + ", " + step.step(), step.derivation());
    }
  }

  private void write(String heading, Derivation derivation) {
    out.println(paint.bold(Visible.of(heading)));
    DerivationTree.lines(derivation, paint, width, 2).forEach(out::println);
    out.println();
  }
}
