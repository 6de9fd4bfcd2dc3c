package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.BasisWeights;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Stage;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.hipparchus.fraction.BigFraction;

/** One line as a percentage of something else, with the same grams. */
final class BasisRefactoring {

  /** Formulas are written in hundredths of a percent; common practice, no source. */
  static final int PERCENT_DECIMALS = 2;

  /** Half of what may change, so that going there and back again stays within it. */
  static final BigFraction SLACK = new BigFraction(4, 10_000_000_000L);

  /** A stage that holds so much of the charge says nothing that the charge does not say. */
  private static final double ALL = 0.9999;

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final int index;

  private BasisRefactoring(RefactoringSite site, int index) {
    this.site = site;
    this.computed = site.computed();
    this.index = index;
  }

  /** The line under the cursor on every basis that the formula knows, the nearest first. */
  static List<Refactoring> at(RefactoringSite site) {
    return site.amount().map(index -> new BasisRefactoring(site, index).all()).orElse(List.of());
  }

  private List<Refactoring> all() {
    boolean isPart = site.line(index).measure().value() instanceof Measure.Share
        || (isWeight() && !computed.formula().isByWeight());
    return isPart
        ? bases().stream()
            .filter(basis -> !isWrittenOn(basis))
            .flatMap(basis -> on(basis).stream())
            .sorted(Comparator.comparing((Refactoring one) -> !isDeclared(one))
                .thenComparing(one -> one.title().length()))
            .toList()
        : List.of();
  }

  private boolean isDeclared(Refactoring one) {
    return computed.formula().bases().stream()
        .anyMatch(basis -> one.title().contains(" of " + basis.name().value()));
  }

  private boolean isWeight() {
    return site.line(index).measure().value() instanceof Measure.Weight;
  }

  private boolean isWrittenOn(Basis basis) {
    return site.line(index).measure().value() instanceof Measure.Share share
        && computed.formula().basisOf(share).words().equals(basis.words());
  }

  private List<Basis> bases() {
    LineAmount own = site.lineAmount(index);
    Set<String> names = new LinkedHashSet<>();
    computed.formula().bases().stream()
        .map(BasisDefinition::name)
        .map(Located::value)
        .forEach(names::add);
    largestBeside(own).ifPresent(names::add);
    Stage stage = computed.formula().stages().get(own.stage());
    if (holdsOnlyPart(stage.name().value())) {
      names.add(stage.name().value());
    }
    List<Basis> bases = new ArrayList<>(List.of(new Basis.Charge()));
    names.forEach(name -> bases.add(new Basis.Named(new Located<>(name, Span.at(0)))));
    bases.add(new Basis.Finished());
    return bases;
  }

  /** The heaviest other material of the stage. */
  private Optional<String> largestBeside(LineAmount own) {
    return IntStream.range(0, computed.amounts().lines().size())
        .filter(i -> i != index)
        .mapToObj(site::lineAmount)
        .filter(line -> line.stage() == own.stage())
        .filter(line ->
            !line.line().ingredient().value().equals(own.line().ingredient().value()))
        .max(Comparator.comparing((LineAmount line) -> line.share().orElse(BigFraction.ZERO)))
        .map(line -> line.line().ingredient().value());
  }

  private boolean holdsOnlyPart(String stage) {
    return BasisWeights.of(computed.formula(), stage)
        .map(computed.amounts()::weighted)
        .filter(share -> share.signum() > 0 && share.doubleValue() < ALL)
        .isPresent();
  }

  /** What a basis is of the charge. */
  static Optional<BigFraction> share(ComputedFormula computed, Basis basis) {
    if (basis instanceof Basis.Named named) {
      return BasisWeights.of(computed.formula(), named.name().value())
          .map(computed.amounts()::weighted);
    }
    return basis instanceof Basis.Charge
        ? Optional.of(BigFraction.ONE)
        : computed
            .process()
            .cooked()
            .toOptional()
            .map(CookedWeight::mass)
            .map(mass -> WrittenFigure.exact(
                mass.grams() / computed.process().charge().mass().grams()));
  }

  /** The amount of the line on a basis, with as few decimals as keep its grams. */
  private Optional<String> amount(Basis basis) {
    Optional<BigFraction> own =
        site.lineAmount(index).share().toOptional().filter(share -> share.signum() > 0);
    return own.flatMap(part -> share(computed, basis)
        .filter(whole -> whole.signum() > 0)
        .map(whole -> WrittenFigure.of(
                part.divide(whole).multiply(100),
                PERCENT_DECIMALS,
                SLACK.multiply(100).divide(whole).multiply(others(basis, part, whole)))
            .text()));
  }

  /** What of a basis is not the line itself: where it is little, a small error of the figure grows. */
  private BigFraction others(Basis basis, BigFraction part, BigFraction whole) {
    BigFraction counted = basis instanceof Basis.Named named
        ? BasisWeights.of(computed.formula(), named.name().value())
            .map(weights -> weights.get(index))
            .orElse(BigFraction.ZERO)
        : BigFraction.ZERO;
    BigFraction rest = BigFraction.ONE.subtract(part.multiply(counted).divide(whole));
    return rest.signum() > 0 ? rest : BigFraction.ONE;
  }

  private Optional<Refactoring> on(Basis basis) {
    boolean isUsual = computed
        .formula()
        .percent()
        .map(percent -> percent.value().words())
        .filter(basis.words()::equals)
        .isPresent();
    return amount(basis).flatMap(figure -> {
      String shown = figure + " % of " + basis.words();
      return site.sameGrams(
          ActionTitle.of(
              "Write as " + shown,
              ", the same grams of " + site.line(index).ingredient().value()),
          Refactoring.Kind.REWRITE,
          List.of(site.measured(index, isUsual ? figure + " %" : shown)));
    });
  }
}
