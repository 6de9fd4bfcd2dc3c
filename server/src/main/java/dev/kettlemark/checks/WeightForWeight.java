package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.VariantChange.Replace;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reports an agent that a variant replaces by the same weight of one with a quite different dry matter.
 *
 * <p>Fresh egg white is seven eighths water; the same weight of a powder is eight times the dose.
 */
public final class WeightForWeight implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "weight-for-weight",
      "an agent is replaced weight for weight by a far stronger or weaker one");

  private static final List<String> AGENTS = List.of("whipping", "gelling", "thickening");

  /** Amounts this near to each other were meant to be the same; an own choice. */
  private static final double SAME = 0.1;

  /** From one to the other and on to a third: pantries go no further. */
  private static final int MOST_STAND_INS = 4;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Optional<Variant> variant = Rules.sound(subject);
    Optional<ComputedFormula> own = subject.formula();
    Optional<ComputedFormula> parent = variant
        .flatMap(Variant::parent)
        .flatMap(name -> subject.ask(Formulas.computed(name.value())));
    if (own.isEmpty() || parent.isEmpty()) {
      return List.of();
    }
    return variant.get().changes().stream()
        .flatMap(change -> change instanceof Replace replace
            ? check(subject, own.get(), parent.get(), replace).stream()
            : Optional.<Finding>empty().stream())
        .toList();
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula own, ComputedFormula parent, Replace replace) {
    AmountLine line = replace.replacement();
    Optional<Ingredient> old = subject.ingredient(replace.old().value());
    Optional<Ingredient> fresh = subject.ingredient(line.ingredient().value());
    Optional<Double> before = parent.amounts().lines().stream()
        .filter(
            amount -> amount.line().ingredient().value().equals(replace.old().value()))
        .filter(amount -> replace.stage().isEmpty()
            || parent
                .formula()
                .stages()
                .get(amount.stage())
                .name()
                .value()
                .equals(replace.stage().get().value()))
        .findFirst()
        .flatMap(WeightForWeight::share);
    Optional<Double> after = own.amounts().lines().stream()
        .filter(amount -> amount.line().span().equals(line.span()))
        .findFirst()
        .flatMap(WeightForWeight::share);
    if (old.isEmpty()
        || fresh.isEmpty()
        || before.isEmpty()
        || after.isEmpty()
        || AGENTS.stream()
            .noneMatch(role -> old.get().hasRole(role) && fresh.get().hasRole(role))
        || Math.abs(after.get() - before.get()) > SAME * before.get()) {
      return Optional.empty();
    }
    double most = subject.threshold(Threshold.REPLACED_SOLIDS).fraction();
    return solids(old.get())
        .flatMap(dry -> solids(fresh.get()).map(other -> other / dry))
        .filter(times -> times > most || times < 1 / most)
        .map(times -> finding(subject, own, replace, old.get(), fresh.get(), times));
  }

  private static Optional<Double> share(LineAmount amount) {
    return amount.share().toOptional().map(share -> share.doubleValue());
  }

  private static Optional<Double> solids(Ingredient ingredient) {
    return ingredient
        .composition()
        .toOptional()
        .map(composition -> composition.solids().fraction())
        .filter(solids -> solids > 0);
  }

  private static Finding finding(
      Subject subject,
      ComputedFormula own,
      Replace replace,
      Ingredient old,
      Ingredient fresh,
      double times) {
    AmountLine line = replace.replacement();
    Finding finding = OtherPlace.fact(
        INFO.at(
                line.measure().span(),
                "`%s` takes the place of the same weight of `%s`, with %s times its dry matter",
                line.ingredient().value(),
                replace.old().value(),
                Display.trimmed(times, times < 1 ? 2 : 1))
            .because(
                "one part of a powder does the work of many parts of the fresh thing; the rest of it is"
                    + " water, which is weighed in by itself"),
        subject,
        fresh.name().value(),
        "contains");
    return equal(subject, own, replace, standIn(subject, old, fresh).orElse(1 / times))
        .map(finding::withFix)
        .orElse(finding);
  }

  /** By what share of its mass one stands in for the other, where the pantry leads both to one thing. */
  private static Optional<Double> standIn(Subject subject, Ingredient old, Ingredient fresh) {
    StandIn of = StandIn.of(subject, old);
    StandIn by = StandIn.of(subject, fresh);
    return of.name().equals(by.name()) ? Optional.of(by.share() / of.share()) : Optional.empty();
  }

  /** What something stands in for in the end, and by which share of its mass. */
  private record StandIn(String name, double share) {

    static StandIn of(Subject subject, Ingredient ingredient) {
      StandIn now = new StandIn(ingredient.name().value(), 1);
      Optional<Ingredient> next = Optional.of(ingredient);
      for (int i = 0; i < MOST_STAND_INS && next.isPresent(); i++) {
        Optional<Statement> fact = next.get().facts().first("stands-in-for");
        Optional<String> name =
            fact.flatMap(f -> f.objectNames().stream().findFirst()).map(Located::value);
        Optional<Double> by = fact.flatMap(f -> f.figure(Connective.AT, Unit.Dimension.SHARE))
            .map(figure -> figure.value().middleInBase().doubleValue());
        if (name.isEmpty() || by.isEmpty()) {
          return now;
        }
        now = new StandIn(name.get(), now.share() * by.get());
        next = subject.ingredient(name.get());
      }
      return now;
    }
  }

  /** Writes the dose that does the same, and the rest of the weight as water. */
  private static Optional<Fix> equal(
      Subject subject, ComputedFormula own, Replace replace, double share) {
    AmountLine line = replace.replacement();
    Measure measure = line.measure().value();
    boolean isFigure = measure instanceof Measure.Share || measure instanceof Measure.Weight;
    if (!isFigure || line.written().isEmpty() || share >= 1) {
      return Optional.empty();
    }
    double written = line.written().get().middle().doubleValue();
    String figure = Figures.roundedDown(written * share);
    String unit = line.written().get().unit().map(u -> " " + u.symbol()).orElse("");
    List<TextEdit> edits = new ArrayList<>();
    edits.add(Figures.rewritten(subject.text(), line.measure().span(), figure));
    boolean hasRest = own.formula().amounts().stream()
        .anyMatch(amount -> amount.measure().value() instanceof Measure.Sufficient);
    if (!hasRest) {
      String water = Display.trimmed(written - Double.parseDouble(figure), 4);
      edits.add(WrittenLines.of(subject)
          .below(
              replace.span(),
              WrittenLines.step("add", water + unit + "  water" + stage(own, line))));
    }
    return Optional.of(new Fix("Take " + figure + unit + ", and water for the rest", edits));
  }

  private static String stage(ComputedFormula own, AmountLine line) {
    return own.formula().stages().stream()
        .filter(stage -> stage.amounts().contains(line))
        .map(stage -> " in " + stage.name().value())
        .findFirst()
        .orElse("");
  }
}
