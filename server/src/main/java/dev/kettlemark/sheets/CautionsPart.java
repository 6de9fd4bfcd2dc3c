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
    List<Phrase> cautions = new ArrayList<>();
    words.forEach(word -> cautions.add(new Phrase.Words("caution." + word, List.of())));
    if (shown.reader() == SheetReader.PRODUCTION && !cautions.isEmpty()) {
      cautions.add(Phrase.words("caution.protection"));
    }
    return cautions.isEmpty() ? List.of() : List.of(new Block.Points(cautions));
  }
}
