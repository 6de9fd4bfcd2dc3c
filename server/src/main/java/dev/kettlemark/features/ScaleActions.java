package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.scaling.ScaleEdits;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.Target;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * Scalings that need no question: what the library's products need, what a bowl can whip, twice and
 * half. They work in every editor, also in those that cannot ask.
 */
public final class ScaleActions {

  private ScaleActions() {}

  /**
   * A scaling ready to apply.
   *
   * @param title says the batch that it leads to
   * @param edits of the formula's own document, in absolute offsets
   */
  public record Proposal(String title, List<TextEdit> edits) {

    public Proposal {
      edits = List.copyOf(edits);
    }
  }

  /** The proposals for the formula of an entry; none for other sections. */
  public static List<Proposal> of(Snapshot snapshot, Entry entry) {
    Optional<ComputedFormula> formula = Formulas.computed(snapshot, entry);
    if (formula.isEmpty()) {
      return List.of();
    }
    return Stream.of(
            forProducts(snapshot, entry, formula.get()),
            forBowls(entry, formula.get()),
            byFactor(entry, formula.get()))
        .flatMap(List::stream)
        .filter(proposal -> !proposal.edits().isEmpty())
        .toList();
  }

  private static List<Proposal> forProducts(
      Snapshot snapshot, Entry entry, ComputedFormula formula) {
    String name = formula.formula().name().value();
    List<Proposal> proposals = new ArrayList<>();
    for (Entry other : snapshot.library().entries(Kind.PRODUCT)) {
      Optional<ComputedProduct> product = Products.computed(snapshot, other);
      for (ComputedProduct.Need need : product.map(ComputedProduct::needs).orElse(List.of())) {
        if (need.material().equals(name)) {
          need.scaling()
              .ifKnown(scaling -> proposals.add(proposal(
                  entry,
                  "Scale to what " + product.get().product().name().value() + " needs",
                  scaling)));
        }
      }
    }
    return proposals;
  }

  private static List<Proposal> forBowls(Entry entry, ComputedFormula formula) {
    List<Proposal> proposals = new ArrayList<>();
    formula.formula().stages().stream()
        .flatMap(stage -> formula.kitchen().vesselOf(stage).stream())
        .filter(vessel -> vessel.whips().isPresent())
        .map(vessel -> vessel.name().value())
        .distinct()
        .forEach(bowl -> Scaling.of(formula, new Target.BowlLimit(bowl))
            .ifKnown(scaling ->
                proposals.add(proposal(entry, "Scale to what bowl " + bowl + " holds", scaling))));
    return proposals;
  }

  private static List<Proposal> byFactor(Entry entry, ComputedFormula formula) {
    List<Proposal> proposals = new ArrayList<>();
    Optional<BigFraction> charge = formula.amounts().charge();
    if (charge.isPresent()) {
      Scaling.of(formula, new Target.Charge(charge.get().multiply(2)))
          .ifKnown(scaling -> proposals.add(proposal(entry, "Scale to twice the batch", scaling)));
      Scaling.of(formula, new Target.Charge(charge.get().divide(2)))
          .ifKnown(scaling -> proposals.add(proposal(entry, "Scale to half the batch", scaling)));
    }
    return proposals;
  }

  private static Proposal proposal(Entry entry, String what, Scaling scaling) {
    String title = what
        + ": "
        + scaling.batchText()
        + " charged, "
        + Display.mass(scaling.finished().mass())
        + " finished";
    return new Proposal(title, List.of(ScaleEdits.batch(entry, scaling)));
  }
}
