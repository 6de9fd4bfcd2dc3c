package dev.kettlemark.sheets;

import dev.kettlemark.analysis.Trials;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Which exchanges somebody has tried, and which are only written down. */
final class SwapsPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.SWAPS;
  }

  /** On a line nothing is exchanged without its change control. */
  @Override
  public List<Block> of(Shown shown) {
    if (!shown.isFor(SheetReader.CHEF, SheetReader.HOME)) {
      return List.of();
    }
    List<Phrase> points = new ArrayList<>();
    for (Made made : shown.made()) {
      for (Variant variant : variants(shown, made.name())) {
        int trials = trials(shown, variant.name().value()).size();
        Phrase title = new Phrase.Titled(shown.titles().of(variant), false);
        points.add(
            trials == 0
                ? Phrase.sentence("swaps.untested", title)
                : Phrase.sentence(
                    "swaps.tested",
                    title,
                    Phrase.value(SheetFigure.exact(
                        "swaps." + variant.name().value() + ".trials",
                        SheetUnit.NUMBER,
                        trials,
                        0))));
      }
    }
    points.add(Phrase.sentence(points.isEmpty() ? "swaps.none" : "swaps.others"));
    return List.of(new Block.Points(points));
  }

  private static List<Variant> variants(Shown shown, String parent) {
    return shown.snapshot().library().variantsOf(parent).stream()
        .map(Entry::declaration)
        .flatMap(Optional::stream)
        .flatMap(d -> d instanceof Variant variant ? Stream.of(variant) : Stream.empty())
        .toList();
  }

  /** The batches that were made of a formula. */
  static List<Trial> trials(Shown shown, String formula) {
    return shown.snapshot().library().trialsOf(formula).stream()
        .flatMap(entry -> Trials.trial(entry).stream())
        .toList();
  }
}
