package dev.kettlemark.labelling;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.PieceOrder;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Scope;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Variant;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Follows each line of a formula down to the pantry.
 *
 * <p>What a step lays around the mass without a weight, such as wafer paper, is in the food as well: its
 * allergens count, and its amount is unknown.
 */
final class FormulaMakeup {

  /** Words behind {@code on} that are no materials. */
  private static final Set<String> SPEEDS = Set.of("low", "medium", "high");

  private static final Set<Verb> COVERING = Set.of(Verb.DUST, Verb.DIP, Verb.ENROBE, Verb.BOTTOM);

  private final Entry entry;
  private final ComputedFormula computed;
  private final Scope scope;
  private final UseGatherer uses = new UseGatherer();

  FormulaMakeup(Entry entry, ComputedFormula computed, Scope scope) {
    this.entry = entry;
    this.computed = computed;
    this.scope = scope;
  }

  Makeup compute() {
    Formula formula = computed.formula();
    double[] reach = StageReach.of(formula);
    Outcome<Ratio> yield = computed.process().yieldShare();
    for (Amounts.LineAmount amount : computed.amounts().lines()) {
      Outcome<Ratio> charged =
          amount.share().map(share -> Ratio.ofFraction(Math.max(0, share.doubleValue())));
      Outcome<Ratio> ofFinished = Outcome.both(
              charged,
              yield,
              (share, left) -> left.fraction() > 0
                  ? Outcome.known(share.times(reach[amount.stage()] / left.fraction()))
                  : Outcome.<Ratio>unknown(Reason.MISSING_FIGURE, "nothing is left of the charge"))
          .flatMap(share -> share);
      add(amount.line().ingredient(), ofFinished);
    }
    addUnweighed(formula);
    return new Makeup(
        uses.byWeight(),
        computed.composition(),
        PieceOrder.of(formula.facts())
            .map(order -> Mass.ofGrams(order.gramsEach().doubleValue())));
  }

  private void add(Located<String> name, Outcome<Ratio> share) {
    Way.Step step = new Way.Step(name.value(), entry.origin(name.span()));
    Optional<Material> material = computed.material(name.value());
    Optional<Ingredient> ingredient = material.flatMap(Material::ingredient);
    // What the formula itself did not follow, for a circle or for depth, is not followed here
    // either.
    Optional<Makeup> inside = material.flatMap(Material::made).isPresent()
        ? scope.ask(Labels.makeup(name.value()))
        : Optional.empty();
    if (inside.isPresent()) {
      uses.add(inside.get(), share, step);
    } else {
      uses.add(new IngredientUse(name.value(), ingredient, share, true, List.of(Way.of(step))));
    }
  }

  private void addUnweighed(Formula formula) {
    Set<String> known = new HashSet<>(SPEEDS);
    formula.amounts().forEach(line -> known.add(line.ingredient().value()));
    formula.stages().forEach(stage -> known.add(stage.name().value()));
    formula
        .steps()
        .flatMap(FormulaMakeup::around)
        .filter(name -> known.add(name.value()))
        .forEach(this::addUnweighed);
  }

  private static Stream<Located<String>> around(Statement step) {
    Stream<Located<String>> covering =
        Verb.of(step.word().value()).filter(COVERING::contains).isPresent()
            ? step.objectNames().stream()
            : Stream.empty();
    return Stream.of(
            step.names(Connective.BETWEEN).stream(),
            step.names(Connective.WITH).stream(),
            step.names(Connective.ON).stream(),
            covering)
        .flatMap(names -> names);
  }

  private void addUnweighed(Located<String> name) {
    Outcome<Ratio> unweighed =
        Outcome.unknown(Reason.MISSING_FIGURE, "no line weighs in `%s`", name.value());
    Way.Step step = new Way.Step(name.value(), entry.origin(name.span()));
    scope
        .ask(Lookup.of(Kind.MATERIAL, name.value()))
        .flatMap(Entry::declaration)
        .ifPresent(declaration -> {
          if (declaration instanceof Ingredient ingredient) {
            uses.add(new IngredientUse(
                name.value(), Optional.of(ingredient), unweighed, false, List.of(Way.of(step))));
          } else if (declaration instanceof Formula || declaration instanceof Variant) {
            // What it is made of may lead back here, and no weight says how much of it there is.
            uses.add(new IngredientUse(
                name.value(), Optional.empty(), unweighed, false, List.of(Way.of(step))));
          }
        });
  }
}
