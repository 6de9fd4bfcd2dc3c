package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** Moves plain water from the pan that has most of it into another stage, or back. */
final class WaterMove {

  private static final double NEARLY_ALL = 0.99;

  private WaterMove() {}

  /**
   * The fix, or nothing where one of the waters is missing, too little, or not written here.
   *
   * @param into the stage that gets the water
   * @param amount as a share of the charge; negative for the way back
   */
  static Optional<Fix> fix(
      Subject subject, ComputedFormula formula, Stage into, BigFraction amount) {
    int stage = formula.formula().stages().indexOf(into);
    Optional<Amounts.LineAmount> here =
        waters(formula).filter(line -> line.stage() == stage).findFirst();
    Optional<Amounts.LineAmount> there = waters(formula)
        .filter(line -> line.stage() != stage)
        .max(Comparator.comparing(WaterMove::share));
    if (subject.variant().isPresent() || here.isEmpty() || there.isEmpty()) {
      return Optional.empty();
    }
    BigFraction newHere = share(here.get()).add(amount);
    BigFraction newThere = share(there.get()).subtract(amount);
    if (newHere.signum() <= 0 || newThere.signum() <= 0) {
      return Optional.empty();
    }
    List<TextEdit> edits = new ArrayList<>();
    rewritten(subject, here.get(), newHere).ifPresent(edits::add);
    rewritten(subject, there.get(), newThere).ifPresent(edits::add);
    String other = formula.formula().stages().get(there.get().stage()).name().value();
    return Optional.of(new Fix(
        String.format(
            amount.signum() > 0
                ? "Move %s of water from `%s` to `%s`"
                : "Move %s of water to `%s` from `%s`",
            Display.percent(amount.abs()),
            other,
            into.name().value()),
        edits));
  }

  /** Lines of water that are percentages of the charge or the rest. */
  private static Stream<Amounts.LineAmount> waters(ComputedFormula formula) {
    List<Amounts.LineAmount> charge = ChargeLines.of(formula).all();
    return formula.amounts().lines().stream()
        .filter(line -> charge.contains(line) || isRest(line))
        .filter(line -> formula
            .material(InThePan.name(line))
            .flatMap(material -> material.composition().toOptional())
            .filter(composition -> composition.fraction(Component.WATER) >= NEARLY_ALL)
            .isPresent());
  }

  private static boolean isRest(Amounts.LineAmount line) {
    return line.line().measure().value() instanceof Measure.Sufficient;
  }

  private static BigFraction share(Amounts.LineAmount line) {
    return line.share().orElse(BigFraction.ZERO);
  }

  /** The rest rewrites itself. */
  private static Optional<TextEdit> rewritten(
      Subject subject, Amounts.LineAmount line, BigFraction share) {
    return isRest(line)
        ? Optional.empty()
        : Optional.of(ChargeLines.rewritten(subject.text(), line.line(), share));
  }
}
