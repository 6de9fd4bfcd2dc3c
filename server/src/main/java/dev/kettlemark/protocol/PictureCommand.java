package dev.kettlemark.protocol;

import com.google.gson.JsonObject;
import dev.kettlemark.library.Kind;
import dev.kettlemark.pictures.Picture;
import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.pictures.Pictures;

/** The command that draws a formula and answers with SVG; {@code kind} is the flow if not given. */
final class PictureCommand {

  static final String NAME = "kettlemark.flow";

  private PictureCommand() {}

  static Object run(Scene scene, JsonObject argument) {
    String formula = Commands.text(argument, "formula");
    String word = Commands.optionalText(argument, "kind").orElse(PictureKind.FLOW.word());
    PictureKind kind = PictureKind.of(word)
        .orElseThrow(() -> ScaleCommand.refused("there is no picture of the kind `" + word + "`"));
    return scene
        .snapshot()
        .library()
        .find(Kind.MATERIAL, formula)
        .flatMap(entry -> Pictures.of(scene.snapshot(), entry, kind))
        .map(Picture::svg)
        .orElseThrow(() -> ScaleCommand.refused("the library has no formula `" + formula + "`"));
  }
}
