package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A formula and its stages told in one line each. */
final class FormulaSummary {

  private static final String DOT = " · ";

  private FormulaSummary() {}

  /** {@code 100.00 % · charge 1200 g → cooked 1030 g (85.8 %) · water 11.6 % · aw ≈ 0.55–0.59}. */
  static String formula(ComputedFormula formula) {
    ProcessResult process = formula.process();
    List<String> told = new ArrayList<>();
    told.add(Display.percent(WrittenFormula.ratio(formula.amounts().total())));
    told.add(weights(formula));
    process
        .last()
        .map(stage -> new FinishedMass(stage.left(), formula.kitchen()))
        .ifPresent(left -> {
          left.water().ifPresent(water -> told.add("water " + water));
          left.activity().ifPresent(activity -> told.add("aw ≈ " + activity));
        });
    return String.join(DOT, told.stream().filter(part -> !part.isEmpty()).toList());
  }

  private static String weights(ComputedFormula formula) {
    ProcessResult process = formula.process();
    boolean boils = process.evaporated().grams() > 0;
    String charge =
        formula.isNominal() ? "" : "charge " + Display.batch(process.charge().mass());
    Optional<String> share =
        process.yieldShare().toOptional().map(Display::estimate).filter(s -> boils);
    if (!boils) {
      return charge;
    }
    if (formula.isNominal()) {
      return share.map(s -> "cooked " + s).orElse("");
    }
    Outcome<Mass> cooked = process.cooked().map(CookedWeight::mass);
    return charge
        + cooked
            .toOptional()
            .map(mass -> " → cooked " + Display.estimate(mass)
                + share.map(s -> " (" + s + ")").orElse(""))
            .orElse("");
  }

  /**
   * {@code foam · 9.30 % · 111.6 g}, for a cooked stage {@code … → 806.0 g · water 5.0 %}, and for one that
   * takes others {@code … + 1184.2 g taken}.
   */
  static String stage(ComputedFormula formula, StageResult stage) {
    int index = formula.process().stages().indexOf(stage);
    List<String> told = new ArrayList<>();
    told.add(stage.name());
    boolean weighs = stage.weighed().grams() > 0;
    if (weighs) {
      told.add(Display.percent(WrittenFormula.ratio(formula.amounts().totalOf(index))));
    }
    if (!formula.isNominal()) {
      told.add(stageWeights(stage, weighs));
    }
    if (stage.evaporated().grams() > 0) {
      new FinishedMass(stage.left(), formula.kitchen())
          .water()
          .ifPresent(water -> told.add("water " + water));
    }
    return String.join(DOT, told.stream().filter(part -> !part.isEmpty()).toList());
  }

  private static String stageWeights(StageResult stage, boolean weighs) {
    boolean takes = !stage.stage().takes().isEmpty();
    String weighed = weighs ? Display.mass(stage.weighed()) : "";
    String taken =
        takes ? stage.taken().map(Display::mass).orElse("an unknown weight") + " taken" : "";
    String charged = String.join(
        " + ", List.of(weighed, taken).stream().filter(part -> !part.isEmpty()).toList());
    boolean changes = stage.evaporated().grams() > 0 || (takes && weighs);
    return changes
        ? charged
            + stage.left().mass().toOptional().map(m -> " → " + Display.mass(m)).orElse("")
        : charged;
  }
}
