package dev.kettlemark.protocol;

import com.google.gson.JsonObject;
import dev.kettlemark.features.Hover;
import dev.kettlemark.features.HoverText;
import dev.kettlemark.features.Outline;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * What was left out of an answer, when the client is about to show it.
 *
 * <p>Each thing carries the document it belongs to in its data. It is looked for in the text as it is
 * now; where it is no longer found, the client is told that its content was modified.
 */
final class Resolving {

  private static final String DOCUMENT = "uri";

  private Resolving() {}

  /** The data of a thing that belongs to a document. */
  static JsonObject data(Scene scene) {
    JsonObject data = new JsonObject();
    data.addProperty(DOCUMENT, scene.moment().clientUri(scene.document().uri()));
    return data;
  }

  /** The edit of an action; one that came whole stays as it is. */
  static CompletableFuture<CodeAction> action(ServerState state, CodeAction action) {
    if (action.getEdit() != null
        || !(action.getData() instanceof JsonObject told)
        || !ActionForms.isTold(told)) {
      return CompletableFuture.completedFuture(action);
    }
    return with(
        state,
        told,
        scene -> ActionForms.again(scene, told).map(now -> {
          action.setEdit(now.getEdit());
          return action;
        }));
  }

  /** The title and command of a lens. */
  static CompletableFuture<CodeLens> lens(ServerState state, CodeLens lens) {
    return lens.getCommand() != null
        ? CompletableFuture.completedFuture(lens)
        : with(state, lens.getData(), scene -> LensAdapter.whole(scene, lens.getRange()));
  }

  /** How the figure of a hint came about, which is what a hover in front of it tells. */
  static CompletableFuture<InlayHint> hint(ServerState state, InlayHint hint) {
    if (hint.getTooltip() != null) {
      return CompletableFuture.completedFuture(hint);
    }
    return with(state, hint.getData(), scene -> {
      hovers(scene, hint.getPosition())
          .filter(text -> hint.getLabel().isLeft() && text.contains(figure(hint)))
          .findFirst()
          .or(() -> hovers(scene, hint.getPosition()).findFirst())
          .ifPresent(text ->
              hint.setTooltip(Either.forRight(new MarkupContent(MarkupKind.MARKDOWN, text))));
      return Optional.of(hint);
    });
  }

  /** Words of the line in front of the hint, the nearest first: its figure, or what the figure is of. */
  private static Stream<String> hovers(Scene scene, Position position) {
    int behind = scene.offset(position);
    int start = scene.offset(new Position(position.getLine(), 0));
    String line = scene.source().text().substring(start, behind);
    return IntStream.iterate(line.length() - 1, column -> column >= 0, column -> column - 1)
        .filter(column -> line.charAt(column) != ' '
            && (column == line.length() - 1 || column == 0 || line.charAt(column - 1) == ' '))
        .boxed()
        .flatMap(column -> Hover.at(scene.snapshot(), scene.document(), start + column).stream())
        .map(HoverText::markdown);
  }

  /** The last part of a label, such as {@code 0.297 g}. */
  private static String figure(InlayHint hint) {
    String label = hint.getLabel().getLeft();
    return label.substring(label.lastIndexOf('·') + 1).strip();
  }

  /** Where in its file a symbol stands. */
  static CompletableFuture<WorkspaceSymbol> symbol(ServerState state, WorkspaceSymbol symbol) {
    if (symbol.getLocation().isLeft()) {
      return CompletableFuture.completedFuture(symbol);
    }
    return with(
        state,
        symbol.getData(),
        scene -> Outline.of(scene.document().text()).stream()
            .filter(item -> item.name().equals(symbol.getName())
                && OutlineAdapter.kind(item.kind()) == symbol.getKind())
            .findFirst()
            .map(item -> {
              symbol.setLocation(Either.forLeft(new Location(
                  symbol.getLocation().getRight().getUri(),
                  scene.positions().range(scene.source(), item.selection()))));
              return symbol;
            }));
  }

  private static <T> CompletableFuture<T> with(
      ServerState state, Object data, Function<Scene, Optional<T>> answer) {
    Optional<Scene> scene = data instanceof JsonObject object && object.has(DOCUMENT)
        ? state.scene(object.get(DOCUMENT).getAsString())
        : Optional.empty();
    return state.compute(() -> scene.flatMap(answer).orElseThrow(Resolving::modified));
  }

  private static ResponseErrorException modified() {
    return new ResponseErrorException(new ResponseError(
        ResponseErrorCode.ContentModified, "the text has changed since this was offered", null));
  }
}
