package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * A stage as a formula of its own, of which the old one weighs in what the stage left.
 *
 * <p>What boils away in the stage is charged no longer; the other lines keep their grams, so their
 * percentages are of a smaller charge.
 */
final class ExtractFormulaRefactoring {

  private static final String FACT = "  %-10s%s";

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final Formula formula;
  private final StageEditing stages;
  private final int index;
  private final int into;

  private ExtractFormulaRefactoring(
      RefactoringSite site, Formula formula, StageEditing stages, int index, int into) {
    this.site = site;
    this.computed = site.computed();
    this.formula = formula;
    this.stages = stages;
    this.index = index;
    this.into = into;
  }

  /** On the heading of a stage that takes nothing itself and that one other takes all of. */
  static List<Refactoring> at(RefactoringSite site) {
    return site
        .formula()
        .flatMap(formula -> {
          StageEditing stages = new StageEditing(site, formula);
          return stages
              .headingAt()
              .filter(i -> formula.stages().get(i).takes().isEmpty())
              .filter(i -> !formula.stages().get(i).amounts().isEmpty())
              .flatMap(i -> stages
                  .taker(i)
                  .map(into ->
                      new ExtractFormulaRefactoring(site, formula, stages, i, into).offered()));
        })
        .stream()
        .toList();
  }

  private Stage stage() {
    return formula.stages().get(index);
  }

  private StageResult result() {
    return computed.process().stages().get(index);
  }

  private String title() {
    return "Make a formula of stage " + stage().name().value();
  }

  private Refactoring refused(String why) {
    return Refactoring.refused(ActionTitle.of(title()), Refactoring.Kind.EXTRACT, why);
  }

  private Refactoring offered() {
    Optional<String> why = Stream.of(
            stages.inherited(),
            stages.spokenOf(stage().name().value()),
            unknown(),
            bound(),
            expected())
        .flatMap(Optional::stream)
        .findFirst();
    return why.map(this::refused).orElseGet(this::written);
  }

  private Optional<String> unknown() {
    boolean isKnown = computed.amounts().complete()
        && computed.amounts().charge().isPresent()
        && result().left().mass().isKnown()
        && site.isPlainThroughout()
        && !formula.isByWeight();
    return isKnown
        ? Optional.empty()
        : Optional.of("it needs percentages, a batch, and a stage whose weight is known");
  }

  /** Percentages that reach over the border of the stage would have no meaning on either side. */
  private Optional<String> bound() {
    List<LineAmount> lines = computed.amounts().lines();
    for (LineAmount line : lines) {
      if (line.line().measure().value() instanceof Measure.Share share
          && formula.basisOf(share) instanceof Basis.Named named) {
        List<BigFraction> weights =
            BasisWeights.of(formula, named.name().value()).orElse(List.of());
        for (int i = 0; i < weights.size(); i++) {
          boolean counts = weights.get(i).signum() != 0;
          if (counts && (lines.get(i).stage() == index || line.stage() == index)) {
            return Optional.of("amounts of the stage and of others are percentages of `"
                + named.name().value() + "`");
          }
        }
      }
    }
    return formula.percent().filter(p -> !(p.value() instanceof Basis.Charge)).isPresent()
        ? Optional.of("its percentages are not of the charge")
        : Optional.empty();
  }

  /** A yield counts what boils away, and that would be counted elsewhere. */
  private Optional<String> expected() {
    return site.expectsYield() && result().evaporated().grams() > 0
        ? Optional.of("what boils away in it belongs to the yield that the formula expects")
        : Optional.empty();
  }

  private Refactoring written() {
    String name = freeName();
    BigFraction before = computed.amounts().charge().orElseThrow();
    BigFraction after =
        before.subtract(WrittenFigure.exact(result().evaporated().grams()));
    BigFraction share = WrittenFigure.exact(
            result().left().mass().map(mass -> mass.grams()).orElse(0.0))
        .divide(after);
    List<TextEdit> edits = new ArrayList<>();
    edits.add(TextEdit.insert(0, section(name)));
    edits.add(TextEdit.delete(stages.block(index)));
    edits.addAll(new ChangedCharge(before, after).edits(site, this::isOfCharge));
    String amount = ChangedCharge.percent(share);
    edits.add(take(name, amount));
    formula
        .stages()
        .get(into)
        .steps()
        .forEach(step -> edits.addAll(StageEditing.renamed(
            step, old -> List.of(old.equals(stage().name().value()) ? name : old))));
    Rewriting rewriting = site.rewriting(edits);
    boolean isSame = site.after(rewriting)
        .filter(now -> KeptGrams.makesTheSame(computed, now))
        .flatMap(now ->
            Formulas.computed(name).ask(site.next(rewriting)).filter(part -> keepsGrams(now, part)))
        .isPresent();
    return isSame
        ? Refactoring.of(
            ActionTitle.of(
                title(), ": " + name, ", " + Display.percent(share) + " weighed in again"),
            Refactoring.Kind.EXTRACT,
            site.document().uri(),
            rewriting.edits())
        : refused("the formula would make something else");
  }

  private boolean keepsGrams(ComputedFormula whole, ComputedFormula part) {
    List<Optional<BigFraction>> own = Stream.concat(
            part.amounts().lines().stream().map(part.amounts()::grams),
            whole.amounts().lines().stream()
                .filter(line -> !line.line()
                    .ingredient()
                    .value()
                    .equals(part.formula().name().value()))
                .map(whole.amounts()::grams))
        .toList();
    List<Optional<BigFraction>> old = Stream.concat(
            computed.amounts().lines().stream().filter(line -> line.stage() == index),
            computed.amounts().lines().stream().filter(line -> line.stage() != index))
        .map(computed.amounts()::grams)
        .toList();
    double slack = KeptGrams.SLACK * computed.process().charge().mass().grams();
    return own.size() == old.size()
        && Stream.iterate(0, i -> i + 1)
            .limit(own.size())
            .allMatch(i -> own.get(i).isPresent()
                && old.get(i).isPresent()
                && Math.abs(own.get(i).get().subtract(old.get(i).get()).doubleValue()) <= slack);
  }

  /** A line of another stage that is a percentage of the charge. */
  private boolean isOfCharge(int line) {
    LineAmount amount = computed.amounts().lines().get(line);
    return amount.stage() != index
        && amount.line().measure().value() instanceof Measure.Share share
        && formula.basisOf(share) instanceof Basis.Charge;
  }

  /** What was taken is weighed in, as hot as the stage left it. */
  private TextEdit take(String name, String amount) {
    Span take = formula.stages().get(into).takes().stream()
        .filter(one -> one.stage().value().equals(stage().name().value()))
        .findFirst()
        .orElseThrow()
        .span();
    Temperature low = result().left().temperature().low();
    Temperature high = result().left().temperature().high();
    Temperature middle = Temperature.ofCelsius((low.celsius() + high.celsius()) / 2);
    boolean isWarm = Math.abs(middle.celsius() - computed.kitchen().room().celsius()) > 2;
    return new TextEdit(
        take, amount + " " + name + (isWarm ? " at " + Display.celsius(middle) : ""));
  }

  private String section(String name) {
    String lineBreak = site.lineBreak();
    StringBuilder section = new StringBuilder("formula " + name
        + stage().title().map(title -> " \"" + title + "\"").orElse("") + lineBreak);
    cautions().forEach(word -> section.append(FACT.formatted("caution", word)).append(lineBreak));
    section.append(lineBreak).append(stage().span().of(site.text())).append(lineBreak);
    List<TextEdit> amounts = amounts();
    for (Span line : stages.lines(index)) {
      Optional<Line> written = stages.on(line);
      if (written.isPresent() || !line.of(site.text()).isBlank()) {
        section.append(stages.edited(line, amounts));
      }
    }
    return section.append(lineBreak).toString();
  }

  /** In weights: as percentages of so small a charge they would have no end. */
  private List<TextEdit> amounts() {
    List<TextEdit> edits = new ArrayList<>();
    List<LineAmount> lines = computed.amounts().lines();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).stage() == index) {
        BigFraction grams = computed.amounts().grams(lines.get(i)).orElse(BigFraction.ZERO);
        edits.add(site.measured(
            i, WrittenFigure.of(grams, 0, ChangedCharge.GRAM_SLACK).text() + " g"));
      }
    }
    return edits;
  }

  /** The cautions of the whole that the stage gives reason for. */
  private List<String> cautions() {
    boolean isHeated = stage().steps().stream()
        .flatMap(step -> Verb.of(step.word().value()).stream())
        .anyMatch(verb -> verb.effect() == Verb.Effect.COOK || verb.effect() == Verb.Effect.BOIL);
    boolean isWhipped = stage().steps().stream().anyMatch(step -> step.is("whip"));
    List<Ingredient> held = stage().amounts().stream()
        .flatMap(line -> computed.material(line.ingredient().value()).stream())
        .flatMap(material -> material.ingredient().stream())
        .toList();
    boolean isNut = held.stream().anyMatch(one -> one.hasRole("nut"));
    return formula.facts().wordsOf("caution").stream()
        .map(Located::value)
        .distinct()
        .filter(word -> held.stream().anyMatch(one -> one.facts().says("caution", word))
            || switch (word) {
              case "hot-sugar", "steam" -> isHeated;
              case "mixer-guard" -> isWhipped;
              case "nut", "choking" -> isNut;
              default -> false;
            })
        .toList();
  }

  /** The name of the stage where it is free, so that steps speak of it as before. */
  private String freeName() {
    String own = stage().name().value();
    return Stream.concat(
            Stream.of(own, site.name() + "-" + own),
            Stream.iterate(2, i -> i + 1).map(i -> site.name() + "-" + own + "-" + i))
        .filter(name -> site.snapshot().library().find(Kind.MATERIAL, name).isEmpty())
        .findFirst()
        .orElseThrow();
  }
}
