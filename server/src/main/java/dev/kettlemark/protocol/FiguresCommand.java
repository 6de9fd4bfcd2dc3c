package dev.kettlemark.protocol;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.features.BenchFigures;
import dev.kettlemark.library.Kind;
import java.util.Optional;
import org.eclipse.lsp4j.Position;

/**
 * {@code kettlemark.figures}: the figures of a formula as data, each as it is shown.
 *
 * <p>It takes {@code formula}, or {@code position} of the document; without both it speaks of the document's first
 * formula.
 */
final class FiguresCommand {

  static final String NAME = "kettlemark.figures";

  private FiguresCommand() {}

  static Object run(Scene scene, JsonObject argument) {
    Optional<String> name = Commands.optionalText(argument, "formula");
    Optional<ComputedFormula> formula = name.isPresent()
        ? scene
            .snapshot()
            .library()
            .find(Kind.MATERIAL, name.get())
            .flatMap(entry -> Formulas.computed(scene.snapshot(), entry))
        : BenchFigures.at(scene.snapshot(), scene.document(), offset(scene, argument));
    return formula
        .map(BenchFigures::of)
        .orElseThrow(
            () -> ScaleCommand.refused(name.map(n -> "the library has no formula `" + n + "`")
                .orElse("there is no formula in this text")));
  }

  private static int offset(Scene scene, JsonObject argument) {
    if (!(argument.get("position") instanceof JsonObject position)) {
      return 0;
    }
    return scene.offset(new Position(whole(position, "line"), whole(position, "character")));
  }

  private static int whole(JsonObject position, String name) {
    JsonElement value = position.get(name);
    if (value == null || !value.isJsonPrimitive() || !value.getAsJsonPrimitive().isNumber()) {
      throw ScaleCommand.refused("a position has a number `" + name + "`");
    }
    return Math.max(0, value.getAsInt());
  }
}
