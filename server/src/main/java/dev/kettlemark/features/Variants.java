package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A formula, what it is a variant of, and what is a variant of it. */
public final class Variants {

  private Variants() {}

  /** The formula whose name the cursor touches; empty for ingredients, which have no variants. */
  public static Optional<Node> at(Snapshot snapshot, Document document, int offset) {
    return Feeding.at(snapshot, document, offset)
        .filter(node -> node.kind() == Outline.Kind.FORMULA || node.kind() == Outline.Kind.VARIANT);
  }

  /** What a formula is a variant of. */
  public static Optional<Node> parent(Snapshot snapshot, Symbol symbol) {
    return snapshot
        .library()
        .find(Kind.MATERIAL, symbol.name())
        .flatMap(Entry::declaration)
        .flatMap(Variants::parent)
        .flatMap(parent -> new Nodes(snapshot).of(formula(parent)));
  }

  /** The variants of a formula, in order of document. */
  public static List<Node> of(Snapshot snapshot, Symbol symbol) {
    Nodes nodes = new Nodes(snapshot);
    return snapshot.library().entries(Kind.MATERIAL).stream()
        .map(Entry::declaration)
        .flatMap(Optional::stream)
        .filter(known -> parent(known).filter(symbol.name()::equals).isPresent())
        .flatMap(known -> nodes.of(formula(known.name().value())).stream())
        .toList();
  }

  /** Where the thing under the cursor is written in another way: a formula's variants, a stage written again. */
  public static List<Place> implementations(Snapshot snapshot, Document document, int offset) {
    return Symbols.at(snapshot, document, offset).stream()
        .flatMap(found -> switch (found.symbol().kind()) {
          case MATERIAL -> of(snapshot, found.symbol()).stream().map(Node::name);
          case STAGE -> again(snapshot, found.symbol());
          default -> Stream.empty();
        })
        .toList();
  }

  private static Stream<Place> again(Snapshot snapshot, Symbol stage) {
    return snapshot.library().ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .flatMap(entry -> Symbols.of(snapshot, entry).stream()
            .filter(name -> name.symbol().equals(stage) && !name.defines())
            .map(Occurrence::span)
            .filter(span -> isHeading(entry, span))
            .map(entry::place));
  }

  private static boolean isHeading(Entry entry, Span name) {
    return entry.section().lines().stream()
        .anyMatch(line -> line instanceof Line.SectionLine && line.span().contains(name));
  }

  private static Optional<String> parent(Declaration declaration) {
    return declaration instanceof Variant variant
        ? variant.parent().map(Located::value)
        : Optional.empty();
  }

  private static Symbol formula(String name) {
    return Symbol.global(Symbol.Kind.MATERIAL, name);
  }
}
