package dev.kettlemark.analysis;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.fraction.BigFraction;

/**
 * What a named basis is the sum of: for each amount line of a formula, how much of it counts.
 *
 * <p>A name means, in this order, a basis the formula declares, a stage, or an ingredient. A stage
 * counts all that was weighed into it and the parts it took of earlier stages.
 */
public final class BasisWeights {

  private final Formula formula;
  private final BigFraction[] weights;

  private BasisWeights(Formula formula) {
    this.formula = formula;
    this.weights = new BigFraction[formula.amounts().size()];
    Arrays.fill(weights, BigFraction.ZERO);
  }

  /**
   * The weight of every amount line in a basis.
   *
   * @return one factor for each of {@link Formula#amounts()}; empty where the formula knows no such
   *     basis
   */
  public static Optional<List<BigFraction>> of(Formula formula, String name) {
    BasisWeights basis = new BasisWeights(formula);
    Optional<BasisDefinition> declared = formula.basis(name);
    if (declared.isPresent()) {
      declared.get().members().forEach(basis::addMember);
      return Optional.of(List.of(basis.weights));
    }
    return basis.addStageOrIngredient(name)
        ? Optional.of(List.of(basis.weights))
        : Optional.empty();
  }

  /** Every name that {@link #of} knows: declared bases, stages and ingredients. */
  public static Set<String> names(Formula formula) {
    Set<String> names = new LinkedHashSet<>();
    formula.bases().forEach(basis -> names.add(basis.name().value()));
    formula.stages().forEach(stage -> names.add(stage.name().value()));
    formula.amounts().forEach(line -> names.add(line.ingredient().value()));
    return names;
  }

  private void addMember(BasisDefinition.Member member) {
    if (member.stage().isPresent()) {
      addIngredient(member.ingredient().value(), member.stage().map(stage -> stage.value()));
    } else {
      addStageOrIngredient(member.ingredient().value());
    }
  }

  private boolean addStageOrIngredient(String name) {
    Optional<Stage> stage = formula.stage(name);
    if (stage.isPresent()) {
      addStage(formula.stages().indexOf(stage.get()));
      return true;
    }
    return addIngredient(name, Optional.empty());
  }

  private boolean addIngredient(String name, Optional<String> onlyStage) {
    boolean found = false;
    int index = 0;
    for (Stage stage : formula.stages()) {
      boolean counts =
          onlyStage.isEmpty() || onlyStage.get().equals(stage.name().value());
      for (AmountLine line : stage.amounts()) {
        if (counts && line.ingredient().value().equals(name)) {
          weights[index] = BigFraction.ONE;
          found = true;
        }
        index++;
      }
    }
    return found;
  }

  /** Adds a stage with what it took of earlier stages, and what those took of earlier ones still. */
  private void addStage(int index) {
    List<Stage> stages = formula.stages();
    Map<String, Integer> nearest = new HashMap<>();
    int[][] sources = new int[index + 1][];
    for (int s = 0; s <= index; s++) {
      sources[s] = stages.get(s).takes().stream()
          .mapToInt(take -> nearest.getOrDefault(take.stage().value(), -1))
          .toArray();
      nearest.put(stages.get(s).name().value(), s);
    }
    BigFraction[] counted = new BigFraction[index + 1];
    Arrays.fill(counted, BigFraction.ZERO);
    counted[index] = BigFraction.ONE;
    for (int s = index; s >= 0; s--) {
      List<TakeLine> takes = stages.get(s).takes();
      for (int t = 0; t < takes.size(); t++) {
        if (sources[s][t] >= 0 && counted[s].signum() != 0) {
          BigFraction part = counted[s].multiply(takes.get(t).share());
          counted[sources[s][t]] = counted[sources[s][t]].add(part);
        }
      }
    }
    int line = 0;
    for (int s = 0; s <= index; s++) {
      for (int i = 0; i < stages.get(s).amounts().size(); i++) {
        weights[line] = weights[line].add(counted[s]);
        line++;
      }
    }
  }
}
