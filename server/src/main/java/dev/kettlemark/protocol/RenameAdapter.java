package dev.kettlemark.protocol;

import dev.kettlemark.features.Rename;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;

/** Renaming; a refusal reaches the user as an error with its reason. */
final class RenameAdapter {

  private RenameAdapter() {}

  static Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior> prepare(
      Scene scene, Position position) {
    Rename.Target target =
        given(Rename.prepare(scene.snapshot(), scene.document(), scene.offset(position)));
    return Either3.forSecond(new PrepareRenameResult(
        scene.positions().range(scene.source(), target.span()), target.placeholder()));
  }

  static WorkspaceEdit edits(Scene scene, Position position, String newName, Work work) {
    Map<String, List<TextEdit>> edits = given(Rename.edits(
        scene.snapshot(), scene.document(), scene.offset(position), newName, work::step));
    return scene.workspaceEdit(edits);
  }

  private static <T> T given(Rename.Answer<T> answer) {
    if (answer instanceof Rename.Answer.Given<T> given) {
      return given.value();
    }
    throw ScaleCommand.refused(((Rename.Answer.Refused<T>) answer).reason());
  }
}
