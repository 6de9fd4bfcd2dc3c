package dev.kettlemark.protocol;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.features.Totals;
import java.util.List;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.Command;

/** Totals over stages, formulas and products. */
final class LensAdapter {

  private LensAdapter() {}

  static List<CodeLens> lenses(Scene scene, Settings settings) {
    if (!settings.totals()) {
      return List.of();
    }
    return Totals.of(scene.snapshot(), scene.document()).stream()
        .map(total -> lens(scene, total))
        .toList();
  }

  /** A total that belongs to a formula opens its table; any other only says its sum. */
  private static CodeLens lens(Scene scene, Totals.Total total) {
    CodeLens lens = new CodeLens(scene.positions().firstLine(scene.source(), total.span()));
    String uri = scene.moment().clientUri(scene.document().uri());
    lens.setCommand(total
        .subject()
        .filter(name -> Formulas.isFormula(scene.snapshot(), name))
        .map(name -> new Command(
            total.title(), ActionAdapter.OPEN_TABLE, List.of(ActionAdapter.argument(uri, name))))
        .orElseGet(() -> new Command(total.title(), "")));
    return lens;
  }
}
