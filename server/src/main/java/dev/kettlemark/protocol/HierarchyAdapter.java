package dev.kettlemark.protocol;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import dev.kettlemark.features.Feeding;
import dev.kettlemark.features.Node;
import dev.kettlemark.features.Symbol;
import dev.kettlemark.features.Variants;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CallHierarchyIncomingCall;
import org.eclipse.lsp4j.CallHierarchyItem;
import org.eclipse.lsp4j.CallHierarchyOutgoingCall;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TypeHierarchyItem;
import org.jspecify.annotations.Nullable;

/** What feeds what as a hierarchy of calls, and variants as a hierarchy of types. */
final class HierarchyAdapter {

  private HierarchyAdapter() {}

  static List<CallHierarchyItem> calls(Scene scene, Position position) {
    return Feeding.at(scene.snapshot(), scene.document(), scene.offset(position)).stream()
        .flatMap(node -> call(scene, node).stream())
        .toList();
  }

  static List<CallHierarchyIncomingCall> incoming(Scene scene, @Nullable Object data) {
    return symbol(data).stream()
        .flatMap(symbol -> Feeding.into(scene.snapshot(), symbol).stream())
        .flatMap(link -> call(scene, link.node()).stream()
            .map(item -> new CallHierarchyIncomingCall(item, ranges(scene, link))))
        .toList();
  }

  static List<CallHierarchyOutgoingCall> outgoing(Scene scene, @Nullable Object data) {
    return symbol(data).stream()
        .flatMap(symbol -> Feeding.from(scene.snapshot(), symbol).stream())
        .flatMap(link -> call(scene, link.node()).stream()
            .map(item -> new CallHierarchyOutgoingCall(item, ranges(scene, link))))
        .toList();
  }

  static List<TypeHierarchyItem> types(Scene scene, Position position) {
    return types(
        scene, Variants.at(scene.snapshot(), scene.document(), scene.offset(position)).stream());
  }

  static List<TypeHierarchyItem> parents(Scene scene, @Nullable Object data) {
    return types(
        scene,
        symbol(data).stream()
            .flatMap(symbol -> Variants.parent(scene.snapshot(), symbol).stream()));
  }

  static List<TypeHierarchyItem> variants(Scene scene, @Nullable Object data) {
    return types(
        scene,
        symbol(data).stream().flatMap(symbol -> Variants.of(scene.snapshot(), symbol).stream()));
  }

  /** The document from which a hierarchy was asked for: what it speaks of is looked up beside it. */
  static TextDocumentIdentifier origin(@Nullable Object data, String uri) {
    return new TextDocumentIdentifier(
        data instanceof JsonObject sent ? text(sent, "from").orElse(uri) : uri);
  }

  private static List<TypeHierarchyItem> types(Scene scene, Stream<Node> nodes) {
    return nodes
        .flatMap(node -> scene
            .location(node.all())
            .flatMap(all -> scene.location(node.name()).map(name -> type(scene, node, all, name)))
            .stream())
        .toList();
  }

  private static TypeHierarchyItem type(Scene scene, Node node, Location all, Location name) {
    TypeHierarchyItem item = new TypeHierarchyItem(
        node.symbol().name(),
        OutlineAdapter.kind(node.kind()),
        all.getUri(),
        all.getRange(),
        name.getRange(),
        node.detail());
    item.setData(data(scene, node.symbol()));
    return item;
  }

  private static Optional<CallHierarchyItem> call(Scene scene, Node node) {
    return scene
        .location(node.all())
        .flatMap(all -> scene.location(node.name()).map(name -> {
          CallHierarchyItem item = new CallHierarchyItem(
              node.symbol().name(),
              OutlineAdapter.kind(node.kind()),
              all.getUri(),
              all.getRange(),
              name.getRange());
          item.setDetail(node.detail());
          item.setData(data(scene, node.symbol()));
          return item;
        }));
  }

  private static List<Range> ranges(Scene scene, Node.Link link) {
    return scene.locations(link.lines()).stream().map(Location::getRange).toList();
  }

  private static JsonObject data(Scene scene, Symbol symbol) {
    JsonObject data = new JsonObject();
    data.addProperty("kind", symbol.kind().name());
    data.addProperty("owner", symbol.owner());
    data.addProperty("name", symbol.name());
    data.addProperty("from", scene.moment().clientUri(scene.document().uri()));
    return data;
  }

  private static Optional<Symbol> symbol(@Nullable Object data) {
    if (!(data instanceof JsonObject sent)) {
      return Optional.empty();
    }
    Optional<Symbol.Kind> kind = text(sent, "kind")
        .flatMap(word -> Stream.of(Symbol.Kind.values())
            .filter(known -> known.name().equals(word))
            .findFirst());
    return kind.flatMap(known -> text(sent, "owner")
        .flatMap(owner -> text(sent, "name").map(name -> new Symbol(known, owner, name))));
  }

  private static Optional<String> text(JsonObject sent, String key) {
    JsonElement value = sent.get(key);
    return value != null && value.isJsonPrimitive()
        ? Optional.of(value.getAsString())
        : Optional.empty();
  }
}
