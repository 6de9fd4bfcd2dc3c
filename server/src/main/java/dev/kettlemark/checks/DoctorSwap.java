package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hipparchus.fraction.BigFraction;

/**
 * Swaps sucrose for glucose syrup or back, so that the doctor sugars come to a wanted share of all.
 *
 * <p>The solids stay; the water that the syrup brings or takes along is left out or added.
 */
final class DoctorSwap {

  private static final String SYRUP = "glucose-syrup-42";

  /** Of a grain of this sugar nearly all is sucrose. */
  private static final double NEARLY_ALL = 0.9;

  private final Subject subject;
  private final ComputedFormula formula;
  private final List<Amounts.LineAmount> lines;

  private DoctorSwap(Subject subject, ComputedFormula formula) {
    this.subject = subject;
    this.formula = formula;
    this.lines = ChargeLines.of(formula).all();
  }

  /** The fix; empty where the lines it needs are not percentages of the charge written here. */
  static List<Fix> to(Subject subject, ComputedFormula formula, Ratio wanted) {
    return subject.variant().isPresent()
        ? List.of()
        : new DoctorSwap(subject, formula).fix(wanted).stream().toList();
  }

  private Optional<Fix> fix(Ratio wanted) {
    List<Amounts.LineAmount> all = formula.amounts().lines();
    double sucrose = InThePan.share(formula, all, Component.SUCROSE);
    double saccharides = all.stream().mapToDouble(line -> saccharides(line)).sum();
    double missing = wanted.fraction() * saccharides - (saccharides - sucrose);
    return largest(line -> composition(line)
            .filter(c -> c.fraction(Component.SUCROSE) > NEARLY_ALL)
            .isPresent())
        .flatMap(sugar -> syrup(sugar, missing)
            .flatMap(syrup -> edits(sugar, syrup, missing)
                .map(edits -> new Fix(
                    missing > 0
                        ? "Swap part of `" + InThePan.name(sugar) + "` for `" + syrup.name() + "`"
                        : "Swap part of `" + syrup.name() + "` for `" + InThePan.name(sugar) + "`",
                    edits))));
  }

  /**
   * The syrup to change.
   *
   * @param line where it stands already; empty where it is new
   */
  private record Syrup(String name, Composition composition, Optional<Amounts.LineAmount> line) {

    double doctor() {
      return composition.saccharides().fraction() - composition.fraction(Component.SUCROSE);
    }
  }

  private Optional<Syrup> syrup(Amounts.LineAmount sugar, double missing) {
    Optional<Syrup> written = largest(line -> line.stage() == sugar.stage()
            && formula
                .material(InThePan.name(line))
                .flatMap(Material::ingredient)
                .filter(
                    i -> i.hasRole("doctor") && i.form().filter("syrup"::equals).isPresent())
                .isPresent())
        .flatMap(line ->
            composition(line).map(c -> new Syrup(InThePan.name(line), c, Optional.of(line))));
    return missing < 0
        ? written
        : written.or(() -> subject
            .ingredient(SYRUP)
            .flatMap(i -> i.composition().toOptional())
            .map(c -> new Syrup(SYRUP, c, Optional.empty())));
  }

  private Optional<List<TextEdit>> edits(Amounts.LineAmount sugar, Syrup syrup, double missing) {
    double sugarChange = -missing / composition(sugar).orElseThrow().fraction(Component.SUCROSE);
    double syrupChange = missing / syrup.doctor();
    List<TextEdit> edits = new ArrayList<>();
    BigFraction newSugar = changed(sugar, sugarChange);
    BigFraction newSyrup = syrup
        .line()
        .map(line -> changed(line, syrupChange))
        .orElseGet(() -> OtherShare.share(syrupChange));
    BigFraction difference = newSugar
        .add(newSyrup)
        .subtract(share(sugar))
        .subtract(syrup.line().map(DoctorSwap::share).orElse(BigFraction.ZERO));
    if (newSugar.signum() <= 0 || newSyrup.signum() <= 0) {
      return Optional.empty();
    }
    Optional<Amounts.LineAmount> water = water(sugar.stage());
    if (water.isEmpty() || share(water.get()).compareTo(difference) <= 0) {
      return Optional.empty();
    }
    edits.add(ChargeLines.rewritten(subject.text(), sugar.line(), newSugar));
    edits.add(syrup
        .line()
        .map(line -> ChargeLines.rewritten(subject.text(), line.line(), newSyrup))
        .orElseGet(() -> WrittenLines.of(subject)
            .below(
                sugar.line().span(),
                WrittenLines.amount(Display.percent(newSyrup), syrup.name()))));
    if (!(water.get().line().measure().value() instanceof Measure.Sufficient)) {
      edits.add(ChargeLines.rewritten(
          subject.text(), water.get().line(), share(water.get()).subtract(difference)));
    }
    return Optional.of(edits);
  }

  /** The plain water of the same stage, as a percentage of the charge or as the rest. */
  private Optional<Amounts.LineAmount> water(int stage) {
    return formula.amounts().lines().stream()
        .filter(line -> line.stage() == stage)
        .filter(line ->
            lines.contains(line) || line.line().measure().value() instanceof Measure.Sufficient)
        .filter(line ->
            composition(line).filter(c -> c.water().fraction() > NEARLY_ALL).isPresent())
        .findFirst();
  }

  private Optional<Amounts.LineAmount> largest(Predicate<Amounts.LineAmount> which) {
    return lines.stream().filter(which).max(Comparator.comparing(DoctorSwap::share));
  }

  private static BigFraction changed(Amounts.LineAmount line, double change) {
    return ChargeLines.rounded(line.line(), share(line).add(OtherShare.share(change)));
  }

  private static BigFraction share(Amounts.LineAmount line) {
    return line.share().orElse(BigFraction.ZERO);
  }

  private double saccharides(Amounts.LineAmount line) {
    return share(line).doubleValue()
        * composition(line).map(c -> c.saccharides().fraction()).orElse(0.0);
  }

  private Optional<Composition> composition(Amounts.LineAmount line) {
    return formula
        .material(InThePan.name(line))
        .flatMap(material -> material.composition().toOptional());
  }
}
