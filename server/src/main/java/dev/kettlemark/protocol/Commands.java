package dev.kettlemark.protocol;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.RulePages;
import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.features.ChangesMarkdown;
import dev.kettlemark.features.FormulaTable;
import dev.kettlemark.features.WhatIf;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.eclipse.lsp4j.ExecuteCommandParams;

/** What a client may ask the server to do; every command takes one object and answers with data. */
final class Commands {

  /** Shows a formula as a table. */
  static final String SHOW = "kettlemark.show";

  /** Shows the page of a rule. */
  static final String EXPLAIN_RULE = "kettlemark.explainRule";

  /** Tells what the unsaved texts of a library would change. */
  static final String CHANGES = "kettlemark.changes";

  /** Shows what another material in the place of one would change. */
  static final String WHAT_IF = "kettlemark.whatIf";

  static final List<String> NAMES =
      List.of(ScaleCommand.NAME, SHOW, EXPLAIN_RULE, CHANGES, WHAT_IF, TrialCommand.NAME);

  private Commands() {}

  static CompletableFuture<Object> run(ServerState state, ExecuteCommandParams params) {
    JsonObject argument = argument(params);
    return switch (params.getCommand()) {
      case ScaleCommand.NAME -> {
        Scene scene = scene(state, argument);
        JsonObject target =
            argument.get("target") instanceof JsonObject object ? object : new JsonObject();
        yield state.compute(() -> ScaleCommand.run(scene, text(argument, "formula"), target));
      }
      case SHOW -> {
        Scene scene = scene(state, argument);
        yield state.compute(() -> show(scene, text(argument, "formula")));
      }
      case EXPLAIN_RULE -> state.compute(() -> page(text(argument, "rule")));
      case CHANGES -> {
        Scene scene = scene(state, argument);
        Library saved = state.saved(text(argument, "uri"));
        yield state.compute(() -> changes(scene.snapshot(), saved));
      }
      case WHAT_IF -> {
        Scene scene = scene(state, argument);
        yield state.compute(() -> whatIf(
            scene.snapshot(),
            text(argument, "formula"),
            text(argument, "replace"),
            text(argument, "by")));
      }
      case TrialCommand.NAME -> {
        Scene scene = scene(state, argument);
        yield state.compute(() -> TrialCommand.run(scene, text(argument, "formula")));
      }
      default -> throw ScaleCommand.refused("there is no command `" + params.getCommand() + "`");
    };
  }

  private static Object show(Scene scene, String name) {
    return scene
        .snapshot()
        .library()
        .find(Kind.MATERIAL, name)
        .flatMap(entry -> Formulas.computed(scene.snapshot(), entry))
        .map(computed -> FormulaTable.of(computed).markdown())
        .orElseThrow(() -> ScaleCommand.refused("the library has no formula `" + name + "`"));
  }

  private static Object changes(Snapshot now, Library saved) {
    return ChangesMarkdown.of(
        "Not saved yet, and what it changes", LibraryComparison.of(now.with(saved), now));
  }

  private static Object whatIf(Snapshot now, String formula, String replace, String by) {
    return WhatIf.of(now, formula, replace, by).fold(WhatIf::markdown, unknown -> {
      throw ScaleCommand.refused(unknown.because());
    });
  }

  private static Object page(String rule) {
    return RulePages.page(rule)
        .orElseThrow(() -> ScaleCommand.refused("there is no rule `" + rule + "`"));
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

  private static String text(JsonObject argument, String name) {
    JsonElement value = argument.get(name);
    if (value == null || !value.isJsonPrimitive()) {
      throw ScaleCommand.refused("the command needs `" + name + "`");
    }
    return value.getAsString();
  }
}
