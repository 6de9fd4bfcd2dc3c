package dev.kettlemark.protocol;

import com.google.gson.JsonObject;
import dev.kettlemark.features.Refactoring;
import dev.kettlemark.features.Refactorings;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionDisabled;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.jspecify.annotations.Nullable;

/** Refactorings as code actions. */
final class RefactoringAdapter {

  /** Puts settings in order; clients run it when a text is saved, if their user says so. */
  static final String ORGANIZE = CodeActionKind.Source + ".organizeSettings";

  /** The kinds besides rewriting. */
  static final List<String> KINDS =
      List.of(CodeActionKind.RefactorExtract, CodeActionKind.RefactorInline, ORGANIZE);

  /** A menu that is longer is not read. */
  private static final int MOST = 12;

  /** So many are shown in any menu, however full it is. */
  private static final int LEAST = 5;

  /** Who asks for refactorings alone has room for more. */
  private static final int MOST_ALONE = 24;

  private RefactoringAdapter() {}

  /**
   * Adds what a client asks for as far as there is room: the likeliest first, and refused ones only where
   * a client asks for their kind.
   */
  static void add(
      Scene scene,
      Span span,
      @Nullable List<String> only,
      List<Either<Command, CodeAction>> actions) {
    int room = only == null ? Math.max(LEAST, MOST - rewritings(actions)) : MOST_ALONE;
    Stream<Refactoring> asked = wantsAny(only)
        ? Refactorings.at(scene.snapshot(), scene.document(), span, only != null).stream()
        : Stream.empty();
    Stream<Refactoring> organizing = only != null && wants(only, ORGANIZE)
        ? Refactorings.organizing(scene.document())
        : Stream.empty();
    Stream.concat(asked, organizing)
        .filter(one -> wants(only, kind(one)))
        .filter(one -> one.refused().isEmpty() || only != null)
        .limit(room)
        .forEach(one -> actions.add(Either.forRight(action(scene, one))));
  }

  private static int rewritings(List<Either<Command, CodeAction>> actions) {
    return (int) actions.stream()
        .filter(Either::isRight)
        .filter(
            action -> CodeActionKind.RefactorRewrite.equals(action.getRight().getKind()))
        .count();
  }

  private static boolean wantsAny(@Nullable List<String> only) {
    return Stream.of(
            CodeActionKind.RefactorRewrite,
            CodeActionKind.RefactorExtract,
            CodeActionKind.RefactorInline)
        .anyMatch(kind -> wants(only, kind));
  }

  private static boolean wants(@Nullable List<String> only, String kind) {
    return ActionAdapter.wants(only, kind);
  }

  private static CodeAction action(Scene scene, Refactoring one) {
    CodeAction action = new CodeAction(one.title());
    action.setKind(kind(one));
    one.refused().ifPresent(why -> action.setDisabled(new CodeActionDisabled(plain(why))));
    one.opens().ifPresent(page -> action.setCommand(command(scene, one.title(), page)));
    if (!one.edits().isEmpty()) {
      action.setEdit(scene.workspaceEdit(one.edits()));
    }
    return action;
  }

  private static String plain(String why) {
    return why.replace("`", "");
  }

  private static Command command(Scene scene, String title, Refactoring.Page page) {
    JsonObject argument =
        ActionAdapter.argument(scene.moment().clientUri(scene.document().uri()), page.formula());
    page.arguments().forEach(argument::addProperty);
    return new Command(title, page.command(), List.of(argument));
  }

  private static String kind(Refactoring one) {
    return switch (one.kind()) {
      case REWRITE -> CodeActionKind.RefactorRewrite;
      case EXTRACT -> CodeActionKind.RefactorExtract;
      case INLINE -> CodeActionKind.RefactorInline;
      case ORGANIZE -> ORGANIZE;
    };
  }
}
