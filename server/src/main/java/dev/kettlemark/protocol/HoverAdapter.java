package dev.kettlemark.protocol;

import dev.kettlemark.features.HoverText;
import java.util.Optional;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Position;

/** Hover texts. */
final class HoverAdapter {

  private HoverAdapter() {}

  static Optional<Hover> hover(Scene scene, Position position) {
    return dev.kettlemark.features.Hover.at(
            scene.snapshot(), scene.document(), scene.offset(position))
        .map(text -> hover(scene, text));
  }

  private static Hover hover(Scene scene, HoverText text) {
    return new Hover(
        new MarkupContent(MarkupKind.MARKDOWN, text.markdown()),
        scene.positions().range(scene.source(), text.span()));
  }
}
