package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Component;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/**
 * The water of a pan and the line that brings most of it as plain water.
 *
 * @param line the line of plain water
 * @param mass of all that is in the pan
 * @param water of all that, whatever brings it
 * @param plain what the line brings
 */
record PanWater(Amounts.LineAmount line, double mass, double water, double plain) {

  /** What counts as plain water. */
  private static final double NEARLY_ALL = 0.99;

  /** The shares of the charge in a pan; nothing where no line of it is plain water. */
  static Optional<PanWater> of(ComputedFormula formula, InThePan pan) {
    double mass = pan.lines().stream().mapToDouble(PanWater::share).sum();
    double water = InThePan.share(formula, pan.lines(), Component.WATER);
    return pan.lines().stream()
        .filter(line -> isPlain(formula, line))
        .max(Comparator.comparing(PanWater::share))
        .map(line -> new PanWater(line, mass, water, share(line)));
  }

  /** The share of the charge at which the pan holds so much water, all other ratios kept. */
  double lineFor(double waterInPan) {
    double other = water - plain;
    double solids = mass - water;
    double wanted = Math.max(0, (solids + other) * waterInPan - other) / (1 - waterInPan);
    return wanted / (1 - plain + wanted);
  }

  /** Rewrites the line and all others, so that the pan holds so much water. */
  List<Fix> fix(Subject subject, ComputedFormula formula, String title, double waterInPan) {
    return OtherShare.edits(subject, formula, line, OtherShare.share(lineFor(waterInPan)))
        .map(edits -> List.of(new Fix(title, edits)))
        .orElse(List.of());
  }

  private static double share(Amounts.LineAmount line) {
    return line.share().map(BigFraction::doubleValue).orElse(0.0);
  }

  private static boolean isPlain(ComputedFormula formula, Amounts.LineAmount line) {
    return formula
        .material(InThePan.name(line))
        .flatMap(material -> material.composition().toOptional())
        .filter(composition -> composition.fraction(Component.WATER) >= NEARLY_ALL)
        .isPresent();
  }
}
