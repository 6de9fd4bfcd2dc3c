package dev.kettlemark.protocol;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.features.Totals;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.CodeLens;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Range;

/** Totals over stages, formulas and products. */
final class LensAdapter {

  private LensAdapter() {}

  static List<CodeLens> lenses(Scene scene, Settings settings) {
    if (!settings.totals()) {
      return List.of();
    }
    boolean later = scene.traits().plumbing().resolves().lenses();
    return Totals.of(scene.snapshot(), scene.document()).stream()
        .map(total -> later ? place(scene, total) : whole(scene, total))
        .toList();
  }

  /** The lens that stands at a range, with all that it says. */
  static Optional<CodeLens> whole(Scene scene, Range range) {
    return Totals.of(scene.snapshot(), scene.document()).stream()
        .filter(total -> range(scene, total).equals(range))
        .map(total -> whole(scene, total))
        .findFirst();
  }

  private static CodeLens place(Scene scene, Totals.Total total) {
    CodeLens lens = new CodeLens(range(scene, total));
    lens.setData(Resolving.data(scene));
    return lens;
  }

  /** A total that belongs to a formula opens its table; any other only says its sum. */
  private static CodeLens whole(Scene scene, Totals.Total total) {
    CodeLens lens = new CodeLens(range(scene, total));
    String uri = scene.moment().clientUri(scene.document().uri());
    lens.setCommand(total
        .subject()
        .filter(name -> Formulas.isFormula(scene.snapshot(), name))
        .map(name -> new Command(
            total.title(), ActionAdapter.OPEN_TABLE, List.of(ActionAdapter.argument(uri, name))))
        .flatMap(command -> Commands.known(command, scene.traits().plumbing()))
        .orElseGet(() -> new Command(total.title(), "")));
    return lens;
  }

  private static Range range(Scene scene, Totals.Total total) {
    return scene.positions().firstLine(scene.source(), total.span());
  }
}
