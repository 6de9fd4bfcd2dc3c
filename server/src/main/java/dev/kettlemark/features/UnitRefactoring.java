package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Density;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** One line in another unit, with the same grams. */
final class UnitRefactoring {

  private static final BigFraction KILOGRAM = new BigFraction(1000);

  /** Below a tenth of a percent, parts in a million have fewer zeros. */
  private static final BigFraction SMALL_SHARE = new BigFraction(1, 1000);

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final int index;

  private UnitRefactoring(RefactoringSite site, int index) {
    this.site = site;
    this.computed = site.computed();
    this.index = index;
  }

  /** The line under the cursor in other units, the handiest first. */
  static List<Refactoring> at(RefactoringSite site) {
    return site.amount().map(index -> new UnitRefactoring(site, index).all()).orElse(List.of());
  }

  private List<Refactoring> all() {
    AmountLine line = site.line(index);
    Measure measure = line.measure().value();
    if (measure instanceof Measure.Share share) {
      return shares(share);
    }
    Optional<BigFraction> grams = measure instanceof Measure.Weight weight
        ? Optional.of(weight.grams())
        : measure instanceof Measure.Capacity capacity
            ? density().map(capacity.millilitres()::multiply)
            : Optional.empty();
    return grams.filter(g -> g.signum() > 0).map(this::weights).orElse(List.of());
  }

  private List<Refactoring> shares(Measure.Share share) {
    boolean small = share.fraction().compareTo(SMALL_SHARE) < 0;
    return Stream.of(Unit.PERCENT, Unit.PPM)
        .filter(unit -> unit == Unit.PERCENT || small)
        .filter(this::isOther)
        .flatMap(unit -> in(unit, share.fraction(), BasisRefactoring.SLACK).stream())
        .toList();
  }

  private List<Refactoring> weights(BigFraction grams) {
    BigFraction slack =
        BasisRefactoring.SLACK.multiply(computed.amounts().charge().orElse(BigFraction.ONE));
    Stream<Unit> units = Stream.of(
            Stream.of(Unit.GRAM),
            grams.compareTo(KILOGRAM) >= 0 ? Stream.of(Unit.KILOGRAM) : Stream.<Unit>empty(),
            grams.compareTo(BigFraction.ONE) < 0 ? Stream.of(Unit.MILLIGRAM) : Stream.<Unit>empty(),
            isPoured() ? Stream.of(Unit.MILLILITRE) : Stream.<Unit>empty(),
            // Of what is poured, nobody knows which ounce is meant.
            isPoured() ? Stream.<Unit>empty() : Stream.of(Unit.OUNCE))
        .flatMap(some -> some);
    return units
        .filter(this::isOther)
        .flatMap(unit -> unit.measures(Unit.Dimension.VOLUME)
            ? density()
                .flatMap(density -> in(unit, grams.divide(density), slack.divide(density)))
                .stream()
            : in(unit, grams, slack).stream())
        .toList();
  }

  private boolean isOther(Unit unit) {
    return site.line(index)
        .written()
        .flatMap(Quantity::unit)
        .filter(written -> written != unit)
        .isPresent();
  }

  private boolean isPoured() {
    return ingredient().filter(Ingredient::isLiquid).isPresent();
  }

  private Optional<Ingredient> ingredient() {
    return computed.material(site.line(index).ingredient().value()).flatMap(Material::ingredient);
  }

  private Optional<BigFraction> density() {
    return ingredient()
        .flatMap(Ingredient::density)
        .map(Density::gramsPerMillilitre)
        .map(WrittenFigure::exact);
  }

  private Optional<Refactoring> in(Unit unit, BigFraction base, BigFraction slack) {
    String figure = WrittenFigure.of(
            base.divide(unit.factor()), least(unit), slack.divide(unit.factor()))
        .text();
    String amount = figure + " " + unit.symbol();
    String written = site.line(index).measure().value() instanceof Measure.Share share
        ? share.basis().map(basis -> amount + " of " + basis.words()).orElse(amount)
        : amount;
    return site.sameGrams(
        ActionTitle.of(
            "Write as " + written,
            ", the same grams of " + site.line(index).ingredient().value()),
        Refactoring.Kind.REWRITE,
        List.of(site.measured(index, written)));
  }

  private static int least(Unit unit) {
    return unit == Unit.PERCENT ? BasisRefactoring.PERCENT_DECIMALS : 0;
  }
}
