package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.text.Span;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes nodes of what has a name: where it is declared, and what it weighs. */
final class Nodes {

  private final Snapshot snapshot;

  Nodes(Snapshot snapshot) {
    this.snapshot = snapshot;
  }

  /** The node of a thing; empty where it is declared nowhere, and for what nothing is made of. */
  Optional<Node> of(Symbol symbol) {
    return switch (symbol.kind()) {
      case STAGE -> entry(Kind.MATERIAL, symbol.owner()).flatMap(owner -> stage(symbol, owner));
      case MATERIAL ->
        entry(Kind.MATERIAL, symbol.name())
            .flatMap(entry -> entry
                .declaration()
                .map(known -> section(symbol, entry, known, kind(known), weight(entry))));
      case PRODUCT ->
        entry(Kind.PRODUCT, symbol.name())
            .flatMap(entry -> entry
                .declaration()
                .map(known ->
                    section(symbol, entry, known, Outline.Kind.PRODUCT, pieceWeight(entry))));
      default -> Optional.empty();
    };
  }

  /** The node with what a line of a formula takes of it. */
  Optional<Node> taken(Takings taking, Entry taker) {
    Optional<String> grams = Formulas.computed(snapshot, taker)
        .filter(formula -> !formula.isNominal())
        .flatMap(formula -> formula.amounts().lines().stream()
            .filter(line -> line.line().span().equals(taking.span()))
            .findFirst()
            .flatMap(line -> grams(formula, line)));
    return of(taking.taken())
        .map(node -> grams
            .map(weight ->
                new Node(node.symbol(), node.kind(), weight + " taken", node.all(), node.name()))
            .orElse(node));
  }

  Optional<Entry> entry(Kind kind, String name) {
    return snapshot.library().find(kind, name);
  }

  private static Optional<String> grams(ComputedFormula formula, LineAmount line) {
    return formula.amounts().grams(line).map(g -> Display.mass(WrittenFormula.mass(g)));
  }

  private static Outline.Kind kind(Declaration known) {
    if (known instanceof Ingredient) {
      return Outline.Kind.INGREDIENT;
    }
    return known instanceof Variant ? Outline.Kind.VARIANT : Outline.Kind.FORMULA;
  }

  private Optional<Node> stage(Symbol symbol, Entry owner) {
    return block(owner)
        .flatMap(block -> block.parts().stream()
            .filter(part -> part.heading().tokens().size() > 1
                && part.heading().tokens().get(1).reads(symbol.name()))
            .findFirst())
        .map(part -> new Node(
            symbol,
            Outline.Kind.STAGE,
            Stream.concat(Stream.of(symbol.owner()), left(owner, symbol.name()).stream())
                .reduce((name, weight) -> name + " · " + weight)
                .orElse(""),
            new Place(owner.uri(), part.span()),
            new Place(owner.uri(), part.heading().tokens().get(1).span())));
  }

  private Node section(
      Symbol symbol, Entry entry, Declaration known, Outline.Kind kind, Optional<String> weight) {
    Place name = entry.place(known.name().span());
    Span all = block(entry).map(Block::span).orElse(name.span());
    String detail = Stream.of(known.title(), weight)
        .flatMap(Optional::stream)
        .reduce((title, grams) -> title + " · " + grams)
        .orElse("");
    return new Node(symbol, kind, detail, new Place(entry.uri(), all), name);
  }

  private Optional<Block> block(Entry entry) {
    return snapshot.library().document(entry.uri()).stream()
        .flatMap(document -> Block.of(document.text(), entry.placed()).stream())
        .findFirst();
  }

  /** What a stage leaves; empty without a batch. */
  private Optional<String> left(Entry owner, String stage) {
    return Formulas.computed(snapshot, owner)
        .filter(formula -> !formula.isNominal())
        .flatMap(formula -> formula.process().stage(stage))
        .map(StageResult::left)
        .flatMap(parcel -> parcel.mass().toOptional())
        .map(mass -> Display.mass(mass) + " left");
  }

  /** What a formula leaves of its batch. */
  private Optional<String> weight(Entry entry) {
    return Formulas.computed(snapshot, entry)
        .filter(formula -> !formula.isNominal())
        .flatMap(formula -> formula.process().last())
        .flatMap(last -> last.left().mass().toOptional())
        .map(mass -> Display.mass(mass) + " finished");
  }

  private Optional<String> pieceWeight(Entry entry) {
    return Products.computed(snapshot, entry)
        .map(ComputedProduct::pieceGrams)
        .flatMap(weight -> weight.toOptional())
        .map(mass -> Display.mass(mass) + " a piece");
  }
}
