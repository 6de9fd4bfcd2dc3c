package dev.kettlemark.protocol;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.checks.RulePages;
import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.features.ChangesMarkdown;
import dev.kettlemark.features.CompareOffer;
import dev.kettlemark.features.WhatIf;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.ShowDocumentParams;

/**
 * What a client may ask the server to do; every command takes one object and answers with data.
 *
 * <p>With {@code "open": true} a page is also shown, by a client that shows documents.
 */
final class Commands {

  /** Shows the page of a rule. */
  static final String EXPLAIN_RULE = "kettlemark.explainRule";

  /** Tells what the unsaved texts of a library would change. */
  static final String CHANGES = "kettlemark.changes";

  /** Commands that a client may have of its own, and the page that serves where it has them not. */
  private static final Map<String, Optional<ReportCommands>> OF_CLIENT = Map.of(
      ActionAdapter.ASK_SCALE, Optional.empty(),
      ActionAdapter.OPEN_TABLE, Optional.of(ReportCommands.SHOW),
      WhatIf.OPEN, Optional.of(ReportCommands.WHAT_IF),
      CompareOffer.OPEN, Optional.of(ReportCommands.COMPARE));

  private Commands() {}

  /** The commands that a client may send; those that nothing leads to are left out. */
  static List<String> names(ClientTraits client) {
    List<String> names = new ArrayList<>(List.of(
        ScaleCommand.NAME,
        EXPLAIN_RULE,
        CHANGES,
        TrialCommand.NAME,
        PictureCommand.NAME,
        PreviewCommand.NAME,
        FiguresCommand.NAME));
    names.addAll(ReportCommands.names());
    if (!client.readsActions() && client.plumbing().actions().applies()) {
      names.add(ActionForms.APPLY);
    }
    return List.copyOf(names);
  }

  /** A command as a client can carry it out: by itself, or by sending it here; empty if neither. */
  static Optional<Command> known(Command command, ClientPlumbing client) {
    String name = command.getCommand();
    if (!OF_CLIENT.containsKey(name) || client.ownCommands().contains(name)) {
      return Optional.of(command);
    }
    return OF_CLIENT
        .getOrDefault(name, Optional.empty())
        .filter(report -> client.window().documents())
        .flatMap(report -> opening(report, command));
  }

  private static Optional<Command> opening(ReportCommands report, Command command) {
    if (!(command.getArguments().get(0) instanceof JsonObject argument)) {
      return Optional.empty();
    }
    JsonObject opening = argument.deepCopy();
    opening.addProperty("open", true);
    return Optional.of(new Command(command.getTitle(), report.command(), List.of(opening)));
  }

  static CompletableFuture<Object> run(ServerState state, ExecuteCommandParams params) {
    JsonObject argument = argument(params);
    Optional<ReportCommands> report = ReportCommands.of(params.getCommand());
    if (report.isPresent()) {
      Scene scene = scene(state, argument);
      return work(state, params, work -> report(state, report.get(), scene, argument));
    }
    return switch (params.getCommand()) {
      case ScaleCommand.NAME -> {
        Scene scene = scene(state, argument);
        JsonObject target =
            argument.get("target") instanceof JsonObject object ? object : new JsonObject();
        yield work(
            state, params, work -> ScaleCommand.run(scene, text(argument, "formula"), target));
      }
      case EXPLAIN_RULE ->
        work(state, params, work -> rule(state, text(argument, "rule"), argument));
      case CHANGES -> {
        Scene scene = scene(state, argument);
        Library saved = state.saved(text(argument, "uri"));
        yield work(state, params, work -> changes(scene.snapshot(), saved));
      }
      case ActionForms.APPLY -> {
        Scene scene = scene(state, argument);
        yield work(state, params, work -> apply(state, scene, argument));
      }
      case TrialCommand.NAME -> {
        Scene scene = scene(state, argument);
        yield work(state, params, work -> TrialCommand.run(scene, text(argument, "formula")));
      }
      case FiguresCommand.NAME -> {
        Scene scene = scene(state, argument);
        yield work(state, params, work -> FiguresCommand.run(scene, argument));
      }
      case PictureCommand.NAME -> {
        Scene scene = scene(state, argument);
        yield work(state, params, work -> PictureCommand.run(scene, argument));
      }
      case PreviewCommand.NAME -> {
        Optional<Scene> scene = state.scene(text(argument, "uri"));
        yield work(state, params, work -> PreviewCommand.run(scene, argument, work));
      }
      default -> throw ScaleCommand.refused("there is no command `" + params.getCommand() + "`");
    };
  }

  private static CompletableFuture<Object> work(
      ServerState state, ExecuteCommandParams params, Function<Work, Object> job) {
    return state.works().start(params, params.getCommand(), job);
  }

  private static Object report(
      ServerState state, ReportCommands report, Scene scene, JsonObject argument) {
    String page = report.page(scene, argument);
    if (isToOpen(argument)) {
      String name = report.command().substring("kettlemark.".length())
          + optionalText(argument, "formula")
              .or(() -> optionalText(argument, "name"))
              .map(of -> "-" + of)
              .orElse("");
      state.pages().ofReport(name, page).ifPresent(uri -> open(state, uri));
    }
    return page;
  }

  private static Object rule(ServerState state, String rule, JsonObject argument) {
    String page = RulePages.page(rule)
        .orElseThrow(() -> ScaleCommand.refused("there is no rule `" + rule + "`"));
    if (isToOpen(argument)) {
      state.pages().ofRule(rule).ifPresent(uri -> open(state, uri));
    }
    return page;
  }

  private static boolean isToOpen(JsonObject argument) {
    JsonElement open = argument.get("open");
    return open != null
        && open.isJsonPrimitive()
        && open.getAsJsonPrimitive().isBoolean()
        && open.getAsBoolean();
  }

  private static void open(ServerState state, String uri) {
    if (state.traits().plumbing().window().documents()) {
      ShowDocumentParams shown = new ShowDocumentParams(uri);
      shown.setTakeFocus(true);
      // Whether the client could show it, its user sees.
      var unused = state.client().showDocument(shown);
    }
  }

  private static Object changes(Snapshot now, Library saved) {
    return ChangesMarkdown.of(
        "Not saved yet, and what it changes", LibraryComparison.of(now.tried(saved), now));
  }

  /** Sends the edit of an action to a client that reads only commands. */
  private static Object apply(ServerState state, Scene scene, JsonObject told) {
    CodeAction action = Optional.of(told)
        .filter(ActionForms::isTold)
        .flatMap(object -> ActionForms.again(scene, object))
        .orElseThrow(() -> ScaleCommand.refused("the text has changed since this was offered"));
    var unused =
        state.client().applyEdit(new ApplyWorkspaceEditParams(action.getEdit(), action.getTitle()));
    return action.getTitle();
  }

  private static Scene scene(ServerState state, JsonObject argument) {
    String uri = text(argument, "uri");
    return state.scene(uri).orElseThrow(() -> ScaleCommand.refused("no library holds " + uri));
  }

  private static JsonObject argument(ExecuteCommandParams params) {
    List<Object> arguments = params.getArguments();
    if (arguments == null || arguments.isEmpty()) {
      throw ScaleCommand.refused("`" + params.getCommand() + "` takes one object");
    }
    JsonElement first = arguments.get(0) instanceof JsonElement element
        ? element
        : JsonParser.parseString(String.valueOf(arguments.get(0)));
    if (first instanceof JsonObject object) {
      return object;
    }
    throw ScaleCommand.refused("`" + params.getCommand() + "` takes one object");
  }

  static String text(JsonObject argument, String name) {
    return optionalText(argument, name)
        .orElseThrow(() -> ScaleCommand.refused("the command needs `" + name + "`"));
  }

  /** An empty text is none: a form sends it for a field that nobody has filled in. */
  static Optional<String> optionalText(JsonObject argument, String name) {
    JsonElement value = argument.get(name);
    return value != null && value.isJsonPrimitive()
        ? Optional.of(value.getAsString()).filter(text -> !text.isBlank())
        : Optional.empty();
  }
}
