package dev.kettlemark.protocol;

import dev.kettlemark.features.Links;
import java.util.List;
import org.eclipse.lsp4j.DocumentLink;

/** Addresses in texts. */
final class LinkAdapter {

  private LinkAdapter() {}

  static List<DocumentLink> links(Scene scene) {
    return Links.of(scene.document().text()).stream()
        .map(link -> {
          DocumentLink result =
              new DocumentLink(scene.positions().range(scene.source(), link.span()), link.target());
          result.setTooltip("Open " + link.target());
          return result;
        })
        .toList();
  }
}
