package dev.kettlemark.protocol;

import dev.kettlemark.features.Formatter;
import dev.kettlemark.features.TypedFormat;
import java.util.List;
import org.eclipse.lsp4j.Position;
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

  /** Each edit once, though ranges may share a line. */
  static List<TextEdit> ranges(Scene scene, List<Range> ranges) {
    return ranges.stream()
        .flatMap(range -> range(scene, range).stream())
        .distinct()
        .toList();
  }

  /** What follows from a typed line end. */
  static List<TextEdit> typed(Scene scene, Position position) {
    return scene.edits(TypedFormat.atNewLine(scene.document().text(), scene.offset(position)));
  }
}
