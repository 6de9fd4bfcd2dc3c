package dev.kettlemark.protocol;

import com.google.gson.JsonObject;
import dev.kettlemark.checks.SafeFixes;
import dev.kettlemark.features.AnswerActions;
import dev.kettlemark.features.QuickFixes;
import dev.kettlemark.features.ScaleActions;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Variant;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.jspecify.annotations.Nullable;

/**
 * What can be done at a place: fixes of findings, scaling, and last of all accepting what is found.
 *
 * <p>Fixes come from the server's own findings, never from what the client sends along: some clients
 * send nothing.
 */
final class ActionAdapter {

  static final String ASK_SCALE = "kettlemark.scale.ask";
  static final String OPEN_TABLE = "kettlemark.show.open";

  /** Mends the whole document; clients run it when it is saved, if their user says so. */
  static final String FIX_ALL = CodeActionKind.SourceFixAll + ".kettlemark";

  private ActionAdapter() {}

  static List<Either<Command, CodeAction>> actions(Scene scene, CodeActionParams params) {
    Span span = scene.positions().span(scene.source(), params.getRange());
    List<String> only = params.getContext().getOnly();
    List<Either<Command, CodeAction>> actions = new ArrayList<>();
    if (wants(only, CodeActionKind.QuickFix)) {
      for (QuickFixes.Action fix : QuickFixes.at(scene.snapshot(), scene.document(), span)) {
        actions.add(Either.forRight(fix(scene, params, fix)));
      }
      for (QuickFixes.Action fix : QuickFixes.answers(scene.snapshot(), scene.document(), span)) {
        actions.add(Either.forRight(fix(scene, params, fix)));
      }
    }
    if (wants(only, CodeActionKind.RefactorRewrite)) {
      addFormulaActions(scene, span, actions);
    }
    RefactoringAdapter.add(scene, span, only, actions);
    if (only != null && wants(only, FIX_ALL)) {
      fixAll(scene).map(Either::<Command, CodeAction>forRight).ifPresent(actions::add);
    }
    if (wants(only, CodeActionKind.QuickFix)) {
      for (QuickFixes.Action offer :
          QuickFixes.acceptances(scene.snapshot(), scene.document(), span)) {
        actions.add(Either.forRight(acceptance(scene, params, offer)));
      }
    }
    return actions;
  }

  /** Only a client that asks for it by name gets it: it has no place in a menu about one line. */
  private static Optional<CodeAction> fixAll(Scene scene) {
    SafeFixes fixes = SafeFixes.of(scene.snapshot(), scene.document());
    if (fixes.applied().isEmpty()) {
      return Optional.empty();
    }
    CodeAction action = new CodeAction("Fix all that is beyond doubt");
    action.setKind(FIX_ALL);
    action.setEdit(
        scene.workspaceEdit(Map.of(scene.document().uri(), fixes.edits(scene.document()))));
    return Optional.of(action);
  }

  /** Where the client fills in placeholders, the reason is one; elsewhere it is text to be replaced. */
  private static CodeAction acceptance(
      Scene scene, CodeActionParams params, QuickFixes.Action offer) {
    CodeAction action = fix(scene, params, offer);
    if (scene.traits().readsSnippetEdits() && scene.traits().readsDocumentChanges()) {
      action.setEdit(scene.snippetEdit(offer.edits(), Acceptance.UNFILLED));
    }
    return action;
  }

  private static CodeAction fix(Scene scene, CodeActionParams params, QuickFixes.Action fix) {
    CodeAction action = new CodeAction(plain(fix.title()));
    action.setKind(CodeActionKind.QuickFix);
    action.setIsPreferred(fix.preferred());
    action.setEdit(scene.workspaceEdit(fix.edits()));
    List<Diagnostic> mended = params.getContext().getDiagnostics().stream()
        .filter(diagnostic -> speaksOf(diagnostic, fix))
        .toList();
    if (!mended.isEmpty()) {
      action.setDiagnostics(mended);
    }
    return action;
  }

  /** Menus show titles as they are; quotes of the terminal's kind only disturb there. */
  private static String plain(String title) {
    return title.replace("`", "");
  }

  private static boolean speaksOf(Diagnostic diagnostic, QuickFixes.Action fix) {
    return diagnostic.getCode() != null
        && diagnostic.getCode().isLeft()
        && diagnostic.getCode().getLeft().equals(fix.finding().rule().id());
  }

  /** Anywhere in a formula it can be scaled and shown; the client asks for the target. */
  private static void addFormulaActions(
      Scene scene, Span span, List<Either<Command, CodeAction>> actions) {
    Entry entry = scene.document().entryAt(span.start());
    entry
        .declaration()
        .filter(d -> d instanceof Formula || d instanceof Variant)
        .ifPresent(declaration -> {
          String name = declaration.name().value();
          String uri = scene.moment().clientUri(scene.document().uri());
          AnswerActions.at(scene.snapshot(), scene.document(), span)
              .forEach(proposal -> actions.add(rewrite(scene, entry, proposal)));
          ScaleActions.of(scene.snapshot(), entry)
              .forEach(proposal -> actions.add(rewrite(scene, entry, proposal)));
          actions.add(command("Scale " + name + " …", ASK_SCALE, uri, name));
          actions.add(command("Show " + name + " as a table", OPEN_TABLE, uri, name));
        });
  }

  private static Either<Command, CodeAction> rewrite(
      Scene scene, Entry entry, ScaleActions.Proposal proposal) {
    CodeAction action = new CodeAction(proposal.title());
    action.setKind(CodeActionKind.RefactorRewrite);
    action.setEdit(scene.workspaceEdit(Map.of(entry.uri(), proposal.edits())));
    return Either.forRight(action);
  }

  private static Either<Command, CodeAction> command(
      String title, String command, String uri, String formula) {
    CodeAction action = new CodeAction(title);
    action.setKind(CodeActionKind.RefactorRewrite);
    action.setCommand(new Command(title, command, List.of(argument(uri, formula))));
    return Either.forRight(action);
  }

  static JsonObject argument(String uri, String formula) {
    JsonObject argument = new JsonObject();
    argument.addProperty("uri", uri);
    argument.addProperty("formula", formula);
    return argument;
  }

  /** A client may ask for some kinds only; a kind stands for all below it. */
  static boolean wants(@Nullable List<String> only, String kind) {
    return only == null
        || only.stream()
            .anyMatch(
                wanted -> wanted.isEmpty() || kind.equals(wanted) || kind.startsWith(wanted + "."));
  }
}
