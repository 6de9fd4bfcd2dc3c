package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.science.Equation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.fraction.BigFraction;

/**
 * Exchanges one sugar or syrup for another at equal dry solids.
 *
 * <p>Equation: b = a·t₁/t₂, with a taken out, b put in, and t₁ and t₂ the dry solids of one part of
 * each. The water of the stage gives up b − a, so that the charge stays.
 */
public final class SugarExchange {

  private static final Equation EQUATION = new Equation(
      "one sugar for another at equal solids",
      "b = a·t1/t2",
      "mass balance over the compositions",
      Confidence.EXACT);

  /** What is mostly saccharides counts as a sugar or a syrup. */
  private static final double MOSTLY = 0.5;

  private SugarExchange() {}

  /** Whether a material is a sugar or a syrup. */
  public static boolean isSugar(Material material) {
    return material
        .ingredient()
        .filter(ingredient -> ingredient.hasRole("sweetening") || ingredient.hasRole("doctor"))
        .flatMap(ingredient -> material.composition().toOptional())
        .filter(composition -> composition.saccharides().fraction() > MOSTLY)
        .isPresent();
  }

  /**
   * An exchange in one line.
   *
   * @param index the line, counted through all stages
   * @param part how much of the line goes, as a share of it; all of it at one
   */
  public static Outcome<Answer> of(
      ComputedFormula formula, int index, Material to, BigFraction part) {
    LineAmount line = formula.amounts().lines().get(index);
    if (!Figure.isFree(formula, line)) {
      return Exchanges.boundLine(line);
    }
    Optional<Material> from = formula.material(Exchanges.name(formula, index));
    if (from.isEmpty()) {
      return Outcome.unknown(Reason.MISSING_COMPOSITION, "nobody has described what it replaces");
    }
    return Outcome.both(
            from.get().composition(),
            to.composition(),
            (one, other) -> exchanged(formula, index, to, part, ratio(one, other)))
        .flatMap(answer -> answer);
  }

  private static double ratio(Composition one, Composition other) {
    return one.solids().fraction() / other.solids().fraction();
  }

  private static Outcome<Answer> exchanged(
      ComputedFormula formula, int index, Material to, BigFraction part, double ratio) {
    if (!Double.isFinite(ratio) || ratio <= 0) {
      return Outcome.unknown(
          Reason.MISSING_COMPOSITION, "`%s` or what it replaces holds no solids", to.name());
    }
    LineAmount line = formula.amounts().lines().get(index);
    BigFraction before = line.share().orElse(BigFraction.ZERO);
    Optional<Integer> other = lineOf(formula, line.stage(), to);
    boolean isAll = part.compareTo(BigFraction.ONE) >= 0;
    if (isAll && other.isPresent()) {
      return Outcome.unknown(Reason.CONTRADICTION, "`%s` stands in the stage already", to.name());
    }
    List<Change> changes = new ArrayList<>();
    BigFraction out;
    BigFraction in;
    if (isAll) {
      Figure figure = Figure.rounded(line, before.multiply(Exchanges.exact(ratio)));
      changes.add(new Change.Replace(index, to, figure));
      out = before;
      in = figure.share();
    } else {
      Figure less = Figure.rounded(line, before.multiply(BigFraction.ONE.subtract(part)));
      out = before.subtract(less.share());
      BigFraction had = other.map(i -> share(formula, i)).orElse(BigFraction.ZERO);
      BigFraction has = had.add(out.multiply(Exchanges.exact(ratio)));
      Figure more = other
          .map(i -> Figure.rounded(formula.amounts().lines().get(i), has))
          .orElseGet(() -> added(formula, has));
      changes.add(new Change.Weigh(index, less));
      changes.add(other
          .<Change>map(i -> new Change.Weigh(i, more))
          .orElseGet(() -> new Change.Add(line.stage(), to, more)));
      in = more.share().subtract(had);
    }
    if (out.signum() <= 0 || in.signum() <= 0) {
      return Outcome.unknown(Reason.NO_SOLUTION, "the amount is too small to be exchanged");
    }
    boolean isDrier = in.compareTo(out) < 0;
    return isDrier && WaterRest.waterLine(formula, line.stage()).isEmpty()
        ? Outcome.unknown(
            Reason.NO_SOLUTION,
            "`%s` is drier, and the stage weighs no water that could make up for it",
            to.name())
        : WaterRest.changes(formula, line.stage(), in.subtract(out))
            .map(rest -> told(formula, index, to, out, in, changes, rest));
  }

  private static Figure added(ComputedFormula formula, BigFraction share) {
    return formula.formula().isByWeight() && formula.amounts().charge().isPresent()
        ? Figure.inGrams(share, formula.amounts().charge().get())
        : Figure.ofCharge(share);
  }

  private static Optional<Integer> lineOf(ComputedFormula formula, int stage, Material material) {
    return IntStream.range(0, formula.amounts().lines().size())
        .boxed()
        .filter(i -> formula.amounts().lines().get(i).stage() == stage)
        .filter(i -> Exchanges.name(formula, i).equals(material.name()))
        .filter(i -> Figure.isFree(formula, formula.amounts().lines().get(i)))
        .findFirst();
  }

  private static BigFraction share(ComputedFormula formula, int line) {
    return formula.amounts().lines().get(line).share().orElse(BigFraction.ZERO);
  }

  private static Answer told(
      ComputedFormula formula,
      int index,
      Material to,
      BigFraction out,
      BigFraction in,
      List<Change> changes,
      List<Change> rest) {
    List<Change> all = new ArrayList<>(changes);
    all.addAll(rest);
    return new Answer(
        "Exchange " + Display.percent(out) + " " + Exchanges.name(formula, index) + " for "
            + Display.percent(in) + " " + to.name() + Exchanges.told(formula, rest),
        List.of(Exchanges.share("sugar-taken-out", out), Exchanges.share("sugar-put-in", in)),
        all,
        List.of(Remark.of("the solids stay; sweetness, grain and colour do not")),
        EQUATION.derive(
            Display.percent(in),
            List.of(Derivation.given("taken out", Display.percent(out), "the question"))));
  }
}
