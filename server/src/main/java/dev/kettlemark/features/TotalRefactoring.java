package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.fraction.BigFraction;

/** A total that misses the whole brought there, and a line that takes up the rest from now on. */
final class TotalRefactoring {

  /** What is left over by rounding is no more than this share of the charge. */
  private static final BigFraction CLOSED = new BigFraction(1, 1_000_000);

  private static final double PURE = 0.99;

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final BigFraction gap;

  private TotalRefactoring(RefactoringSite site) {
    this.site = site;
    this.computed = site.computed();
    this.gap = BigFraction.ONE.subtract(computed.amounts().total());
  }

  /** The ways to the whole where the total is off. */
  static List<Refactoring> at(RefactoringSite site) {
    return hasTotal(site) ? new TotalRefactoring(site).closing() : List.of();
  }

  /** The line under the cursor as the one that takes up the rest, where the total is right. */
  static List<Refactoring> rest(RefactoringSite site) {
    return hasTotal(site)
        ? Optional.of(new TotalRefactoring(site))
            .filter(total -> !total.isOff())
            .flatMap(total -> site.amount().flatMap(total::rest))
            .stream()
            .toList()
        : List.of();
  }

  private static boolean hasTotal(RefactoringSite site) {
    return !site.computed().formula().amounts().isEmpty()
        && !site.computed().formula().isByWeight()
        && site.computed().amounts().complete();
  }

  private boolean isOff() {
    return sufficient().isEmpty() && gap.abs().compareTo(CLOSED) > 0;
  }

  private List<Refactoring> closing() {
    List<Refactoring> found = new ArrayList<>();
    if (isOff()) {
      Optional<Integer> water = waterLine();
      water.flatMap(this::rest).ifPresent(found::add);
      inProportion().ifPresent(found::add);
      site.amount().flatMap(this::onLine).ifPresent(found::add);
      site.amount()
          .filter(index -> !water.equals(Optional.of(index)))
          .flatMap(this::rest)
          .ifPresent(found::add);
    }
    return found;
  }

  private Optional<Integer> sufficient() {
    return lines().boxed().filter(i -> measure(i) instanceof Measure.Sufficient).findFirst();
  }

  private IntStream lines() {
    return IntStream.range(0, computed.amounts().lines().size());
  }

  private Measure measure(int index) {
    return site.line(index).measure().value();
  }

  private boolean isOwn(int index) {
    return !computed.formula().inherits(site.line(index).span());
  }

  private boolean isOfCharge(int index) {
    return measure(index) instanceof Measure.Share share
        && computed.formula().basisOf(share) instanceof Basis.Charge;
  }

  private BigFraction share(int index) {
    return site.lineAmount(index).share().orElse(BigFraction.ZERO);
  }

  private Optional<Integer> waterLine() {
    return lines()
        .boxed()
        .filter(i -> isOwn(i) && isOfCharge(i) && isWater(site.line(i)))
        .max(Comparator.comparing(this::share));
  }

  private boolean isWater(AmountLine line) {
    return computed
        .material(line.ingredient().value())
        .map(Material::composition)
        .flatMap(composition -> composition.toOptional())
        .filter(composition -> composition.water().fraction() >= PURE)
        .isPresent();
  }

  /** A line takes up the rest; the one that did so far keeps its amount. */
  private Optional<Refactoring> rest(int index) {
    if (site.formula().isEmpty()
        || !isOfCharge(index)
        || share(index).add(restGap()).signum() <= 0) {
      return Optional.empty();
    }
    String name = site.line(index).ingredient().value();
    List<TextEdit> edits = new ArrayList<>(List.of(site.measured(index, "q.s.")));
    sufficient()
        .ifPresent(old -> edits.add(site.measured(
            old,
            WrittenFigure.of(
                        share(old).multiply(100),
                        BasisRefactoring.PERCENT_DECIMALS,
                        BasisRefactoring.SLACK.multiply(100))
                    .text()
                + " %" + ofCharge())));
    boolean isSame = restGap().signum() == 0;
    String title = ActionTitle.of(
        "Let " + name + " take up the rest, q.s.",
        isSame
            ? ": the same " + Display.percent(share(index))
            : ": " + Display.percent(share(index)) + " → "
                + Display.percent(share(index).add(gap)));
    return isSame
        ? site.sameGrams(title, Refactoring.Kind.REWRITE, edits)
        : site.refactoring(title, Refactoring.Kind.REWRITE, edits, TotalRefactoring::closes);
  }

  private BigFraction restGap() {
    return sufficient().isPresent() ? BigFraction.ZERO : gap;
  }

  private String ofCharge() {
    boolean isUsual = computed
        .formula()
        .percent()
        .filter(percent -> !(percent.value() instanceof Basis.Charge))
        .isEmpty();
    return isUsual ? "" : " of charge";
  }

  private static boolean closes(ComputedFormula after) {
    return BigFraction.ONE.subtract(after.amounts().total()).abs().compareTo(CLOSED) <= 0
        && after.amounts().lines().stream()
            .allMatch(line -> line.share().orElse(BigFraction.ZERO).signum() >= 0);
  }

  /** All lines of charge times one factor; what rounding leaves over goes to the largest. */
  private Optional<Refactoring> inProportion() {
    List<Integer> free = lines().boxed().filter(this::isOfCharge).toList();
    Optional<Integer> largest = free.stream().max(Comparator.comparing(this::share));
    BigFraction fixed = lines()
        .filter(i -> !(measure(i) instanceof Measure.Share))
        .mapToObj(this::share)
        .reduce(BigFraction.ZERO, BigFraction::add);
    BigFraction scaling = computed.amounts().total().subtract(fixed);
    BigFraction room = BigFraction.ONE.subtract(fixed);
    if (largest.isEmpty()
        || !free.stream().allMatch(this::isOwn)
        || !site.isPlainThroughout()
        || scaling.signum() <= 0
        || room.signum() <= 0) {
      return Optional.empty();
    }
    BigFraction factor = room.divide(scaling);
    BigFraction left = BigFraction.ZERO;
    List<TextEdit> edits = new ArrayList<>();
    for (int i : free) {
      if (i != largest.get()) {
        WrittenFigure figure = figure(i, share(i).multiply(factor));
        left = left.add(share(i).multiply(factor))
            .subtract(figure.value().multiply(unit(i).factor()));
        edits.add(written(i, figure));
      }
    }
    BigFraction rest = share(largest.get()).multiply(factor).add(left);
    edits.add(written(largest.get(), exact(largest.get(), rest)));
    return site.refactoring(
        ActionTitle.of(
            "Bring to 100 %: all lines in proportion",
            ", × " + Display.fixed(factor, 4),
            " from " + Display.percent(computed.amounts().total())),
        Refactoring.Kind.REWRITE,
        edits,
        TotalRefactoring::closes);
  }

  /**
   * The gap on one line. Other lines may be percentages of it, so the total is a straight line over its
   * share, and two points of it tell where it meets the whole.
   */
  private Optional<Refactoring> onLine(int index) {
    if (!isOfCharge(index)) {
      return Optional.empty();
    }
    BigFraction tried = share(index).add(gap.signum() == 0 ? BigFraction.ONE : gap);
    BigFraction total = computed
        .experiment()
        .weighing(index, new Measure.Share(tried, Optional.of(new Basis.Charge())))
        .compute()
        .amounts()
        .total();
    BigFraction grown = total.subtract(computed.amounts().total());
    if (grown.signum() == 0) {
      return Optional.empty();
    }
    BigFraction needed =
        share(index).add(gap.multiply(tried.subtract(share(index))).divide(grown));
    if (needed.signum() <= 0) {
      return Optional.empty();
    }
    WrittenFigure figure = exact(index, needed);
    return site.refactoring(
        ActionTitle.of(
            "Bring to 100 % on this line: " + Display.percent(share(index)) + " → "
                + Display.percent(needed),
            " " + site.line(index).ingredient().value()),
        Refactoring.Kind.REWRITE,
        List.of(written(index, figure)),
        TotalRefactoring::closes);
  }

  private Unit unit(int index) {
    return site.line(index).written().flatMap(Quantity::unit).orElse(Unit.PERCENT);
  }

  private int decimals(int index) {
    int written = site.line(index).written().map(Quantity::decimals).orElse(0);
    return unit(index) == Unit.PERCENT
        ? Math.max(BasisRefactoring.PERCENT_DECIMALS, written)
        : written;
  }

  private WrittenFigure figure(int index, BigFraction share) {
    return WrittenFigure.fixed(share.divide(unit(index).factor()), decimals(index));
  }

  private WrittenFigure exact(int index, BigFraction share) {
    BigFraction factor = unit(index).factor();
    return WrittenFigure.of(
        share.divide(factor), decimals(index), CLOSED.divide(factor).divide(2));
  }

  private TextEdit written(int index, WrittenFigure figure) {
    String basis = measure(index) instanceof Measure.Share share
        ? share.basis().map(b -> " of " + b.words()).orElse("")
        : "";
    return site.measured(index, figure.text() + " " + unit(index).symbol() + basis);
  }
}
