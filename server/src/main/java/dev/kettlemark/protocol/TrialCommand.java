package dev.kettlemark.protocol;

import dev.kettlemark.features.NextTrial;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.WorkspaceEdit;

/** {@code kettlemark.newTrial}: the section of a formula's next trial, as an edit and as a text. */
final class TrialCommand {

  static final String NAME = "kettlemark.newTrial";

  private TrialCommand() {}

  /**
   * A trial to begin.
   *
   * @param edit writes the section behind the formula's last trial, or else behind the formula
   * @param title what it does
   * @param trial the name of the trial
   * @param text the section
   */
  record Result(WorkspaceEdit edit, String title, String trial, String text) {}

  static Result run(Scene scene, String formula) {
    Snapshot snapshot = scene.snapshot();
    NextTrial trial = NextTrial.of(snapshot, formula)
        .orElseThrow(() -> ScaleCommand.refused("the library has no formula `" + formula + "`"));
    Entry behind = snapshot.library().trialsOf(formula).stream()
        .reduce((one, later) -> later)
        .or(() -> snapshot.library().find(Kind.MATERIAL, formula))
        .orElseThrow();
    Optional<Document> document = scene.moment().document(behind.uri());
    if (document.filter(Document::builtIn).isPresent()) {
      throw ScaleCommand.refused("the built-in pantry cannot be changed");
    }
    return new Result(
        scene.workspaceEdit(Map.of(behind.uri(), List.of(trial.behind(behind)))),
        "Begin trial " + trial.name() + " of " + formula,
        trial.name(),
        trial.text());
  }
}
