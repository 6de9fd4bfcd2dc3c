package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.PieceOrder;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.model.Statement;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.ScaleEdits;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Batches that a formula itself gives reason for: its pieces, the moulds and frames it goes into, and a
 * round weight of what stands under the cursor.
 */
final class ScaleRefactoring {

  private static final BigFraction NO_LOSS = BigFraction.ZERO;

  /** Round weights are these, times a power of ten. */
  private static final List<Integer> ROUND = List.of(1, 2, 5, 10);

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final List<Refactoring> found = new ArrayList<>();

  private ScaleRefactoring(RefactoringSite site) {
    this.site = site;
    this.computed = site.computed();
  }

  static List<Refactoring> at(RefactoringSite site) {
    ScaleRefactoring scalings = new ScaleRefactoring(site);
    if (scalings.isMixed()) {
      return List.of();
    }
    scalings.ingredient();
    scalings.pieces();
    scalings.tools();
    return List.copyOf(scalings.found);
  }

  /** A weight among percentages stays as it stands, so another batch would not close. */
  private boolean isMixed() {
    return !computed.formula().isByWeight()
        && computed.formula().amounts().stream()
            .map(line -> line.measure().value())
            .anyMatch(measure ->
                measure instanceof Measure.Weight || measure instanceof Measure.Capacity);
  }

  private void pieces() {
    PieceOrder.of(computed.formula().facts())
        .ifPresent(order -> add(
            "Scale to " + number(order.pieces()) + " × " + number(order.gramsEach()) + " g",
            new Target.Pieces(order.pieces(), order.gramsEach(), order.loss())));
  }

  private void tools() {
    Optional<House> house = computed.kitchen().house();
    Set<String> named = computed
        .formula()
        .steps()
        .flatMap(ScaleRefactoring::names)
        .collect(Collectors.toUnmodifiableSet());
    for (House.Frame frame : house.map(House::frames).orElse(List.of())) {
      String name = frame.name().value();
      if (named.contains(name)) {
        add("Scale to 1 frame " + name, new Target.Frames(name, 1, NO_LOSS));
      }
    }
    for (House.Mould mould : house.map(House::moulds).orElse(List.of())) {
      String name = mould.name().value();
      if (named.contains(name)) {
        int count = filled(name);
        add(
            "Scale to " + count + (count == 1 ? " mould " : " moulds ") + name,
            new Target.Moulds(name, count, NO_LOSS));
      }
    }
  }

  /** As many moulds as the batch fills by now, at least one. */
  private int filled(String mould) {
    double now = computed.process().charge().mass().grams();
    double one = Scaling.of(computed, new Target.Moulds(mould, 1, NO_LOSS))
        .map(scaling -> scaling.charge().mass().grams())
        .orElse(now);
    return one > 0 ? (int) Math.max(1, Math.min(1000, Math.floor(now / one + 1e-6))) : 1;
  }

  private static Stream<String> names(Statement step) {
    return step.names().stream().map(Located::value);
  }

  /** The next round weight of the line under the cursor, as bags and jars hold it. */
  private void ingredient() {
    site.amount().filter(index -> !isWater(index)).ifPresent(index -> {
      String name = site.line(index).ingredient().value();
      computed
          .amounts()
          .charge()
          .map(computed.amounts().shareOf(name)::multiply)
          .filter(grams -> grams.signum() > 0)
          .map(BigFraction::doubleValue)
          .map(ScaleRefactoring::nextRound)
          .ifPresent(grams ->
              add("Scale to " + number(grams) + " g " + name, new Target.InHand(name, grams)));
    });
  }

  /** Nobody is short of water. */
  private boolean isWater(int index) {
    return computed
        .material(site.line(index).ingredient().value())
        .flatMap(Material::ingredient)
        .filter(one -> one.hasRole("water"))
        .isPresent();
  }

  private static BigFraction nextRound(double grams) {
    int power = (int) Math.floor(Math.log10(grams));
    BigFraction unit = power < 0
        ? BigFraction.ONE.divide(new BigFraction(10).pow(-power))
        : new BigFraction(10).pow(power);
    return ROUND.stream()
        .map(unit::multiply)
        .filter(round -> round.doubleValue() > grams * (1 + 1e-9))
        .findFirst()
        .orElseGet(() -> unit.multiply(20));
  }

  private void add(String what, Target target) {
    Scaling.of(computed, target).ifKnown(scaling -> {
      boolean isNow = computed.formula().batch().isPresent()
          && computed.amounts().charge().filter(scaling.batch()::equals).isPresent();
      // What no bowl can hold is no batch to propose.
      if (!isNow && scaling.splits().isEmpty()) {
        found.add(Refactoring.of(
            ActionTitle.of(
                what,
                ": weigh in " + scaling.batchText(),
                ", " + Display.mass(scaling.finished().mass()) + " finished"),
            Refactoring.Kind.REWRITE,
            site.document().uri(),
            List.of(ScaleEdits.batch(site.entry(), scaling))));
      }
    });
  }

  private static String number(BigFraction value) {
    return Display.trimmed(value.doubleValue(), 3);
  }
}
