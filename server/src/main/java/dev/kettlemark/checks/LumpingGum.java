package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reports a gum that meets water without enough dry sugar between its grains.
 *
 * <p>How many parts of sugar a gum asks for is a fact of the pantry. One that is boiled later needs but
 * a share of it. Oil, glycerol and thick syrups part the grains as well, and so does a whisk that runs
 * on high.
 */
public final class LumpingGum implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("lumping-gum", "a gum meets water without enough sugar between its grains");

  /** Above this share of water a liquid swells a gum faster than it parts the grains; an own estimate. */
  private static final double WET = 0.35;

  private static final Set<String> DRY = Set.of("crystals", "powder");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.amounts().lines().stream()
            .flatMap(amount -> carrier(subject, formula, amount.line()).stream()
                .flatMap(parts ->
                    check(subject, formula, amount.stage(), amount.line(), parts).stream())))
        .toList();
  }

  /** How many parts of dry carrier a gum needs at the least. */
  private static Optional<Double> carrier(
      Subject subject, ComputedFormula formula, AmountLine line) {
    return formula
        .material(line.ingredient().value())
        .flatMap(material -> material.ingredient())
        .filter(gum -> gum.hasRole("gelling") || gum.hasRole("thickening"))
        .flatMap(gum -> gum.agent()
            .dispersal()
            .flatMap(d -> d.carrier())
            .map(parts -> gum.hasTrait("cold-swelling")
                ? parts
                : parts * subject.threshold(Threshold.HEATED_GUM_CARRIER).fraction()));
  }

  private static Optional<Finding> check(
      Subject subject, ComputedFormula formula, int stage, AmountLine line, double parts) {
    String name = line.ingredient().value();
    return DoneStep.of(formula, stage)
        .filter(step -> wets(step, name))
        .findFirst()
        .filter(step -> !isBeatenIn(step.step()))
        .flatMap(step -> step.before().stream()
            .filter(parcel -> parcel.holds(name))
            .findFirst()
            .flatMap(parcel -> carried(formula, parcel, name))
            .filter(carried -> carried < parts * 0.999)
            .map(carried -> finding(subject, step, line, carried, parts)));
  }

  /** Whether a step is the one in which the gum meets water. */
  private static boolean wets(DoneStep step, String name) {
    return step.after().stream().anyMatch(parcel -> parcel.holds(name) && isWet(parcel))
        && step.before().stream().anyMatch(parcel -> parcel.holds(name) && !isWet(parcel));
  }

  private static boolean isWet(StageParcel parcel) {
    return parcel
        .composition()
        .map(composition -> composition.water().fraction() > WET)
        .orElse(false);
  }

  private static boolean isBeatenIn(Statement step) {
    return step.has(Connective.ON, "high")
        || step.has(Connective.WHILE, "blending")
        || step.has(Connective.WHILE, "shearing");
  }

  /** Parts of all else in the parcel for one part of the gum; empty where its weight is unknown. */
  private static Optional<Double> carried(
      ComputedFormula formula, StageParcel parcel, String name) {
    double gum = formula.amounts().shareOf(name).doubleValue() * WeighedIn.grams(formula);
    return parcel
        .mass()
        .toOptional()
        .filter(mass -> gum > 0)
        .map(Mass::grams)
        .map(all -> Math.max(0, all - gum) / gum);
  }

  private static Finding finding(
      Subject subject, DoneStep step, AmountLine line, double carried, double parts) {
    String name = line.ingredient().value();
    Finding finding = INFO.at(
            place(step.step(), name),
            "`%s` meets water with %s parts of dry carrier to one of it; it needs %s",
            name,
            Display.trimmed(carried, 1),
            Display.trimmed(parts, 1))
        .because("the outside of each heap swells at once and keeps the water from the rest: lumps"
            + " that never dissolve");
    return finding.withFixes(blend(subject, step, line, parts).stream().toList());
  }

  private static Span place(Statement step, String name) {
    return step.objectNames().stream()
        .filter(object -> object.value().equals(name))
        .findFirst()
        .map(object -> object.span())
        .orElse(step.word().span());
  }

  /** Blends it first with a dry sugar of the stage that is still untouched. */
  private static Optional<Fix> blend(
      Subject subject, DoneStep step, AmountLine line, double parts) {
    String name = line.ingredient().value();
    ComputedFormula formula = step.formula();
    double least = formula.amounts().shareOf(name).doubleValue() * parts;
    Set<String> used = Stream.concat(
            step.step().objectNames().stream(), step.step().names(Connective.INTO).stream())
        .map(object -> object.value())
        .collect(Collectors.toSet());
    boolean isWorked = step.before().stream()
        .anyMatch(parcel -> parcel.holds(name) && parcel.names().size() > 1);
    return step.stage().stage().amounts().stream()
        .map(amount -> amount.ingredient().value())
        .filter(other -> !isWorked && subject.isWrittenHere(step.step().span()))
        .filter(other -> isDrySugar(formula, other) && !used.contains(other))
        .filter(other -> formula.amounts().shareOf(other).doubleValue() >= least)
        .filter(other -> DoneStep.of(formula, step.stageIndex())
            .limit(step.index())
            .noneMatch(past -> past.after().stream().anyMatch(parcel -> parcel.holds(other))))
        .findFirst()
        .map(sugar -> new Fix(
            "Blend it with `" + sugar + "` first",
            List.of(WrittenLines.of(subject)
                .above(
                    step.step().span(),
                    WrittenLines.step("blend", name + ", " + sugar + " until lump-free")))));
  }

  private static boolean isDrySugar(ComputedFormula formula, String name) {
    return formula
        .material(name)
        .flatMap(material -> material.ingredient())
        .filter(sugar -> sugar.hasRole("sweetening"))
        .flatMap(Ingredient::form)
        .filter(DRY::contains)
        .isPresent();
  }
}
