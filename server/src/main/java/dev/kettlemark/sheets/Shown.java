package dev.kettlemark.sheets;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.PieceOrder;
import dev.kettlemark.analysis.ProcessResult;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.Target;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * What a sheet shows, worked out for the size that is asked for.
 *
 * @param subject the formula, variant or product
 * @param label what its label must and may say
 * @param product the pieces; empty for a formula
 * @param made the formulas that are made for it, in the order in which the sheet tells them
 * @param pieces what the pieces are, where that is said
 */
record Shown(
    Snapshot snapshot,
    SheetRequest request,
    Entry entry,
    Declaration subject,
    Optional<Label> label,
    Optional<ComputedProduct> product,
    List<Made> made,
    Optional<Pieces> pieces) {

  /** A formula with the batch that is made of it. */
  record Made(ComputedFormula formula, Scaling scaling, ProcessResult process, Titles titles) {

    static Made of(Snapshot snapshot, ComputedFormula formula, Scaling scaling) {
      return new Made(
          formula,
          scaling,
          formula.processWith(Mass.ofGrams(scaling.batch().doubleValue())),
          Titles.of(snapshot, formula.kitchen().house()));
    }

    Phrase title() {
      return new Phrase.Titled(titles.of(name()), false);
    }

    /** How the finished mass of this very batch eats and keeps. */
    Outcome<MassFigures> figures() {
      return process
          .last()
          .map(last -> Outcome.known(MassFigures.of(last.left(), formula.kitchen())))
          .orElseGet(() -> MassFigures.of(formula));
    }

    String name() {
      return formula.formula().name().value();
    }

    /** A word or a name as a step uses it: {@code first-syrup} is a stage, {@code honey} is not. */
    boolean isStage(String word) {
      return formula.formula().stage(word).isPresent();
    }
  }

  /** How many pieces of what weight, and the share of the mass that is lost on the way. */
  record Pieces(BigFraction count, Outcome<Mass> each, Ratio loss) {}

  Shown {
    made = List.copyOf(made);
  }

  /** Works out what a sheet is to show; unknown, with the reason, where that cannot be told. */
  static Outcome<Shown> of(Snapshot snapshot, SheetRequest request) {
    Library library = snapshot.library();
    Optional<Entry> entry = library
        .find(Kind.MATERIAL, request.subject())
        .filter(found -> Formulas.computed(snapshot, found).isPresent())
        .or(() -> library.find(Kind.PRODUCT, request.subject()));
    return entry
        .map(found -> of(snapshot, request, found))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE,
            "`%s` is no formula or product that can be worked out",
            request.subject()));
  }

  private static Outcome<Shown> of(Snapshot snapshot, SheetRequest request, Entry entry) {
    Optional<ComputedFormula> formula = Formulas.computed(snapshot, entry);
    if (formula.isPresent()) {
      return ofFormula(snapshot, request, entry, formula.get());
    }
    return entry
        .declaration()
        .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty())
        .map(product -> ofProduct(snapshot, request, entry, product))
        .orElseGet(
            () -> Outcome.unknown(Reason.MISSING_FIGURE, "`%s` is no product", request.subject()));
  }

  private static Outcome<Shown> ofFormula(
      Snapshot snapshot, SheetRequest request, Entry entry, ComputedFormula formula) {
    Optional<PieceOrder> order = PieceOrder.of(formula.formula().facts());
    return target(request, formula, order)
        .flatMap(target -> Scaling.of(formula, target))
        .map(scaling -> new Shown(
            snapshot,
            request,
            entry,
            formula.formula(),
            Labels.label(snapshot, entry),
            Optional.empty(),
            List.of(Made.of(snapshot, formula, scaling)),
            order.map(o -> pieces(o, scaling, request))));
  }

  private static Outcome<Target> target(
      SheetRequest request, ComputedFormula formula, Optional<PieceOrder> order) {
    SheetRequest.Size size = request
        .size()
        .orElseGet(() ->
            new SheetRequest.Size.Charge(formula.amounts().charge().orElse(new BigFraction((long)
                ComputedFormula.NOMINAL_CHARGE.grams()))));
    if (size instanceof SheetRequest.Size.Charge charge) {
      return Outcome.known(new Target.Charge(charge.grams()));
    }
    BigFraction count = ((SheetRequest.Size.Pieces) size).count();
    return order
        .map(o -> Outcome.<Target>known(new Target.Pieces(count, o.gramsEach(), o.loss())))
        .orElseGet(() -> Outcome.unknown(
            Reason.MISSING_FIGURE,
            "`%s` does not say what a piece weighs; give it `makes 20 pieces of 12 g`, or ask for a batch",
            request.subject()));
  }

  private static Pieces pieces(PieceOrder order, Scaling scaling, SheetRequest request) {
    BigFraction finished = new BigFraction(1).subtract(order.loss());
    BigFraction count = request.size().isPresent()
            && request.size().get() instanceof SheetRequest.Size.Pieces wanted
        ? wanted.count()
        : whole(scaling.cooked().mass().grams()
            * finished.doubleValue()
            / order.gramsEach().doubleValue());
    return new Pieces(
        count,
        Outcome.known(Mass.ofGrams(order.gramsEach().doubleValue())),
        Ratio.ofFraction(order.loss().doubleValue()));
  }

  private static BigFraction whole(double count) {
    return new BigFraction((long) Math.floor(count + 1e-9));
  }

  private static Outcome<Shown> ofProduct(
      Snapshot snapshot, SheetRequest request, Entry entry, Product product) {
    if (request.size().filter(SheetRequest.Size.Charge.class::isInstance).isPresent()) {
      return Outcome.unknown(
          Reason.CONTRADICTION, "`%s` is made by the piece; ask for pieces", request.subject());
    }
    Optional<BigFraction> wanted = request
        .size()
        .map(size -> ((SheetRequest.Size.Pieces) size).count())
        .or(() -> product.pieces().map(Located::value));
    if (wanted.isEmpty() || wanted.get().signum() <= 0) {
      return Outcome.unknown(
          Reason.MISSING_FIGURE, "`%s` does not say how many are made", request.subject());
    }
    ComputedProduct computed = Products.scaled(snapshot, product, wanted.get());
    List<Made> made = new ArrayList<>();
    for (ComputedProduct.Need need : computed.needs()) {
      Optional<ComputedFormula> formula = Formulas.computed(need.material()).ask(snapshot);
      if (formula.isPresent()) {
        if (need.scaling() instanceof Outcome.Unknown<Scaling> unknown) {
          return unknown.retyped();
        }
        need.scaling().ifKnown(scaling -> made.add(Made.of(snapshot, formula.get(), scaling)));
      }
    }
    return Outcome.known(new Shown(
        snapshot,
        request,
        entry,
        product,
        Labels.label(snapshot, entry),
        Optional.of(computed),
        made,
        Optional.of(new Pieces(
            wanted.get(),
            computed.pieceGrams(),
            Ratio.ofFraction(product.loss().map(l -> l.value().doubleValue()).orElse(0.0))))));
  }

  SheetReader reader() {
    return request.reader();
  }

  boolean isFor(SheetReader... readers) {
    return List.of(readers).contains(reader());
  }

  /** The facts of the subject; for a variant, with its parent's. */
  Facts facts() {
    return subject instanceof Product product
        ? product.facts()
        : made.get(0).formula().formula().facts();
  }

  /** The facts of the subject, then those of what it is made of. */
  Stream<Facts> allFacts() {
    return Stream.concat(
            Stream.of(facts()), made.stream().map(one -> one.formula().formula().facts()))
        .distinct();
  }

  Optional<House> house() {
    return made.stream()
        .flatMap(one -> one.formula().kitchen().house().stream())
        .findFirst()
        .or(() -> label.flatMap(Label::house));
  }

  Optional<FormulaVersion> version() {
    return allFacts().flatMap(facts -> FormulaVersion.of(facts).stream()).findFirst();
  }

  /** Whether the sheet was issued for another version than the one that holds. */
  boolean isStale() {
    return request
        .issue()
        .forVersion()
        .filter(issued -> version()
            .flatMap(FormulaVersion::number)
            .filter(now -> !now.equals(issued))
            .isPresent())
        .isPresent();
  }

  /** The first word behind the first fact of that name, of the subject or of what it is made of. */
  Optional<String> factWord(String fact) {
    return allFacts()
        .flatMap(facts -> facts.wordOf(fact).stream())
        .map(Located::value)
        .findFirst();
  }

  Titles titles() {
    return Titles.of(snapshot, house());
  }

  /** What a material of the library is called in a sentence. */
  Phrase named(String name) {
    return new Phrase.Titled(titles().of(name), true);
  }

  Title title() {
    // A variant's formula bears the facts of its parent, and with them its names.
    Declaration declared = entry.declaration().orElse(subject);
    return request.issue().title().map(titles()::plain).orElseGet(() -> titles().of(declared));
  }

  /** The notes of the subject, and a step's words, in the reader's language where there are some. */
  List<Phrase> notes() {
    return titles().notes(facts(), request.locale());
  }
}
