package dev.kettlemark.checks;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Derived;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Which amounts of a formula lie in a mass, and how much of each.
 *
 * <p>Every mass is mixed evenly, so a part of a stage holds that part of all that went into it.
 */
final class WeighedIn {

  private final ComputedFormula formula;

  /** For each stage the grams of each amount line that it holds in the end, by the line's number. */
  private final List<Map<Integer, Double>> stages = new ArrayList<>();

  /** The number of each stage's first amount line. */
  private final List<Integer> first = new ArrayList<>();

  private static final Derived<WeighedIn> ALL = Derived.by(WeighedIn::all);

  private WeighedIn(ComputedFormula formula) {
    this.formula = formula;
  }

  static WeighedIn of(ComputedFormula formula) {
    return ALL.of(formula);
  }

  private static WeighedIn all(ComputedFormula formula) {
    WeighedIn weighed = new WeighedIn(formula);
    int line = 0;
    List<Stage> stages = formula.formula().stages();
    for (int i = 0; i < stages.size(); i++) {
      weighed.first.add(line);
      line += stages.get(i).amounts().size();
      weighed.stages.add(weighed.held(i, Optional.empty()));
    }
    return weighed;
  }

  /**
   * An amount in a mass.
   *
   * @param stage where it is weighed in
   * @param mass as weighed in; nothing where it is not known
   * @param material what its name means
   */
  record Held(Stage stage, AmountLine line, Mass mass, Optional<Material> material) {

    Optional<Ingredient> ingredient() {
      return material.flatMap(Material::ingredient);
    }

    boolean hasRole(String role) {
      return ingredient().filter(known -> known.hasRole(role)).isPresent();
    }

    String name() {
      return line.ingredient().value();
    }
  }

  /** The amounts in a mass that lies in a stage. */
  List<Held> in(int stage, StageParcel parcel) {
    return held(stage, Optional.of(parcel)).entrySet().stream()
        .map(entry -> held(formula.amounts().lines().get(entry.getKey()), entry.getValue()))
        .toList();
  }

  /** The amounts in several masses that lie in a stage. */
  Stream<Held> in(int stage, List<StageParcel> parcels) {
    return parcels.stream().flatMap(parcel -> in(stage, parcel).stream());
  }

  private Held held(Amounts.LineAmount amount, double grams) {
    return new Held(
        formula.formula().stages().get(amount.stage()),
        amount.line(),
        Mass.ofGrams(grams),
        formula.material(amount.line().ingredient().value()));
  }

  private Map<Integer, Double> held(int index, Optional<StageParcel> parcel) {
    Stage stage = formula.formula().stages().get(index);
    Map<Integer, Double> held = new TreeMap<>();
    for (int i = 0; i < stage.amounts().size(); i++) {
      int line = first.get(index) + i;
      if (isIn(parcel, stage.amounts().get(i).ingredient().value())) {
        held.merge(line, grams(line), Double::sum);
      }
    }
    for (TakeLine take : stage.takes()) {
      if (isIn(parcel, take.stage().value())) {
        double share = take.share().doubleValue();
        DoneStep.source(formula, index, take)
            .ifPresent(from -> stages
                .get(from)
                .forEach((line, grams) -> held.merge(line, grams * share, Double::sum)));
      }
    }
    return held;
  }

  private static boolean isIn(Optional<StageParcel> parcel, String name) {
    return parcel.isEmpty() || parcel.get().holds(name);
  }

  private double grams(int line) {
    double share =
        formula.amounts().lines().get(line).share().map(s -> s.doubleValue()).orElse(0.0);
    return Math.max(0, share) * grams(formula);
  }

  /** What all shares are of, in grams, as the formula is followed through its stages. */
  static double grams(ComputedFormula formula) {
    return formula
        .amounts()
        .charge()
        .map(charge -> charge.doubleValue())
        .orElse(ComputedFormula.NOMINAL_CHARGE.grams());
  }
}
