package dev.kettlemark.comparison;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.comparison.FigureChange.Figure;
import dev.kettlemark.comparison.FigureChange.Group;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.science.Bloom;
import dev.kettlemark.science.GelatineStrength;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * What keeps the active matter of a dose when the entry of its ingredient changes.
 *
 * <p>A whipping protein counts by its protein: m₂ = m₁·p₁/p₂. A gelatine counts by its bloom: the root rule of
 * {@link GelatineStrength}, with the linear rule beside it where the two disagree. Equal matter is not yet an equal
 * foam or gel; only a small batch shows that.
 */
final class ActiveMatter {

  private final Snapshot before;
  private final Snapshot after;
  private final List<KeptDose> kept = new ArrayList<>();

  private ActiveMatter(Snapshot before, Snapshot after) {
    this.before = before;
    this.after = after;
  }

  /** How much more of an ingredient it takes, and why. */
  private record Strength(
      String measure, FigureChange stated, double factor, Optional<Double> otherwise) {}

  static List<KeptDose> of(Snapshot before, Snapshot after, Collection<Key> changed) {
    ActiveMatter matter = new ActiveMatter(before, after);
    for (Key key : changed) {
      Optional<Ingredient> old = ingredient(before, key);
      Optional<Ingredient> now = ingredient(after, key);
      if (old.isPresent() && now.isPresent()) {
        strength(old.get(), now.get()).ifPresent(strength -> matter.add(key.name(), strength));
      }
    }
    return List.copyOf(matter.kept);
  }

  private static Optional<Ingredient> ingredient(Snapshot snapshot, Key key) {
    return key.in(snapshot.library())
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof Ingredient i ? Optional.of(i) : Optional.empty());
  }

  private static Optional<Strength> strength(Ingredient old, Ingredient now) {
    if (!now.hasRole("whipping") && !now.hasRole("gelling")) {
      return Optional.empty();
    }
    Optional<Bloom> from = Shelf.bloom(old);
    Optional<Bloom> to = Shelf.bloom(now);
    return from.isPresent() && to.isPresent()
        ? byBloom(from.get(), to.get())
        : Outcome.both(protein(old), protein(now), ActiveMatter::byProtein)
            .toOptional()
            .flatMap(strength -> strength);
  }

  private static Optional<Strength> byBloom(Bloom from, Bloom to) {
    Mass one = Mass.ofGrams(1);
    double linear = GelatineStrength.byLinearRule(one, from, to).grams();
    return strength(
        "bloom",
        shown(Display.trimmed(from.grams(), 0), from.grams()),
        shown(Display.trimmed(to.grams(), 0), to.grams()),
        GelatineStrength.byRootRule(one, from, to).grams(),
        GelatineStrength.rulesDisagree(from, to) ? Optional.of(linear) : Optional.empty());
  }

  private static Optional<Strength> byProtein(Ratio from, Ratio to) {
    return from.fraction() > 0 && to.fraction() > 0
        ? strength(
            "protein",
            shown(Display.percent(from), from.percent()),
            shown(Display.percent(to), to.percent()),
            from.fraction() / to.fraction(),
            Optional.empty())
        : Optional.empty();
  }

  private static Shown shown(String text, double number) {
    return Shown.number(text, "stated", number);
  }

  private static Optional<Strength> strength(
      String measure, Shown from, Shown to, double factor, Optional<Double> otherwise) {
    return from.looksLike(to)
        ? Optional.empty()
        : Optional.of(new Strength(
            measure,
            new FigureChange(new Figure(Group.AMOUNT, measure), from, to),
            factor,
            otherwise));
  }

  private static Outcome<Ratio> protein(Ingredient ingredient) {
    return ingredient.composition().map(c -> Ratio.ofFraction(c.fraction(Component.PROTEIN)));
  }

  private void add(String ingredient, Strength strength) {
    after.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .forEach(entry -> Key.of(entry)
            .in(before.library())
            .flatMap(old -> Formulas.computed(before, old))
            .ifPresent(old -> Formulas.computed(after, entry)
                .ifPresent(now -> add(ingredient, strength, old, now))));
  }

  private void add(String ingredient, Strength strength, ComputedFormula old, ComputedFormula now) {
    for (LineAmount line : now.amounts().lines()) {
      boolean own = !now.formula().inherits(line.line().span());
      if (own && line.line().ingredient().value().equals(ingredient)) {
        String stage = now.formula().stages().get(line.stage()).name().value();
        Outcome.both(
                dose(old, stage, ingredient),
                dose(now, stage, ingredient),
                (was, is) -> keptDose(ingredient, strength, now, stage, was, is))
            .toOptional()
            .filter(dose -> !kept.contains(dose))
            .ifPresent(kept::add);
      }
    }
  }

  private static KeptDose keptDose(
      String ingredient,
      Strength strength,
      ComputedFormula formula,
      String stage,
      Ratio was,
      Ratio now) {
    Ratio kept = was.times(strength.factor());
    return new KeptDose(
        ingredient,
        strength.measure(),
        strength.stated(),
        formula.formula().name().value(),
        stage,
        was,
        now,
        kept,
        formula
            .amounts()
            .charge()
            .map(charge -> Mass.ofGrams(charge.doubleValue() * kept.fraction())),
        strength.otherwise().map(was::times));
  }

  /** All lines of an ingredient in one stage; unknown where the stage has none. */
  private static Outcome<Ratio> dose(ComputedFormula formula, String stage, String ingredient) {
    List<LineAmount> lines = formula.amounts().lines().stream()
        .filter(line -> line.line().ingredient().value().equals(ingredient))
        .filter(
            line -> formula.formula().stages().get(line.stage()).name().value().equals(stage))
        .toList();
    if (lines.isEmpty()) {
      return Outcome.unknown(Reason.MISSING_FIGURE, "the stage has no such line");
    }
    Outcome<Ratio> sum = Outcome.known(Ratio.ZERO);
    for (LineAmount line : lines) {
      sum = Outcome.both(
          sum, line.share(), (all, one) -> all.plus(Ratio.ofFraction(one.doubleValue())));
    }
    return sum;
  }
}
