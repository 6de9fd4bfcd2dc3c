package dev.kettlemark.analysis;

import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.StatementClause;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Pressure;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.hipparchus.fraction.BigFraction;

/**
 * A formula with something changed that no text says: another cook temperature, other amounts, a warm
 * bowl, another air pressure.
 *
 * <p>Each change gives a new experiment; {@link #compute} solves amounts and stages anew, exactly as if
 * the text said so.
 */
public final class Experiment {

  private final ResolvedFormula resolved;
  private final Map<String, Material> materials;
  private final Kitchen kitchen;

  Experiment(ResolvedFormula resolved, Map<String, Material> materials, Kitchen kitchen) {
    this.resolved = resolved;
    this.materials = Map.copyOf(materials);
    this.kitchen = kitchen;
  }

  /**
   * A step in its formula.
   *
   * @param stage index of its stage
   * @param step index of the step in that stage
   */
  public record StepPlace(int stage, int step) {}

  /** Cooks a step to another temperature; a tolerance stays, and so does a state it cooks until. */
  public Experiment cooking(StepPlace place, Temperature target) {
    return changing(place.stage(), stage -> {
      List<Statement> steps = new ArrayList<>(stage.steps());
      steps.set(place.step(), aimedAt(steps.get(place.step()), target));
      return stage.withSteps(steps);
    });
  }

  /** Gives an amount line, counted through all stages, another measure. */
  public Experiment weighing(int line, Measure measure) {
    return changingLine(
        line,
        old -> new AmountLine(
            old.measure().map(written -> measure),
            Optional.empty(),
            old.ingredient(),
            old.at(),
            old.span()));
  }

  /**
   * Puts another material in the place of an amount line's; once no line of the old name is left,
   * steps and bases speak of the new one.
   */
  public Experiment replacing(int line, Material material) {
    String old = resolved.formula().amounts().get(line).ingredient().value();
    Experiment changed = changingLine(
        line,
        written -> new AmountLine(
            written.measure(),
            written.written(),
            written.ingredient().map(name -> material.name()),
            written.at(),
            written.span()));
    Formula formula = changed.resolved.formula();
    boolean isLeft =
        formula.amounts().stream().anyMatch(other -> other.ingredient().value().equals(old));
    return new Experiment(
        new ResolvedFormula(
            isLeft ? formula : renamed(formula, old, material.name()), resolved.missed()),
        with(material),
        kitchen);
  }

  /** Adds an amount at the end of a stage's amounts. */
  public Experiment adding(int stage, Material material, Measure measure) {
    Experiment changed = changing(stage, old -> {
      List<AmountLine> lines = new ArrayList<>(old.amounts());
      lines.add(new AmountLine(
          new Located<>(measure, old.span()),
          Optional.empty(),
          new Located<>(material.name(), old.span()),
          Optional.empty(),
          old.span()));
      return old.withAmounts(lines);
    });
    return new Experiment(changed.resolved, with(material), kitchen);
  }

  /** Weighs an amount line in at another temperature. */
  public Experiment weighingAt(int line, Temperature temperature) {
    return changingLine(
        line,
        old -> new AmountLine(
            old.measure(),
            old.written(),
            old.ingredient(),
            Optional.of(new Located<>(temperature, old.span())),
            old.span()));
  }

  /** Warms a bowl or pan before anything comes into it. */
  public Experiment warming(String vessel, Temperature temperature) {
    return new Experiment(resolved, materials, kitchen.warming(vessel, temperature));
  }

  /** Works under another air pressure. */
  public Experiment under(Pressure pressure) {
    return new Experiment(resolved, materials, kitchen.under(pressure));
  }

  /** Solves the changed formula; mass is conserved as ever. */
  public ComputedFormula compute() {
    return FormulaSolution.of(resolved, materials, kitchen);
  }

  private Map<String, Material> with(Material material) {
    Map<String, Material> more = new HashMap<>(materials);
    more.put(material.name(), material);
    return more;
  }

  private static Formula renamed(Formula formula, String old, String fresh) {
    List<Stage> stages = formula.stages().stream()
        .map(stage -> stage.withSteps(stage.steps().stream()
            .map(step -> VariantResolution.mapNames(step, old, Optional.of(fresh)))
            .toList()))
        .toList();
    return formula
        .withStages(stages)
        .withBases(formula.bases().stream()
            .map(basis -> VariantResolution.renamed(basis, old, fresh))
            .toList());
  }

  private Experiment changingLine(int line, UnaryOperator<AmountLine> change) {
    int before = 0;
    List<Stage> stages = resolved.formula().stages();
    for (int i = 0; i < stages.size(); i++) {
      int inStage = line - before;
      if (inStage < stages.get(i).amounts().size()) {
        return changing(i, stage -> {
          List<AmountLine> lines = new ArrayList<>(stage.amounts());
          lines.set(inStage, change.apply(lines.get(inStage)));
          return stage.withAmounts(lines);
        });
      }
      before += stages.get(i).amounts().size();
    }
    throw new IndexOutOfBoundsException("no amount line " + line);
  }

  private Experiment changing(int stage, UnaryOperator<Stage> change) {
    Formula formula = resolved.formula();
    List<Stage> stages = new ArrayList<>(formula.stages());
    stages.set(stage, change.apply(stages.get(stage)));
    return new Experiment(
        new ResolvedFormula(formula.withStages(stages), resolved.missed()), materials, kitchen);
  }

  private static Statement aimedAt(Statement step, Temperature target) {
    Connective behind = step.figure(Connective.TO, Unit.Dimension.TEMPERATURE).isEmpty()
            && step.figure(Connective.AT, Unit.Dimension.TEMPERATURE).isPresent()
        ? Connective.AT
        : Connective.TO;
    Optional<Quantity> written =
        step.figure(behind, Unit.Dimension.TEMPERATURE).map(Located::value);
    BigFraction celsius = FormulaSolution.exact(target.celsius());
    Quantity figure = new Quantity(
        celsius, celsius, Optional.of(Unit.CELSIUS), written.flatMap(Quantity::toleranceInBase), 1);
    List<StatementClause> clauses = new ArrayList<>();
    clauses.add(new StatementClause(
        behind, List.of(new Located<>(new Operand.Figure(figure), step.span())), step.span()));
    // The first figure of a connective holds, so the one as written stands idle behind the new one.
    clauses.addAll(step.clauses());
    return new Statement(step.word(), step.objects(), clauses, step.span());
  }
}
