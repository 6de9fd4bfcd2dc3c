package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Task;
import dev.kettlemark.pictures.Picture;
import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.pictures.Pictures;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.sheets.Shown.Made;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** The pictures of a sheet, drawn of the very batch that its figures speak of. */
final class SheetPictures {

  private SheetPictures() {}

  /** One picture for each formula that is made; none for readers who do without. */
  static List<Block> of(Shown shown, PictureKind kind) {
    return isWanted(shown, kind)
        ? shown.made().stream().flatMap(made -> drawn(shown, made, kind)).toList()
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

  private static Stream<Block> drawn(Shown shown, Made made, PictureKind kind) {
    BigFraction batch = made.scaling().batch();
    Optional<Picture> shared = kind == PictureKind.FLOW && shown.product().isEmpty()
        ? shown
            .snapshot()
            .find(Kind.MATERIAL, made.name())
            .flatMap(entry -> shown.snapshot().result(new Flow(batch), entry))
        : Optional.empty();
    List<ComputedProduct> products = shown.product().stream().toList();
    List<Picture> parts = shared
        .map(List::of)
        .orElseGet(() -> Pictures.onPaper(made.formula().charged(batch), products, kind));
    return IntStream.range(0, parts.size())
        .mapToObj(i -> new Block.Drawing(kind, parts.get(i), i > 0));
  }

  /** The flow of a batch, which is dear to lay out and the same for all readers. */
  private record Flow(BigFraction batch) implements Task<Optional<Picture>> {
    @Override
    public Optional<Picture> compute(Entry entry, Scope scope) {
      return entry
          .declaration()
          .flatMap(declaration -> scope.ask(Formulas.computed(declaration.name().value())))
          .map(formula -> Pictures.of(formula.charged(batch), List.of(), PictureKind.FLOW));
    }
  }
}
