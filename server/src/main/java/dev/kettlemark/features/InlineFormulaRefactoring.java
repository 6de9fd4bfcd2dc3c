package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** A formula that is weighed in, written out as stages of the formula that weighs it in. */
final class InlineFormulaRefactoring {

  private static final String TAKE = "all of %s";

  /** A mass that would come in so much hotter or cooler is not the same mass. */
  private static final double SAME_HEAT = 5;

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final Formula formula;
  private final StageEditing stages;
  private final int index;
  private final Entry part;
  private final ComputedFormula made;

  private InlineFormulaRefactoring(
      RefactoringSite site, Formula formula, int index, Entry part, ComputedFormula made) {
    this.site = site;
    this.computed = site.computed();
    this.formula = formula;
    this.stages = new StageEditing(site, formula);
    this.index = index;
    this.part = part;
    this.made = made;
  }

  /** On a line that weighs in a formula of the user's own. */
  static List<Refactoring> at(RefactoringSite site) {
    return site
        .formula()
        .flatMap(formula -> site.amount()
            .flatMap(index -> site.snapshot()
                .library()
                .find(Kind.MATERIAL, site.line(index).ingredient().value())
                .filter(entry ->
                    entry.declaration().filter(Formula.class::isInstance).isPresent())
                .flatMap(entry -> Formulas.computed(site.snapshot(), entry)
                    .map(made -> new InlineFormulaRefactoring(site, formula, index, entry, made)
                        .offered()))))
        .stream()
        .toList();
  }

  private AmountLine line() {
    return site.line(index);
  }

  private String title() {
    return "Write " + line().ingredient().value() + " out as stages";
  }

  private Refactoring refused(String why) {
    return Refactoring.refused(ActionTitle.of(title()), Refactoring.Kind.INLINE, why);
  }

  private Refactoring offered() {
    return Stream.of(stages.inherited(), unknown(), names(), bases(), expected(), heat())
        .flatMap(Optional::stream)
        .findFirst()
        .map(this::refused)
        .orElseGet(this::written);
  }

  private Optional<String> unknown() {
    boolean isKnown = computed.amounts().complete()
        && computed.amounts().charge().isPresent()
        && made.amounts().complete()
        && !made.formula().stages().isEmpty()
        && made.process().yieldShare().map(share -> share.fraction() > 0).orElse(false)
        && made.formula().amounts().stream()
            .allMatch(one -> one.measure().value() instanceof Measure.Share
                || one.measure().value() instanceof Measure.Sufficient
                || one.measure().value() instanceof Measure.Weight)
        && !formula.isByWeight()
        && line().measure().value() instanceof Measure.Share share
        && formula.basisOf(share) instanceof Basis.Charge;
    return isKnown
        ? Optional.empty()
        : Optional.of("it needs percentages of the charge, a batch, and a known yield");
  }

  private Optional<String> names() {
    String name = line().ingredient().value();
    boolean isTwice = formula.amounts().stream()
            .filter(other -> other.ingredient().value().equals(name))
            .count()
        > 1;
    return isTwice
        ? Optional.of("it is weighed in on more than one line")
        : made.formula().stages().stream()
            .map(Stage::name)
            .map(Located::value)
            .filter(stage -> formula.stage(stage).isPresent()
                || formula.basis(stage).isPresent()
                || formula.amounts().stream()
                    .anyMatch(
                        other -> other.ingredient().value().equals(stage) && !stage.equals(name)))
            .findFirst()
            .map(stage -> "both formulas have a `" + stage + "`");
  }

  private Optional<String> bases() {
    boolean isNamed = formula.amounts().stream()
        .anyMatch(other -> other.measure().value() instanceof Measure.Share share
            && !(formula.basisOf(share) instanceof Basis.Charge));
    boolean boils = made.process().evaporated().grams() > 0;
    return (isNamed && boils) || formula.basis(line().ingredient().value()).isPresent()
        ? Optional.of("other amounts are percentages of something else than the charge")
        : Optional.empty();
  }

  private Optional<String> expected() {
    return site.expectsYield() && made.process().evaporated().grams() > 0
        ? Optional.of("what boils away in it would count for the yield that is expected")
        : Optional.empty();
  }

  private Optional<String> heat() {
    double comes = line()
        .at()
        .map(at -> at.value().celsius())
        .orElse(computed.kitchen().room().celsius());
    Optional<StageResult> last = made.process().last();
    double low = last.map(stage -> stage.left().temperature().low().celsius()).orElse(comes);
    double high = last.map(stage -> stage.left().temperature().high().celsius()).orElse(comes);
    double leaves = (low + high) / 2;
    return Math.abs(leaves - comes) > SAME_HEAT
        ? Optional.of("it is weighed in at " + Display.trimmed(comes, 0)
            + " °C, and its last stage leaves it at " + Display.trimmed(leaves, 0) + " °C")
        : Optional.empty();
  }

  private Refactoring written() {
    BigFraction before = computed.amounts().charge().orElseThrow();
    BigFraction weighed = computed.amounts().grams(site.lineAmount(index)).orElseThrow();
    BigFraction yield =
        WrittenFigure.exact(made.process().yieldShare().map(s -> s.fraction()).orElse(1.0));
    BigFraction charged = weighed.divide(yield);
    BigFraction after = before.subtract(weighed).add(charged);
    Optional<Document> there = site.snapshot().library().document(part.uri());
    if (there.isEmpty()) {
      return refused("its text is not at hand");
    }
    int into = site.lineAmount(index).stage();
    String last =
        made.formula().stages().get(made.formula().stages().size() - 1).name().value();
    List<TextEdit> edits = new ArrayList<>();
    edits.add(TextEdit.insert(stages.above(into), blocks(there.get(), charged.divide(after))));
    edits.addAll(new ChangedCharge(before, after).edits(site, this::isShareBeside));
    edits.addAll(take(last, into));
    String name = line().ingredient().value();
    formula
        .stages()
        .get(into)
        .steps()
        .forEach(step -> edits.addAll(
            StageEditing.renamed(step, old -> List.of(old.equals(name) ? last : old))));
    Rewriting rewriting = site.rewriting(edits);
    boolean isSame = site.after(rewriting)
        .filter(now -> KeptGrams.makesTheSame(computed, now))
        .isPresent();
    return isSame
        ? Refactoring.of(
            ActionTitle.of(
                title(),
                ": " + made.formula().stages().size() + " stages",
                ", " + Display.percent(charged.divide(after)) + " of the charge"),
            Refactoring.Kind.INLINE,
            site.document().uri(),
            rewriting.edits())
        : refused("the formula would make something else");
  }

  /** The line goes, and behind the stage's amounts stands what takes its place. */
  private List<TextEdit> take(String last, int into) {
    Span own = new Span(
        site.lineStart(line().span().start()), site.nextLine(line().span().end()));
    int end = own.end();
    for (Span whole : stages.lines(into)) {
      end = stages.on(whole).filter(StageEditing::isWeighed).isPresent() ? whole.end() : end;
    }
    String content = "  " + TAKE.formatted(last)
        + own.of(site.text()).substring(line().span().end() - own.start());
    String whole =
        content.endsWith("\n") || content.endsWith("\r") ? content : content + site.lineBreak();
    return List.of(TextEdit.delete(own), TextEdit.insert(end, whole));
  }

  private boolean isShareBeside(int line) {
    return line != index
        && computed.amounts().lines().get(line).line().measure().value() instanceof Measure.Share;
  }

  /** The stages of the other formula with amounts of this charge; its comments come along. */
  private String blocks(Document there, BigFraction share) {
    int offset = part.placed().offset();
    Span range = Span.at(offset);
    return RefactoringSite.at(site.snapshot(), there, range)
        .map(other -> {
          StageEditing own = new StageEditing(other, made.formula());
          List<TextEdit> amounts = new ArrayList<>();
          for (int i = 0; i < made.amounts().lines().size(); i++) {
            BigFraction line = made.amounts().lines().get(i).share().orElse(BigFraction.ZERO);
            amounts.add(other.measured(i, ChangedCharge.percent(line.multiply(share))));
          }
          StringBuilder text = new StringBuilder();
          for (int i = 0; i < made.formula().stages().size(); i++) {
            text.append(own.edited(own.block(i), amounts).stripTrailing())
                .append(site.lineBreak())
                .append(site.lineBreak());
          }
          return text.toString();
        })
        .orElse("");
  }
}
