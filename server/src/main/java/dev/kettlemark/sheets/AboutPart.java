package dev.kettlemark.sheets;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.Variant;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What it is and how it eats, in as many lines as the reader has time for. */
final class AboutPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.ABOUT;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() == SheetReader.BENCH) {
      return List.of();
    }
    List<Phrase> lines = new ArrayList<>();
    shown
        .product()
        .ifPresent(product -> lines.add(Phrase.sentence(
            "about.parts",
            new Phrase.Listing(product.product().parts().stream()
                .map(part -> Phrase.words(
                    "role." + part.role(),
                    part.material()
                        .map(name -> shown.named(name.value()))
                        .orElse(Phrase.given(part.role()))))
                .toList()))));
    shown.made().stream().limit(1).forEach(made -> {
      eats(made.formula(), lines);
      if (shown.reader() != SheetReader.PRODUCTION) {
        why(made, lines);
      }
    });
    shown
        .entry()
        .declaration()
        .flatMap(d -> d instanceof Variant variant ? variant.parent() : Optional.empty())
        .ifPresent(
            parent -> lines.add(Phrase.sentence("about.variant", shown.named(parent.value()))));
    shown.notes().forEach(note -> lines.add(Phrase.sentence(note)));
    return lines.isEmpty() ? List.of() : List.of(new Block.Lines(lines));
  }

  private static void eats(ComputedFormula formula, List<Phrase> lines) {
    formula
        .formula()
        .facts()
        .wordOf("texture")
        .ifPresent(texture -> lines.add(
            Phrase.sentence("about.texture", Phrase.words("texture." + texture.value()))));
  }

  /** Why it works, as far as its own figures tell. */
  private static void why(Made made, List<Phrase> lines) {
    made.figures().ifKnown(figures -> {
      if (figures.parcel().isAerated()) {
        lines.add(Phrase.sentence("about.foam"));
      }
      figures
          .moisture()
          .ifKnown(moisture -> lines.add(Phrase.sentence(
              "about.moisture",
              Phrase.value(SheetFigure.share(made.name() + ".moisture", figures.moisture(), 1)))));
    });
  }
}
