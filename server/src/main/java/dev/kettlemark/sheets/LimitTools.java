package dev.kettlemark.sheets;

import dev.kettlemark.model.House;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Statement;
import dev.kettlemark.sheets.Shown.Made;
import java.util.Optional;

/** What a line reads its limits with. */
final class LimitTools {

  private LimitTools() {}

  /** By the name that the house has for it. */
  static Phrase thermometer(Made made) {
    Optional<Statement> line = made.formula()
        .kitchen()
        .house()
        .map(House::facts)
        .flatMap(facts -> facts.first("thermometer"));
    return line.flatMap(found -> found.objects().stream()
            .flatMap(o -> o.value() instanceof Operand.Name name
                ? Optional.of(name.word()).stream()
                : Optional.<String>empty().stream())
            .findFirst())
        .map(name -> Phrase.words("limits.with.probe", Phrase.given(name)))
        .orElseGet(() -> Phrase.words("limits.with.thermometer"));
  }
}
