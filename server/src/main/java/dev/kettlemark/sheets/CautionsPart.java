package dev.kettlemark.sheets;

import dev.kettlemark.labelling.CautionNeed;
import dev.kettlemark.model.Located;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What may hurt somebody, told before the work begins. */
final class CautionsPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.CAUTIONS;
  }

  @Override
  public List<Block> of(Shown shown) {
    Set<String> words = new LinkedHashSet<>();
    shown
        .allFacts()
        .flatMap(facts -> facts.wordsOf("caution").stream())
        .map(Located::value)
        .forEach(words::add);
    shown
        .label()
        .ifPresent(label -> label.cautions().stream()
            .filter(need -> need.market().isEmpty()
                || label.markets().contains(need.market().get()))
            .map(CautionNeed::caution)
            .forEach(words::add));
    List<Block.Caution> cautions = new ArrayList<>();
    words.forEach(word -> cautions.add(caution(word)));
    if (shown.reader() == SheetReader.PRODUCTION && !cautions.isEmpty()) {
      cautions.add(caution("protection"));
    }
    return cautions.isEmpty()
        ? List.of()
        : List.of(new Block.Cautions(cautions, signs(shown.reader())));
  }

  private static Block.Caution caution(String word) {
    return new Block.Caution(word, Phrase.words("caution." + word));
  }

  /** In a kitchen the drawing is found first; at home it follows the text; a line has a list of hazards. */
  private static Block.Cautions.Signs signs(SheetReader reader) {
    return switch (reader) {
      case CHEF -> Block.Cautions.Signs.BEFORE;
      case HOME -> Block.Cautions.Signs.BEHIND;
      case PRODUCTION, BENCH -> Block.Cautions.Signs.NONE;
    };
  }
}
