package dev.kettlemark.protocol;

import dev.kettlemark.features.Navigation;
import java.util.List;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;

/** Where a name is declared and used. */
final class NavigationAdapter {

  private NavigationAdapter() {}

  static List<Location> definition(Scene scene, Position position) {
    return scene.locations(
        Navigation.definition(scene.snapshot(), scene.document(), scene.offset(position)));
  }

  static List<Location> references(Scene scene, Position position, boolean withDeclaration) {
    return scene.locations(Navigation.references(
        scene.snapshot(), scene.document(), scene.offset(position), withDeclaration));
  }

  static List<DocumentHighlight> highlights(Scene scene, Position position) {
    return Navigation.highlights(scene.snapshot(), scene.document(), scene.offset(position))
        .stream()
        .map(span -> new DocumentHighlight(scene.positions().range(scene.source(), span)))
        .toList();
  }
}
