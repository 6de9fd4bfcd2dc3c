package dev.kettlemark.features;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Who feeds whom: what stages, formulas and products take, and what takes them.
 *
 * <p>The last stage of a formula feeds the formula, as nothing else takes it.
 */
public final class Feeding {

  private final Snapshot snapshot;
  private final Nodes nodes;

  private Feeding(Snapshot snapshot) {
    this.snapshot = snapshot;
    this.nodes = new Nodes(snapshot);
  }

  /** The thing whose name the cursor touches. */
  public static Optional<Node> at(Snapshot snapshot, Document document, int offset) {
    return Symbols.at(snapshot, document, offset)
        .flatMap(found -> new Nodes(snapshot).of(found.symbol()));
  }

  /** What takes a thing, in order of document. */
  public static List<Node.Link> into(Snapshot snapshot, Symbol symbol) {
    return new Feeding(snapshot).into(symbol);
  }

  /** What a thing takes, in order of its lines. */
  public static List<Node.Link> from(Snapshot snapshot, Symbol symbol) {
    return new Feeding(snapshot).from(symbol);
  }

  private List<Node.Link> into(Symbol symbol) {
    List<Node.Link> links = new ArrayList<>();
    for (Document document : snapshot.library().ownDocuments()) {
      for (Entry entry : document.entries()) {
        List<Takings> takings = snapshot.result(Takings.ALL, entry).stream()
            .filter(taking -> taking.taken().equals(symbol))
            .toList();
        links.addAll(links(entry, takings, Takings::taker, taking -> nodes.of(taking.taker())));
      }
    }
    owner(symbol)
        .filter(owner -> lastStage(owner).equals(Optional.of(symbol)))
        .flatMap(owner -> nodes.of(named(owner)).map(node -> end(symbol, owner, node)))
        .ifPresent(links::add);
    return links;
  }

  private List<Node.Link> from(Symbol symbol) {
    if (symbol.kind() == Symbol.Kind.STAGE) {
      return owner(symbol).map(owner -> taken(owner, symbol)).orElse(List.of());
    }
    Optional<Entry> entry = symbol.kind() == Symbol.Kind.PRODUCT
        ? nodes.entry(Kind.PRODUCT, symbol.name())
        : nodes.entry(Kind.MATERIAL, symbol.name());
    List<Node.Link> links = new ArrayList<>();
    entry.ifPresent(owner -> {
      links.addAll(taken(owner, symbol));
      lastStage(owner)
          .flatMap(last -> nodes.of(last).map(node -> end(last, owner, node)))
          .ifPresent(links::add);
    });
    return links;
  }

  private List<Node.Link> taken(Entry entry, Symbol taker) {
    List<Takings> takings = snapshot.result(Takings.ALL, entry).stream()
        .filter(taking -> taking.taker().equals(taker))
        .toList();
    return links(entry, takings, Takings::taken, taking -> nodes.taken(taking, entry));
  }

  private static List<Node.Link> links(
      Entry entry,
      List<Takings> takings,
      Function<Takings, Symbol> other,
      Function<Takings, Optional<Node>> node) {
    Map<Symbol, List<Takings>> byOther = new LinkedHashMap<>();
    takings.forEach(taking ->
        byOther.computeIfAbsent(other.apply(taking), key -> new ArrayList<>()).add(taking));
    return byOther.values().stream()
        .flatMap(lines -> node.apply(lines.get(0)).stream()
            .map(found -> new Node.Link(
                found, lines.stream().map(line -> entry.place(line.span())).toList())))
        .toList();
  }

  private Optional<Entry> owner(Symbol symbol) {
    return symbol.kind() == Symbol.Kind.STAGE
        ? nodes.entry(Kind.MATERIAL, symbol.owner())
        : Optional.empty();
  }

  private static Symbol named(Entry entry) {
    return Symbol.global(
        Symbol.Kind.MATERIAL, entry.declaration().orElseThrow().name().value());
  }

  /** No line takes the last stage into its formula, so its heading stands for it. */
  private Node.Link end(Symbol last, Entry owner, Node node) {
    Place place = nodes
        .of(last)
        .map(Node::name)
        .filter(name -> name.uri().equals(owner.uri()))
        .orElseGet(() -> owner.place(owner.declaration().orElseThrow().name().span()));
    return new Node.Link(node, List.of(place));
  }

  /** The stage whose mass is what a formula makes; of a variant it may be its parent's. */
  private Optional<Symbol> lastStage(Entry entry) {
    List<Stage> stages = snapshot
        .result(Formulas.RESOLVED, entry)
        .map(resolved -> resolved.formula().stages())
        .orElse(List.of());
    return stages.isEmpty()
        ? Optional.empty()
        : stage(entry, stages.get(stages.size() - 1).name());
  }

  private Optional<Symbol> stage(Entry entry, Located<String> name) {
    return snapshot.result(new StageOf(name.value()), entry);
  }
}
