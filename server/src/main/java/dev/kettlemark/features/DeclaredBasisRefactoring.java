package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** A basis declared from lines of a formula, and one line written on it with the same grams. */
final class DeclaredBasisRefactoring {

  private static final String BASIS = "  basis     %s = %s";

  /** What is mostly water is a liquid to whoever doses a gum. */
  private static final double MOSTLY = 0.5;

  /** Roles of what is dosed by what it is in. */
  private static final List<String> DOSED = List.of("gelling", "thickening", "whipping");

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final Formula formula;

  private DeclaredBasisRefactoring(RefactoringSite site, Formula formula) {
    this.site = site;
    this.computed = site.computed();
    this.formula = formula;
  }

  static List<Refactoring> at(RefactoringSite site) {
    return site
        .formula()
        .filter(formula -> !formula.isByWeight())
        .flatMap(formula -> new DeclaredBasisRefactoring(site, formula).declared())
        .stream()
        .toList();
  }

  private Optional<Refactoring> declared() {
    List<Integer> selected = site.amounts();
    if (selected.size() > 1) {
      int current = selected.stream().min(Comparator.comparing(this::share)).orElseThrow();
      return declared(current, selected.stream().filter(i -> i != current).toList());
    }
    return site.amount()
        .filter(this::isDosed)
        .flatMap(current -> declared(current, liquidsBeside(current)));
  }

  private List<Integer> liquidsBeside(int current) {
    return IntStream.range(0, computed.amounts().lines().size())
        .boxed()
        .filter(i -> i != current)
        .filter(i -> site.lineAmount(i).stage() == site.lineAmount(current).stage())
        .filter(this::isLiquid)
        .toList();
  }

  private Optional<Refactoring> declared(int current, List<Integer> members) {
    BigFraction whole =
        members.stream().map(this::share).reduce(BigFraction.ZERO, BigFraction::add);
    String own = site.line(current).ingredient().value();
    boolean isShare = site.line(current).measure().value() instanceof Measure.Share;
    boolean holdsItself =
        members.stream().anyMatch(i -> site.line(i).ingredient().value().equals(own));
    if (members.isEmpty()
        || !isShare
        || holdsItself
        || share(current).signum() <= 0
        || whole.signum() <= 0) {
      return Optional.empty();
    }
    List<String> names = members.stream().map(this::member).distinct().toList();
    if (isDeclared(names)) {
      return Optional.empty();
    }
    String name = freeName(members);
    String figure = WrittenFigure.of(
            share(current).divide(whole).multiply(100),
            BasisRefactoring.PERCENT_DECIMALS,
            BasisRefactoring.SLACK.multiply(100).divide(whole))
        .text();
    String content = BASIS.formatted(name, String.join(", ", names));
    List<TextEdit> edits =
        List.of(site.below(above(), content), site.measured(current, figure + " % of " + name));
    return site.sameGrams(
        ActionTitle.of("Declare basis " + name, " and write " + own + " as " + figure + " % of it"),
        Refactoring.Kind.EXTRACT,
        edits);
  }

  /** The name alone where it stands in one stage only and no stage bears it. */
  private String member(int index) {
    String name = site.line(index).ingredient().value();
    List<Stage> stages = formula.stages().stream()
        .filter(stage ->
            stage.amounts().stream().anyMatch(line -> line.ingredient().value().equals(name)))
        .toList();
    boolean isPlain = stages.size() == 1 && formula.stage(name).isEmpty();
    Stage own = formula.stages().get(site.lineAmount(index).stage());
    return isPlain ? name : name + " in " + own.name().value();
  }

  private boolean isDeclared(List<String> names) {
    return formula.bases().stream()
        .map(basis -> basis.members().stream()
            .map(member -> member.ingredient().value()
                + member.stage().map(stage -> " in " + stage.value()).orElse(""))
            .toList())
        .anyMatch(names::equals);
  }

  private String freeName(List<Integer> members) {
    String wanted = members.stream().allMatch(this::isLiquid)
        ? "liquid"
        : members.stream().allMatch(i -> has(i, one -> one.hasRole("sweetening")))
            ? "sugar"
            : "mass";
    return Stream.iterate(1, count -> count + 1)
        .map(count -> count == 1 ? wanted : wanted + "-" + count)
        .filter(name -> formula.basis(name).isEmpty()
            && formula.stage(name).isEmpty()
            && formula.amounts().stream()
                .map(AmountLine::ingredient)
                .noneMatch(ingredient -> ingredient.value().equals(name)))
        .findFirst()
        .orElseThrow();
  }

  /** A new basis stands below the others, or else below the batch. */
  private Span above() {
    return formula.bases().stream()
        .map(BasisDefinition::span)
        .reduce((one, later) -> later)
        .or(() -> Stream.of("batch", "percent", "status", "version", "code")
            .flatMap(word -> formula.facts().first(word).stream())
            .map(fact -> fact.span())
            .findFirst())
        .orElseGet(() -> site.entry().section().lines().get(0).span());
  }

  private boolean isDosed(int index) {
    return has(index, one -> DOSED.stream().anyMatch(one::hasRole)) && !isLiquid(index);
  }

  private boolean isLiquid(int index) {
    return computed
        .material(site.line(index).ingredient().value())
        .map(Material::composition)
        .flatMap(composition -> composition.toOptional())
        .map(Composition::water)
        .filter(water -> water.fraction() > MOSTLY)
        .isPresent();
  }

  private boolean has(int index, Predicate<Ingredient> what) {
    return computed
        .material(site.line(index).ingredient().value())
        .flatMap(Material::ingredient)
        .filter(what)
        .isPresent();
  }

  private BigFraction share(int index) {
    return site.lineAmount(index).share().orElse(BigFraction.ZERO);
  }
}
