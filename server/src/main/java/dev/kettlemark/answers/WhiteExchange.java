package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.science.Equation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * Takes one whipping agent for another: fresh egg white for dried and back, or what the pantry says
 * stands in for it.
 *
 * <p>Water makes up for the difference, so that the charge stays the same.
 */
public final class WhiteExchange {

  private static final String WATER = "water";

  private WhiteExchange() {}

  /** What is to be equal on both sides. */
  public enum Equal {
    /** What foams is protein, so this is the usual choice. */
    PROTEIN,
    SOLIDS;

    public String word() {
      return this == PROTEIN ? "protein" : "solids";
    }

    double in(Composition composition) {
      return this == PROTEIN
          ? composition.fraction(Component.PROTEIN)
          : composition.solids().fraction();
    }

    Equation equation() {
      return new Equation(
          "exchange at equal " + word(),
          "m2 = m1·x1/x2, water = m1 − m2",
          "mass balance over the compositions of both",
          Confidence.EXACT);
    }
  }

  /** So much of another white for a mass of one; the water is less than zero where it is to be left out. */
  public static Outcome<Answer> of(Mass mass, Material from, Material to, Equal equal) {
    return Outcome.both(
        share(from, to, equal),
        share(from, to, equal == Equal.PROTEIN ? Equal.SOLIDS : Equal.PROTEIN),
        (share, other) -> {
          Mass found = mass.times(share.fraction());
          double water = mass.grams() - found.grams();
          return new Answer(
              "Use " + Display.mass(found) + " " + to.name()
                  + (water < 0
                      ? " and leave out " + Display.mass(Mass.ofGrams(-water)) + " water"
                      : " and " + Display.mass(Mass.ofGrams(water)) + " water")
                  + " for " + Display.mass(mass) + " " + from.name(),
              List.of(
                  Value.of("white", found),
                  new Value("water", water, water, water, "g", Display.grams(water) + " g"),
                  Value.of(
                      "white-at-equal-"
                          + (equal == Equal.PROTEIN ? Equal.SOLIDS : Equal.PROTEIN).word(),
                      mass.times(other.fraction()))),
              List.of(),
              notes(to),
              derivation(Display.mass(found), Display.mass(mass), from, to, equal));
        });
  }

  /**
   * What the pantry says stands in for a mass of something that whips, with water for the difference.
   *
   * <p>An equal foam is the custom of whoever gave the ratio, and no equation's word.
   */
  public static Outcome<Answer> of(Mass mass, Material from, Shelf.StandIn standIn) {
    Mass found = mass.times(standIn.share().fraction());
    double water = mass.grams() - found.grams();
    List<Value> values = new ArrayList<>(List.of(
        Value.of("white", found),
        new Value("water", water, water, water, "g", Display.grams(water) + " g")));
    share(from, standIn.material(), Equal.PROTEIN)
        .ifKnown(
            share -> values.add(Value.of("white-at-equal-protein", mass.times(share.fraction()))));
    List<Remark> notes = new ArrayList<>(notes(standIn.material()));
    notes.add(Remark.of("the ratio is told by: %s", standIn.source()));
    return Outcome.known(new Answer(
        "Use " + Display.mass(found) + " " + standIn.material().name()
            + (water < 0
                ? " and leave out " + Display.mass(Mass.ofGrams(-water)) + " water"
                : " and " + Display.mass(Mass.ofGrams(water)) + " water")
            + " for " + Display.mass(mass) + " " + from.name(),
        values,
        List.of(),
        notes,
        new Equation("stand-in", "m2 = m1·share", standIn.source(), Confidence.RULE_OF_THUMB)
            .derive(
                Display.mass(found),
                List.of(
                    Derivation.given("replaced", Display.mass(mass), "the question"),
                    Derivation.given(
                        "share", Display.percent(standIn.share()), standIn.source())))));
  }

  /** Another white in the place of a line's, at equal protein or solids. */
  public static Outcome<Answer> of(
      ComputedFormula formula, Shelf shelf, int index, Material to, Equal equal) {
    LineAmount line = formula.amounts().lines().get(index);
    Optional<Material> from = formula.material(line.line().ingredient().value());
    if (from.isEmpty()) {
      return Outcome.unknown(Reason.MISSING_COMPOSITION, "nobody has described what it replaces");
    }
    return share(from.get(), to, equal)
        .flatMap(share -> exchanged(formula, shelf, index, to, share, equal.word() + " equal"))
        .map(answer -> new Answer(
            answer.instruction(),
            answer.values(),
            answer.changes(),
            answer.remarks(),
            derivation(
                answer.values().get(0).shown(), Exchanges.written(line), from.get(), to, equal)));
  }

  /** What the pantry says stands in for a line's material. */
  public static Outcome<Answer> of(
      ComputedFormula formula, Shelf shelf, int index, Shelf.StandIn standIn) {
    return exchanged(formula, shelf, index, standIn.material(), standIn.share(), standIn.source());
  }

  private static Outcome<Answer> exchanged(
      ComputedFormula formula, Shelf shelf, int index, Material to, Ratio share, String why) {
    LineAmount line = formula.amounts().lines().get(index);
    if (!Figure.isFree(formula, line)) {
      return Exchanges.boundLine(line);
    }
    BigFraction before = line.share().orElse(BigFraction.ZERO);
    Figure figure = Figure.rounded(line, before.multiply(Exchanges.exact(share.fraction())));
    return water(formula, shelf, line.stage(), before.subtract(figure.share())).map(rest -> {
      List<Change> changes = new ArrayList<>();
      changes.add(new Change.Replace(index, to, figure));
      changes.addAll(rest);
      return new Answer(
          "Use " + to.name() + ": " + figure.shown() + " for "
              + line.line().ingredient().value()
              + " " + Exchanges.written(line) + Exchanges.told(formula, rest)
              + Exchanges.allergens(formula.material(line.line().ingredient().value()), to),
          List.of(
              new Value(
                  "white",
                  figure.share().doubleValue() * 100,
                  figure.share().doubleValue() * 100,
                  figure.share().doubleValue() * 100,
                  "%",
                  figure.shown()),
              Exchanges.share("white-now", before)),
          changes,
          notes(to),
          new Equation("stand-in", "m2 = m1·share", why, Confidence.RULE_OF_THUMB)
              .derive(
                  figure.shown(),
                  List.of(
                      Derivation.given("replaced", Exchanges.written(line), "the amounts"),
                      Derivation.given("share", Display.percent(share), why))));
    });
  }

  /** Water that comes free goes beside what it was part of; water that is missing is taken away. */
  private static Outcome<List<Change>> water(
      ComputedFormula formula, Shelf shelf, int stage, BigFraction free) {
    Optional<Material> water = shelf.material(WATER);
    boolean hasWater = WaterRest.waterLine(formula, stage).isPresent();
    if (free.signum() <= 0 || hasWater || water.isEmpty()) {
      return WaterRest.changes(formula, stage, free.negate());
    }
    Optional<BigFraction> charge = formula.amounts().charge();
    Figure figure = formula.formula().isByWeight() && charge.isPresent()
        ? Figure.inGrams(free, charge.get())
        : Figure.ofCharge(free);
    return Outcome.known(List.of(new Change.Add(stage, water.get(), figure)));
  }

  private static Outcome<Ratio> share(Material from, Material to, Equal equal) {
    return Outcome.both(from.composition(), to.composition(), (one, other) -> {
          double has = equal.in(one);
          double needs = equal.in(other);
          return needs > 0 && has > 0
              ? Outcome.known(Ratio.ofFraction(has / needs))
              : Outcome.<Ratio>unknown(
                  Reason.MISSING_COMPOSITION, "one of both holds no %s", Remark.of(equal.word()));
        })
        .flatMap(share -> share);
  }

  private static List<Remark> notes(Material to) {
    List<Remark> notes = new ArrayList<>();
    Optional<Ingredient> ingredient = to.ingredient();
    if (ingredient.filter(i -> i.hasTrait("raw-animal")).isPresent()) {
      notes.add(
          Remark.of(
              "raw egg is not for the very young, the old, the pregnant and the ill; local food rules hold"));
    }
    if (ingredient.filter(Shelf::isDried).isPresent()) {
      notes.add(Remark.of("let the powder swell in the water before it is whipped"));
    }
    ingredient
        .map(i -> i.facts().wordsOf("allergen"))
        .filter(allergens -> !allergens.isEmpty())
        .ifPresent(allergens -> notes.add(Remark.of(
            "it holds the allergen %s",
            allergens.stream()
                .map(word -> new Remark.Word("allergen", word.value()))
                .toList())));
    return notes;
  }

  private static Derivation derivation(
      String value, String mass, Material from, Material to, Equal equal) {
    return equal
        .equation()
        .derive(
            value,
            List.of(
                Derivation.given("replaced", mass, "the question"),
                part(from, equal),
                part(to, equal)));
  }

  private static Derivation part(Material material, Equal equal) {
    String shown = material
        .composition()
        .map(composition -> Display.percent(Ratio.ofFraction(equal.in(composition))))
        .orElse("unknown");
    return Derivation.given(equal.word() + " of " + material.name(), shown, "its composition");
  }
}
