package dev.kettlemark.protocol;

import dev.kettlemark.features.Formatter;
import java.util.List;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;

/** Formatting. */
final class FormatAdapter {

  private FormatAdapter() {}

  static List<TextEdit> all(Scene scene) {
    return scene.edits(Formatter.edits(scene.document().text()));
  }

  static List<TextEdit> range(Scene scene, Range range) {
    return scene.edits(
        Formatter.edits(scene.document().text(), scene.positions().span(scene.source(), range)));
  }
}
