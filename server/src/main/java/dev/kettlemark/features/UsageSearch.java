package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.Uses;
import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.labelling.Makeup;
import dev.kettlemark.labelling.Way;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Origin;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Looks through the user's sections for what uses a material or a stage. */
final class UsageSearch {

  /** Formulas of formulas can multiply; nobody reads further than this. */
  private static final int MOST = 1000;

  private final Snapshot snapshot;
  private final Map<String, List<Held>> known = new HashMap<>();
  private final List<Usage> found = new ArrayList<>();

  UsageSearch(Snapshot snapshot) {
    this.snapshot = snapshot;
  }

  /**
   * A use, and what is needed of the thing used.
   *
   * @param charge the batch of the thing used that is made for it, if it is a formula
   */
  private record Held(Usage use, Outcome<Mass> charge, boolean isParent) {}

  /** A section that names a material, without what is needed of it. */
  record Named(Usage.User user, boolean released, String name) {}

  /**
   * The sections whose own lines name a material, what a variant takes over among them.
   *
   * <p>Nothing is weighed for it, so that a library of thousands of formulas can be asked at each word.
   */
  List<Named> naming(String material) {
    return own()
        .filter(
            entry -> weighs(entry, material) || wraps(entry, material) || joins(entry, material))
        .map(entry -> new Named(
            user(entry),
            isReleased(entry),
            entry.declaration().orElseThrow().name().value()))
        .toList();
  }

  private boolean weighs(Entry entry, String material) {
    return snapshot.result(Formulas.RESOLVED, entry).stream()
        .flatMap(resolved -> resolved.formula().amounts().stream())
        .anyMatch(line -> line.ingredient().value().equals(material));
  }

  /** Whether a step lays it around the mass without a weight; what no step speaks of, none does. */
  private boolean wraps(Entry entry, String material) {
    return snapshot.result(Formulas.RESOLVED, entry).stream()
            .anyMatch(resolved -> Mentions.of(resolved.formula()).contains(material))
        && unweighed(entry, material).findAny().isPresent();
  }

  private static boolean joins(Entry entry, String material) {
    return entry.declaration().stream()
        .flatMap(d -> d instanceof Product product ? product.parts().stream() : Stream.empty())
        .flatMap(part -> part.material().stream())
        .anyMatch(name -> name.value().equals(material));
  }

  /** All sections that a material gets into. */
  List<Usage> all(String material) {
    for (Held held : held(material)) {
      add(held.use());
    }
    return List.copyOf(found);
  }

  private void add(Usage use) {
    if (found.size() >= MOST || use.path().size() > Uses.MOST_LEVELS) {
      return;
    }
    found.add(use);
    if (use.user() == Usage.User.PRODUCT) {
      return;
    }
    Outcome<Ratio> yield = formula(use.name())
        .map(formula -> formula.process().yieldShare())
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "it cannot be worked out"));
    for (Held above : held(use.name())) {
      if (!above.isParent() && !use.path().contains(above.use().name())) {
        Outcome<Ratio> perMade =
            Outcome.both(use.share(), yield, UsageSearch::perMade).flatMap(share -> share);
        add(above
            .use()
            .above(
                use.path(),
                Outcome.both(above.use().share(), perMade, Ratio::times),
                Outcome.both(above.charge(), use.share(), Mass::times)));
      }
    }
  }

  /** What must be weighed in for each gram that is left of a charge. */
  private static Outcome<Ratio> perMade(Ratio ofCharge, Ratio yield) {
    return yield.fraction() > 0
        ? Outcome.known(Ratio.ofFraction(ofCharge.fraction() / yield.fraction()))
        : Outcome.unknown(Reason.MISSING_FIGURE, "nothing is left of the charge");
  }

  private List<Held> held(String material) {
    List<Held> before = known.get(material);
    if (before != null) {
      return before;
    }
    List<Held> held = own()
        .flatMap(entry -> Stream.concat(lines(entry, material), parts(entry, material)))
        .toList();
    known.put(material, held);
    return held;
  }

  private Stream<Entry> own() {
    return snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream());
  }

  private Optional<ComputedFormula> formula(String name) {
    return Formulas.computed(name).ask(snapshot);
  }

  private Stream<Held> lines(Entry entry, String material) {
    Optional<ComputedFormula> computed = Formulas.computed(snapshot, entry);
    if (computed.isEmpty()) {
      return Stream.empty();
    }
    ComputedFormula formula = computed.get();
    Stream<Held> weighed = formula.amounts().lines().stream()
        .filter(line -> line.line().ingredient().value().equals(material))
        .map(line -> line(entry, formula, line));
    return Stream.of(weighed, unweighed(entry, material), parent(entry, material))
        .flatMap(held -> held);
  }

  private Held line(Entry entry, ComputedFormula formula, LineAmount line) {
    Located<String> name = line.line().ingredient();
    Stage stage = formula.formula().stages().get(line.stage());
    Outcome<Mass> grams = formula
        .amounts()
        .grams(line)
        .map(exact -> Outcome.known(Mass.ofGrams(Math.max(0, exact.doubleValue()))))
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "the formula gives no batch"));
    Outcome<Ratio> share =
        line.share().map(exact -> Ratio.ofFraction(Math.max(0, exact.doubleValue())));
    Outcome<Mass> charge = formula(name.value())
        .map(below -> Outcome.both(grams, below.process().yieldShare(), UsageSearch::charge))
        .orElse(grams.map(Outcome::known))
        .flatMap(known -> known);
    return new Held(
        usage(entry, stage.name().value(), name.value(), entry.origin(name.span()), share, grams),
        charge,
        false);
  }

  private static Outcome<Mass> charge(Mass made, Ratio yield) {
    return yield.fraction() > 0
        ? Outcome.known(made.times(1 / yield.fraction()))
        : Outcome.unknown(Reason.MISSING_FIGURE, "nothing is left of the charge");
  }

  /** What a step lays around the mass without a weight, such as wafer paper. */
  private Stream<Held> unweighed(Entry entry, String material) {
    return snapshot.result(Labels.MAKEUP, entry).map(Makeup::uses).stream()
        .flatMap(List::stream)
        .filter(use -> !use.isWeighed() && use.name().equals(material))
        .map(IngredientUse::ways)
        .flatMap(List::stream)
        .filter(Way::isDirect)
        .map(way ->
            unknown(entry, "around it", material, way.here(), "no line weighs it in", false));
  }

  private Stream<Held> parent(Entry entry, String material) {
    return entry.declaration().stream()
        .flatMap(d -> d instanceof Variant variant ? variant.parent().stream() : Stream.empty())
        .filter(parent -> parent.value().equals(material))
        .map(parent -> unknown(
            entry,
            "variant of it",
            material,
            entry.origin(parent.span()),
            "a variant takes over the lines of its parent",
            true));
  }

  private Held unknown(
      Entry entry, String part, String material, Origin place, String because, boolean isParent) {
    return new Held(
        usage(
            entry,
            part,
            material,
            place,
            Outcome.unknown(Reason.MISSING_FIGURE, because),
            Outcome.unknown(Reason.MISSING_FIGURE, because)),
        Outcome.unknown(Reason.MISSING_FIGURE, because),
        isParent);
  }

  private Stream<Held> parts(Entry entry, String material) {
    return Products.computed(snapshot, entry).stream()
        .flatMap(product -> product.parts().stream()
            .flatMap(part -> part.part().material().stream()
                .filter(name -> name.value().equals(material))
                .map(name -> part(entry, product, part, name))));
  }

  private Held part(
      Entry entry,
      ComputedProduct product,
      ComputedProduct.PartWeight part,
      Located<String> material) {
    Optional<ComputedProduct.Need> need = product.needs().stream()
        .filter(n -> n.role().equals(part.part().role()) && n.material().equals(material.value()))
        .findFirst();
    Outcome<ComputedProduct.Need> needed = need.map(Outcome::known)
        .orElseGet(
            () -> Outcome.unknown(Reason.MISSING_FIGURE, "the number of pieces is not given"));
    return new Held(
        usage(
            entry,
            part.part().role(),
            material.value(),
            entry.origin(material.span()),
            part.ofFinished(),
            needed.map(ComputedProduct.Need::withLoss)),
        needed
            .flatMap(ComputedProduct.Need::scaling)
            .map(scaling -> scaling.charge().mass()),
        false);
  }

  private Usage usage(
      Entry entry,
      String part,
      String material,
      Origin place,
      Outcome<Ratio> share,
      Outcome<Mass> grams) {
    return new Usage(
        user(entry),
        isReleased(entry),
        part,
        List.of(material, entry.declaration().orElseThrow().name().value()),
        place,
        share,
        grams);
  }

  /** A variant is what its parent is unless it says otherwise. */
  private boolean isReleased(Entry entry) {
    return snapshot
        .result(Formulas.RESOLVED, entry)
        .map(resolved -> resolved.formula().facts())
        .or(() -> entry.declaration().flatMap(Facts::of))
        .filter(facts -> facts.says("status", "released"))
        .isPresent();
  }

  private static Usage.User user(Entry entry) {
    if (entry.declaration().filter(Product.class::isInstance).isPresent()) {
      return Usage.User.PRODUCT;
    }
    return entry.declaration().filter(Variant.class::isInstance).isPresent()
        ? Usage.User.VARIANT
        : Usage.User.FORMULA;
  }

  /** The stages that take over a stage of a name, each in its own formula. */
  List<Usage> stage(String name) {
    return own()
        .flatMap(entry -> Formulas.computed(snapshot, entry).stream()
            .flatMap(formula -> formula.formula().stages().stream()
                .flatMap(stage -> stage.takes().stream()
                    .filter(take -> take.stage().value().equals(name))
                    .map(take -> taken(entry, formula, stage, take)))))
        .toList();
  }

  private Usage taken(Entry entry, ComputedFormula formula, Stage stage, TakeLine take) {
    double part = Math.max(0, take.share().doubleValue());
    Outcome<StageResult> made = formula
        .process()
        .stage(take.stage().value())
        .map(Outcome::known)
        .orElseGet(() -> Outcome.unknown(Reason.MISSING_FIGURE, "no stage has that name"));
    Mass charge = formula.process().charge().mass();
    return usage(
        entry,
        stage.name().value(),
        take.stage().value(),
        entry.origin(take.span()),
        charge.grams() > 0
            ? made.map(result -> result.charged().times(part).dividedBy(charge))
            : Outcome.unknown(Reason.MISSING_FIGURE, "nothing is weighed in"),
        formula.isNominal()
            ? Outcome.unknown(Reason.MISSING_FIGURE, "the formula gives no batch")
            : made.flatMap(result -> result.left().mass()).map(mass -> mass.times(part)));
  }
}
