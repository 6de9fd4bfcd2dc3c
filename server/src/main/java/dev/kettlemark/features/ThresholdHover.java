package dev.kettlemark.features;

import dev.kettlemark.model.Threshold;
import java.util.Optional;

/** A threshold that a house sets, by what it is a limit of and what is usual. */
final class ThresholdHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .statement()
        .filter(line -> line.head().text().equals("threshold"))
        .flatMap(line -> pointed.word())
        .flatMap(word -> Threshold.named(word.text())
            .map(threshold -> pointed.text(
                new Markdown().paragraph(ThresholdText.markdown(threshold)), word.span())));
  }
}
