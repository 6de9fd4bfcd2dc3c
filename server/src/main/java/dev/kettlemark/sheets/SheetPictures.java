package dev.kettlemark.sheets;

import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.pictures.Pictures;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.sheets.Shown.Made;
import java.util.List;

/** The pictures of a sheet, drawn of the very batch that its figures speak of. */
final class SheetPictures {

  private SheetPictures() {}

  /** One picture for each formula that is made; none for readers who do without. */
  static List<Block> of(Shown shown, PictureKind kind) {
    return isWanted(shown, kind)
        ? shown.made().stream().map(made -> drawn(shown, made, kind)).toList()
        : List.of();
  }

  private static boolean isWanted(Shown shown, PictureKind kind) {
    return switch (kind) {
      case FLOW -> shown.isFor(SheetReader.CHEF, SheetReader.PRODUCTION);
      case TIME -> shown.reader() == SheetReader.CHEF || isTimedAtHome(shown);
      case SHARES -> shown.reader() == SheetReader.PRODUCTION;
    };
  }

  /** At home it helps where two masses must be ready together; its axis is in °C only. */
  private static boolean isTimedAtHome(Shown shown) {
    return shown.reader() == SheetReader.HOME
        && !FigureText.isFahrenheitFirst(shown.request())
        && shown.made().stream().anyMatch(made -> TimePart.whisk(made).isPresent());
  }

  private static Block drawn(Shown shown, Made made, PictureKind kind) {
    List<ComputedProduct> products = shown.product().stream().toList();
    return new Block.Drawing(
        kind, Pictures.of(made.formula().charged(made.scaling().batch()), products, kind));
  }
}
