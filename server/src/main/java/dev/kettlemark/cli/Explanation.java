package dev.kettlemark.cli;

import dev.kettlemark.analysis.Figure;
import dev.kettlemark.analysis.FigureDerivations;
import dev.kettlemark.features.FormulaTable;
import dev.kettlemark.features.FormulaTable.ExplainedStep;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Outcome;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How the figures of a formula came about: stage by stage, then the whole. */
final class Explanation {

  private static final String WHOLE = "the whole";

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
    for (Figure figure : Figure.values()) {
      write(WHOLE, figure, table.totals().explained(figure));
    }
  }

  /**
   * What was computed for one stage, or one figure of the whole.
   *
   * @return whether there was anything to explain
   */
  boolean write(FormulaTable table, String value) {
    Optional<StageRows> stage = stage(table, value);
    if (stage.isPresent()) {
      write(stage.get());
      return !stage.get().explained().isEmpty();
    }
    Optional<Figure> figure = Figure.ofWord(value);
    figure.ifPresent(one -> write(WHOLE, one, table.totals().explained(one)));
    return figure.isPresent();
  }

  /** One figure of what one stage leaves. */
  void write(StageRows stage, Figure figure) {
    write(stage.name(), figure, FigureDerivations.of(stage.figures(), figure));
  }

  static Optional<StageRows> stage(FormulaTable table, String name) {
    return table.stages().stream().filter(s -> s.name().equals(name)).findFirst();
  }

  /** The words that {@link #write(FormulaTable, String)} knows. */
  static List<String> values(FormulaTable table) {
    return Stream.concat(table.stages().stream().map(StageRows::name), figures().stream())
        .toList();
  }

  static List<String> figures() {
    return Arrays.stream(Figure.values()).map(Figure::word).toList();
  }

  private void write(StageRows stage) {
    for (ExplainedStep step : stage.explained()) {
      write(stage.name() + ", " + step.step(), step.derivation());
    }
  }

  private void write(String of, Figure figure, Outcome<Derivation> explained) {
    String heading = of + ", " + figure.title();
    explained.fold(
        derivation -> {
          write(heading, derivation);
          return true;
        },
        unknown -> {
          out.println(paint.bold(Visible.of(heading)));
          out.println("  unknown: " + Visible.of(unknown.because()));
          out.println();
          return false;
        });
  }

  private void write(String heading, Derivation derivation) {
    out.println(paint.bold(Visible.of(heading)));
    DerivationTree.lines(derivation, paint, width, 2).forEach(out::println);
    out.println();
  }
}
