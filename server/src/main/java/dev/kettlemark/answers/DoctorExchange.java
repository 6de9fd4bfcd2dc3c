package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Portion;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.science.DoctorSugars;
import dev.kettlemark.science.Equation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Exchanges sucrose for a syrup until a stage has a wanted share of doctor sugars.
 *
 * <p>Equation: a = (S − (1 − d)·C) / ((s₁ − r·s₂) − (1 − d)·(c₁ − r·c₂)), b = r·a, r = t₁/t₂.
 *
 * <p>Symbols, masses as shares of the charge: a sugar taken out; b syrup put in; S sucrose and C all
 * saccharides of the stage; d doctor share wanted; s, c and t sucrose, saccharides and dry solids of
 * one part of sugar (1) and of syrup (2).
 *
 * <p>Dry solids and charge stay the same: the water of the stage gives up b − a.
 */
public final class DoctorExchange {

  private static final Equation EQUATION = new Equation(
      "sugar for syrup at equal solids",
      "a = (S − (1 − d)·C)/((s1 − r·s2) − (1 − d)·(c1 − r·c2)), b = r·a",
      "mass balance over the compositions",
      Confidence.EXACT);

  /** What is nearly all sucrose counts as sugar. */
  private static final double SUGAR = 0.95;

  /** A syrup keeps sugar from graining only if hardly any of it is sucrose. */
  private static final double MOST_SUCROSE = 0.20;

  private static final String USUAL_SYRUP = "glucose-syrup-42";

  private final ComputedFormula formula;
  private final int stage;
  private final Ratio wanted;

  private DoctorExchange(ComputedFormula formula, int stage, Ratio wanted) {
    this.formula = formula;
    this.stage = stage;
    this.wanted = wanted;
  }

  /**
   * Exchanges in a stage.
   *
   * @param wanted share of all saccharides that is not to be sucrose
   * @param syrup the name of the syrup; where empty, the stage's own doctor or else glucose syrup
   */
  public static Outcome<Answer> of(
      ComputedFormula formula, Shelf shelf, int stage, Ratio wanted, Optional<String> syrup) {
    if (!wanted.isShare()) {
      return Outcome.unknown(
          Reason.CONTRADICTION,
          "a doctor share lies from 0 to 100 %%, not at %s",
          Display.percent(wanted));
    }
    DoctorExchange exchange = new DoctorExchange(formula, stage, wanted);
    Optional<Material> material = syrup
        .or(exchange::ownSyrup)
        .or(() -> Optional.of(USUAL_SYRUP))
        .flatMap(name -> formula.material(name).or(() -> shelf.material(name)));
    Optional<Integer> sugar = exchange.sugarLine();
    if (sugar.isEmpty()) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE, "`%s` weighs no sugar that could be exchanged", exchange.name());
    }
    return material
        .map(other -> exchange.exchanged(sugar.get(), other))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_COMPOSITION, "nobody has described `%s`", syrup.orElse(USUAL_SYRUP)));
  }

  /** The doctor share that a stage has as it stands. */
  public static Outcome<Ratio> shareNow(ComputedFormula formula, int stage) {
    return formula
        .process()
        .stages()
        .get(stage)
        .left()
        .composition()
        .flatMap(DoctorSugars::doctorShare);
  }

  private String name() {
    return formula.process().stages().get(stage).name();
  }

  private Optional<String> ownSyrup() {
    return lines()
        .filter(i -> composition(i).filter(DoctorExchange::doctors).isPresent())
        .max(Comparator.comparing(this::share))
        .map(i -> Exchanges.name(formula, i));
  }

  private static boolean doctors(Composition composition) {
    double saccharides = composition.saccharides().fraction();
    return saccharides > 0.5
        && composition.fraction(Component.SUCROSE) <= MOST_SUCROSE * saccharides;
  }

  private Optional<Integer> sugarLine() {
    return lines()
        .filter(i -> Figure.isFree(formula, formula.amounts().lines().get(i)))
        .filter(i ->
            composition(i).filter(c -> c.fraction(Component.SUCROSE) >= SUGAR).isPresent())
        .max(Comparator.comparing(this::share));
  }

  private Stream<Integer> lines() {
    return IntStream.range(0, formula.amounts().lines().size())
        .boxed()
        .filter(i -> formula.amounts().lines().get(i).stage() == stage);
  }

  private Optional<Composition> composition(int line) {
    return formula
        .material(Exchanges.name(formula, line))
        .flatMap(material -> material.composition().toOptional());
  }

  private BigFraction share(int line) {
    return formula.amounts().lines().get(line).share().orElse(BigFraction.ZERO);
  }

  private Outcome<Answer> exchanged(int sugar, Material syrup) {
    StageResult result = formula.process().stages().get(stage);
    double charge = formula.process().charge().mass().grams();
    return Outcome.both(
            result.left().portion(),
            syrup.composition(),
            (left, two) -> exchanged(sugar, syrup, left, two, charge))
        .flatMap(answer -> answer);
  }

  private Outcome<Answer> exchanged(
      int sugar, Material syrup, Portion left, Composition two, double charge) {
    Composition one = composition(sugar).orElseThrow();
    double ratio = one.solids().fraction() / two.solids().fraction();
    double sucrose = left.massOf(Component.SUCROSE).grams() / charge;
    double all = left.mass().times(left.composition().saccharides()).grams() / charge;
    double keeps = wanted.complement().fraction();
    double sucroseLost = one.fraction(Component.SUCROSE) - ratio * two.fraction(Component.SUCROSE);
    double allLost = one.saccharides().fraction() - ratio * two.saccharides().fraction();
    double divisor = sucroseLost - keeps * allLost;
    if (!(Math.abs(divisor) > 1e-9) || !Double.isFinite(ratio)) {
      return Outcome.unknown(
          Reason.NO_SOLUTION, "`%s` does not change the share of doctor sugars", syrup.name());
    }
    double taken = (sucrose - keeps * all) / divisor;
    Optional<Integer> syrupLine = lines()
        .filter(i -> Exchanges.name(formula, i).equals(syrup.name()))
        .filter(i -> Figure.isFree(formula, formula.amounts().lines().get(i)))
        .findFirst();
    double most = share(sugar).doubleValue();
    double least = -syrupLine.map(i -> share(i).doubleValue()).orElse(0.0) / ratio;
    double water =
        WaterRest.waterLine(formula, stage).map(i -> share(i).doubleValue()).orElse(0.0);
    if (ratio > 1) {
      most = Math.min(most, water / (ratio - 1));
    }
    if (taken > most || taken < least) {
      return unreachable(least, most, sucrose, all, sucroseLost, allLost, syrup);
    }
    return changed(sugar, syrup, syrupLine, taken, ratio);
  }

  /** What can be reached: all the sugar and water of the stage exchanged, or all the syrup. */
  private Outcome<Answer> unreachable(
      double least,
      double most,
      double sucrose,
      double all,
      double sucroseLost,
      double allLost,
      Material syrup) {
    double atLeast = 1 - (sucrose - least * sucroseLost) / (all - least * allLost);
    double atMost = 1 - (sucrose - most * sucroseLost) / (all - most * allLost);
    return Outcome.unknown(
        Reason.NO_SOLUTION,
        "with the sugar, `%s` and water of `%s` the doctor share can be from %s to %s, never %s",
        syrup.name(),
        name(),
        Display.estimate(Ratio.ofFraction(atLeast)),
        Display.estimate(Ratio.ofFraction(atMost)),
        Display.estimate(wanted));
  }

  private Outcome<Answer> changed(
      int sugar, Material syrup, Optional<Integer> syrupLine, double taken, double ratio) {
    LineAmount line = formula.amounts().lines().get(sugar);
    BigFraction before = share(sugar);
    Figure less = Figure.rounded(line, before.subtract(Exchanges.exact(taken)));
    BigFraction syrupBefore = syrupLine.map(this::share).orElse(BigFraction.ZERO);
    BigFraction syrupAfter = syrupBefore.add(Exchanges.exact(taken * ratio));
    Figure more = syrupLine
        .map(i -> Figure.rounded(formula.amounts().lines().get(i), syrupAfter))
        .orElseGet(
            () -> formula.formula().isByWeight() && formula.amounts().charge().isPresent()
                ? Figure.inGrams(syrupAfter, formula.amounts().charge().get())
                : Figure.ofCharge(syrupAfter));
    BigFraction out = before.subtract(less.share());
    BigFraction in = more.share().subtract(syrupBefore);
    return WaterRest.changes(formula, stage, in.subtract(out)).flatMap(rest -> {
      List<Change> changes = new ArrayList<>();
      changes.add(new Change.Weigh(sugar, less));
      changes.add(syrupLine
          .<Change>map(i -> new Change.Weigh(i, more))
          .orElseGet(() -> new Change.Add(stage, syrup, more)));
      changes.addAll(rest);
      return told(sugar, syrup, out, in, changes, rest);
    });
  }

  private Outcome<Answer> told(
      int sugar,
      Material syrup,
      BigFraction out,
      BigFraction in,
      List<Change> changes,
      List<Change> rest) {
    ComputedFormula after = Change.tried(formula, changes);
    return Outcome.both(shareNow(after, stage), shareNow(formula, stage), (share, now) -> {
      boolean back = out.signum() < 0;
      String sugarName = Exchanges.name(formula, sugar);
      String first = Display.percent(out.abs()) + " " + sugarName;
      String second = Display.percent(in.abs()) + " " + syrup.name();
      return new Answer(
          "Exchange " + (back ? second : first) + " for " + (back ? first : second) + ": doctor "
              + Display.estimate(share) + Exchanges.told(formula, rest),
          List.of(
              Exchanges.share("sugar-taken-out", out),
              Exchanges.share("syrup-put-in", in),
              Value.exact("doctor-share", share),
              Value.exact("doctor-share-now", now)),
          changes,
          List.of(),
          EQUATION.derive(
              Display.percent(out) + " out, " + Display.percent(in) + " in",
              List.of(
                  Derivation.given("doctor share wanted", Display.estimate(wanted), "the question"),
                  Derivation.given("doctor share now", Display.estimate(now), "the amounts"))));
    });
  }
}
