package dev.kettlemark.protocol;

import dev.kettlemark.features.InlayHints;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Figures beside the text. */
final class InlayHintAdapter {

  private InlayHintAdapter() {}

  static List<InlayHint> hints(Scene scene, Range range, Settings settings) {
    return InlayHints.of(
            scene.snapshot(),
            scene.document(),
            scene.positions().span(scene.source(), range),
            kinds(settings))
        .stream()
        .map(hint -> hint(scene, hint))
        .toList();
  }

  private static Set<InlayHints.Kind> kinds(Settings settings) {
    Set<InlayHints.Kind> kinds = EnumSet.noneOf(InlayHints.Kind.class);
    if (settings.grams()) {
      kinds.add(InlayHints.Kind.GRAMS);
    }
    if (settings.percent()) {
      kinds.add(InlayHints.Kind.PERCENT);
    }
    if (settings.otherScale()) {
      kinds.add(InlayHints.Kind.OTHER_SCALE);
    }
    return kinds;
  }

  private static InlayHint hint(Scene scene, InlayHints.Hint hint) {
    InlayHint result = new InlayHint(
        scene.positions().position(scene.source(), hint.offset()), Either.forLeft(hint.label()));
    result.setPaddingLeft(true);
    if (scene.traits().plumbing().resolves().tooltips()) {
      result.setData(Resolving.data(scene));
    } else if (!hint.tooltip().isEmpty()) {
      result.setTooltip(hint.tooltip());
    }
    return result;
  }
}
