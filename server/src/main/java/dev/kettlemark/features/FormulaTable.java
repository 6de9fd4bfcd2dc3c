package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.analysis.Figure;
import dev.kettlemark.analysis.FigureDerivations;
import dev.kettlemark.analysis.Kitchen;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * A formula as a table: what is weighed into each stage, what each stage leaves, and the whole.
 *
 * <p>Masses are those of the batch, or of a nominal charge where the formula gives no weight.
 *
 * @param name by which other sections use it
 * @param title the display name
 * @param facts its facts, in the order written
 * @param basis what a bare percentage is of
 * @param nominal whether the masses are those of a nominal charge
 * @param kitchen where it is made
 * @param stages in order
 * @param totals the whole formula
 */
public record FormulaTable(
    String name,
    Optional<String> title,
    Facts facts,
    String basis,
    boolean nominal,
    Kitchen kitchen,
    List<StageRows> stages,
    Totals totals) {

  public FormulaTable {
    stages = List.copyOf(stages);
  }

  /**
   * One line of a stage.
   *
   * @param name the ingredient or formula weighed in, or the stage taken
   * @param written the amount as written, with its basis where that is not the formula's own
   * @param share of the charge; empty for a taken stage, which was counted where it was weighed
   * @param mass what it weighs
   * @param taken whether it is what an earlier stage left
   */
  public record Row(
      String name,
      String written,
      Optional<Outcome<Ratio>> share,
      Outcome<Mass> mass,
      boolean taken) {}

  /**
   * One stage.
   *
   * @param weighed what is weighed in here
   * @param share the same as a share of the charge
   * @param charged what of the formula's charge is in it, taken stages included
   * @param evaporated what leaves as vapour
   * @param left what it leaves
   * @param slack by how much {@code left} may be off
   * @param water the share of water in what it leaves
   * @param states what the mass has become, in the order of {@link State}
   * @param figures how what it leaves eats and keeps
   * @param explained how the figures of its steps came about
   */
  public record StageRows(
      String name,
      Optional<String> title,
      Optional<String> vessel,
      List<Row> rows,
      Mass weighed,
      Ratio share,
      Mass charged,
      Mass evaporated,
      Outcome<Mass> left,
      Mass slack,
      Outcome<Ratio> water,
      Band<Temperature> temperature,
      List<State> states,
      MassFigures figures,
      List<ExplainedStep> explained) {

    public StageRows {
      rows = List.copyOf(rows);
      states = List.copyOf(states);
      explained = List.copyOf(explained);
    }

    /** The state words, or nothing. */
    public String stateWords() {
      return String.join(", ", states.stream().map(State::word).toList());
    }
  }

  /** A step whose figures were computed, with how. */
  public record ExplainedStep(String step, Derivation derivation) {}

  /**
   * The whole formula.
   *
   * @param charge all that is weighed in
   * @param share the same as the sum of all shares; 100 % for a formula that adds up
   * @param evaporated what leaves as vapour
   * @param cooked what is left
   * @param yieldShare what is left as a share of the charge
   * @param yieldBand the same as the band in which the model may be off
   * @param water the share of water in what is left
   * @param figures how it eats and keeps
   */
  public record Totals(
      Mass charge,
      Ratio share,
      Mass evaporated,
      Outcome<CookedWeight> cooked,
      Outcome<Ratio> yieldShare,
      Outcome<Band<Ratio>> yieldBand,
      Outcome<Ratio> water,
      Outcome<MassFigures> figures) {

    /** One figure with how it came about; unknown for the reason for which the figure is. */
    public Outcome<Derivation> explained(Figure figure) {
      return figures.flatMap(all -> FigureDerivations.of(all, figure));
    }
  }

  public static FormulaTable of(ComputedFormula computed) {
    Formula formula = computed.formula();
    List<StageRows> stages = new ArrayList<>();
    for (int i = 0; i < computed.process().stages().size(); i++) {
      stages.add(stage(computed, i));
    }
    return new FormulaTable(
        formula.name().value(),
        formula.title(),
        formula.facts(),
        formula.percent().map(basis -> basis.value().words()).orElse("charge"),
        computed.isNominal(),
        computed.kitchen(),
        stages,
        totals(computed));
  }

  /** The table as Markdown, for an editor's preview. */
  public String markdown() {
    return new FormulaTableMarkdown(this).text();
  }

  /** The plain word behind a fact, such as {@code bench} of {@code status bench}. */
  public Optional<String> factWord(String fact) {
    return facts.wordOf(fact).map(Located::value);
  }

  private static StageRows stage(ComputedFormula computed, int index) {
    StageResult result = computed.process().stages().get(index);
    List<Row> rows = new ArrayList<>();
    for (Amounts.LineAmount amount : computed.amounts().lines()) {
      if (amount.stage() == index) {
        rows.add(row(computed, amount));
      }
    }
    result.stage().takes().forEach(take -> rows.add(row(computed.process(), take)));
    return new StageRows(
        result.name(),
        result.stage().title(),
        result.stage().vessel().map(Located::value),
        rows,
        result.weighed(),
        ratio(computed.amounts().totalOf(index)),
        result.charged(),
        result.evaporated(),
        result.left().mass(),
        result.left().slack(),
        result.left().composition().map(Composition::water),
        result.left().temperature(),
        result.left().states().stream().sorted().toList(),
        MassFigures.of(result.left(), computed.kitchen()),
        explained(result));
  }

  private static Row row(ComputedFormula computed, Amounts.LineAmount amount) {
    AmountLine line = amount.line();
    Mass charge = charge(computed);
    Outcome<Ratio> share = amount.share().map(FormulaTable::ratio);
    return new Row(
        line.ingredient().value(),
        WrittenAmount.of(line),
        Optional.of(share),
        share.map(charge::times),
        false);
  }

  private static Row row(ProcessResult process, TakeLine take) {
    Outcome<Mass> left = process
        .stage(take.stage().value())
        .map(stage -> stage.left().mass())
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "no stage has that name"));
    return new Row(
        take.stage().value(),
        WrittenAmount.of(take),
        Optional.empty(),
        left.map(mass -> mass.times(take.share().doubleValue())),
        true);
  }

  private static Mass charge(ComputedFormula computed) {
    return computed
        .amounts()
        .charge()
        .map(grams -> Mass.ofGrams(grams.doubleValue()))
        .orElse(ComputedFormula.NOMINAL_CHARGE);
  }

  private static List<ExplainedStep> explained(StageResult result) {
    return result.steps().stream()
        .flatMap(step ->
            step
                .derivation()
                .map(derivation -> new ExplainedStep(words(step.step()), derivation))
                .stream())
        .toList();
  }

  /** A step's verb and what it speaks of, as a heading. */
  private static String words(Statement step) {
    List<String> objects = step.objectNames().stream().map(Located::value).toList();
    return String.join(
        " ",
        Stream.of(step.word().value(), String.join(", ", objects))
            .filter(word -> !word.isEmpty())
            .toList());
  }

  private static Totals totals(ComputedFormula computed) {
    ProcessResult process = computed.process();
    Mass charge = process.charge().mass();
    Outcome<CookedWeight> cooked = process.cooked();
    Outcome<Composition> composition = computed.composition();
    return new Totals(
        charge,
        ratio(computed.amounts().total()),
        process.evaporated(),
        cooked,
        process.yieldShare(),
        process.yieldShare().flatMap(share -> cooked.map(weight -> band(share, weight, charge))),
        composition.map(Composition::water),
        MassFigures.of(computed));
  }

  private static Band<Ratio> band(Ratio yield, CookedWeight cooked, Mass charge) {
    Ratio slack = cooked.slack().dividedBy(charge);
    return new Band<>(yield.minus(slack), yield.plus(slack));
  }

  private static Ratio ratio(BigFraction fraction) {
    return Ratio.ofFraction(fraction.doubleValue());
  }
}
