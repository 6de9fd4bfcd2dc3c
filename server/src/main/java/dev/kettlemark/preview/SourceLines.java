package dev.kettlemark.preview;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.sheets.Mark;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;

/**
 * Where the stages, amounts and steps of a formula were written.
 *
 * <p>What a variant takes over stands in its parent, or in the parent of that.
 */
final class SourceLines {

  private static final Part<Stage> HEADING = new Part<>(
      List::of,
      Stage::span,
      (one, other) -> one.name().value().equals(other.name().value()));
  private static final Part<AmountLine> AMOUNT =
      new Part<>(Stage::amounts, AmountLine::span, AmountLine::equals);
  private static final Part<TakeLine> TAKE =
      new Part<>(Stage::takes, TakeLine::span, TakeLine::equals);
  private static final Part<Statement> STEP =
      new Part<>(Stage::steps, Statement::span, Statement::equals);

  private final Snapshot snapshot;
  private final Entry entry;
  private final Formula formula;
  private final List<Line> lines = new ArrayList<>();

  /** A line, and what tells it. */
  record Line(Place place, Mark mark) {}

  /**
   * What a stage holds of one kind.
   *
   * @param isSame whether two are written alike, when they stand at one place
   */
  private record Part<T>(
      Function<Stage, List<T>> of, Function<T, Span> span, BiPredicate<T, T> isSame) {}

  private SourceLines(Snapshot snapshot, Entry entry, Formula formula) {
    this.snapshot = snapshot;
    this.entry = entry;
    this.formula = formula;
  }

  /** All lines of a formula or variant, in the order of what is made; none for other sections. */
  static List<Line> of(Snapshot snapshot, Entry entry) {
    return Formulas.computed(snapshot, entry)
        .map(ComputedFormula::formula)
        .map(formula -> new SourceLines(snapshot, entry, formula).all())
        .orElse(List.of());
  }

  private List<Line> all() {
    for (int i = 0; i < formula.stages().size(); i++) {
      add(i, HEADING, Mark.Kind.WEIGHED);
      add(i, HEADING, Mark.Kind.STAGE);
      add(i, AMOUNT, Mark.Kind.AMOUNT);
      add(i, TAKE, Mark.Kind.TAKE);
      add(i, STEP, Mark.Kind.STEP);
    }
    return lines;
  }

  private <T> void add(int stage, Part<T> part, Mark.Kind kind) {
    String name = formula.name().value();
    Stage in = formula.stages().get(stage);
    List<T> all = part.of().apply(in);
    for (int i = 0; i < all.size(); i++) {
      Place place = place(entry, formula, in.name().value(), part, all.get(i));
      lines.add(new Line(place, new Mark(name, kind, stage, i)));
    }
  }

  private <T> Place place(Entry at, Formula of, String stage, Part<T> part, T item) {
    Span span = part.span().apply(item);
    if (!of.inherits(span)) {
      return at.place(span);
    }
    String parent = of.parent().orElseThrow().value();
    Optional<Entry> above = snapshot.library().find(Kind.MATERIAL, parent);
    Optional<Formula> whole =
        Formulas.resolved(parent).ask(snapshot).map(resolved -> resolved.formula());
    if (above.isPresent() && whole.isPresent()) {
      List<T> there = items(whole.get(), stage, part);
      List<T> moved = items(whole.get().relocated(span), stage, part);
      for (int i = 0; i < moved.size(); i++) {
        if (part.isSame().test(moved.get(i), item)) {
          return place(above.get(), whole.get(), stage, part, there.get(i));
        }
      }
    }
    // The variant has altered it without a line for it, as a step that names what was replaced.
    return at.place(span);
  }

  private static <T> List<T> items(Formula of, String stage, Part<T> part) {
    return of.stage(stage).map(part.of()).orElse(List.of());
  }
}
