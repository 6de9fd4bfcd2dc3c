package dev.kettlemark.protocol;

import com.google.gson.Gson;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Code actions in the form that a client reads: whole, with the edit to be fetched when the writer has
 * chosen, or as a command that makes the server send the edit.
 *
 * <p>What a client could only refuse is not offered to it.
 */
final class ActionForms {

  /** Carries out an action whose edit the client could not read. */
  static final String APPLY = "kettlemark.apply";

  private static final Gson GSON = new Gson();

  private final Scene scene;
  private final ClientPlumbing client;
  private final Range range;

  private ActionForms(Scene scene, Range range) {
    this.scene = scene;
    this.client = scene.traits().plumbing();
    this.range = range;
  }

  static List<Either<Command, CodeAction>> of(Scene scene, CodeActionParams params) {
    ActionForms forms = new ActionForms(scene, params.getRange());
    return ActionAdapter.actions(scene, params).stream()
        .map(Either::getRight)
        .flatMap(forms::form)
        .toList();
  }

  /**
   * The action that an earlier answer spoke of, as it would be now.
   *
   * @param told what {@link #of} put in place of the edit
   */
  static Optional<CodeAction> again(Scene scene, JsonObject told) {
    Range range = GSON.fromJson(told.get("range"), Range.class);
    CodeActionContext context = new CodeActionContext(List.of());
    context.setOnly(List.of(told.get("kind").getAsString()));
    CodeActionParams params = new CodeActionParams(
        new TextDocumentIdentifier(told.get("uri").getAsString()), range, context);
    String title = told.get("title").getAsString();
    return ActionAdapter.actions(scene, params).stream()
        .map(Either::getRight)
        .filter(action -> action.getTitle().equals(title) && action.getEdit() != null)
        .findFirst();
  }

  /** Whether something is what {@link #of} put in place of an edit. */
  static boolean isTold(JsonElement data) {
    return data instanceof JsonObject object
        && Stream.of("uri", "range", "kind", "title").allMatch(object::has);
  }

  private Stream<Either<Command, CodeAction>> form(CodeAction action) {
    if (action.getDisabled() != null && !client.actions().disabled()) {
      return Stream.empty();
    }
    if (action.getCommand() != null) {
      Optional<Command> known = Commands.known(action.getCommand(), client);
      if (known.isEmpty()) {
        return Stream.empty();
      }
      action.setCommand(known.get());
    }
    return scene.traits().readsActions()
        ? Stream.of(Either.forRight(literal(action)))
        : command(action).stream().map(Either::forLeft);
  }

  private CodeAction literal(CodeAction action) {
    if (!client.actions().preferred()) {
      action.setIsPreferred(null);
    }
    if (client.resolves().edits() && action.getEdit() != null) {
      action.setData(told(action));
      action.setEdit(null);
    }
    return action;
  }

  private Optional<Command> command(CodeAction action) {
    if (action.getCommand() != null) {
      return Optional.of(action.getCommand());
    }
    return client.actions().applies() && action.getDisabled() == null
        ? Optional.of(new Command(action.getTitle(), APPLY, List.of(told(action))))
        : Optional.empty();
  }

  private JsonObject told(CodeAction action) {
    JsonObject told = new JsonObject();
    told.addProperty("uri", scene.moment().clientUri(scene.document().uri()));
    told.add("range", GSON.toJsonTree(range));
    told.addProperty("kind", action.getKind());
    told.addProperty("title", action.getTitle());
    return told;
  }
}
