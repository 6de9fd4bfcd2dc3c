package dev.kettlemark.cards;

import dev.kettlemark.sheets.Block;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What two labels say, as sections of a page.
 *
 * @param silent the names of ingredients whose allergens nobody has stated
 */
record LabelSections(List<LabelWord> words, List<Phrase> silent) {

  LabelSections {
    words = List.copyOf(words);
    silent = List.copyOf(silent);
  }

  Leaf.Section section(LabelWord.Kind kind, String word) {
    List<Row> rows = words.stream()
        .filter(one -> one.kind() == kind)
        .map(one -> Row.of(
            Told.name(one),
            Phrase.words(one.first()),
            Phrase.words(one.second()),
            Phrase.words(one.isSame() ? "difference.none" : "difference.word")))
        .toList();
    List<Block> blocks = new ArrayList<>();
    if (!rows.isEmpty()) {
      blocks.add(new Block.Grid(
          Phrase.words("compare." + word + ".caption"),
          List.of(
              Column.text("column." + kind.name().toLowerCase(Locale.ROOT)),
              Column.text("column.first"),
              Column.text("column.second"),
              Column.text("column.difference")),
          rows));
    }
    // What nobody has said of an ingredient is not known to be absent.
    if (kind == LabelWord.Kind.ALLERGEN && !silent.isEmpty()) {
      blocks.add(Block.Lines.of(Phrase.sentence("allergens.silent", new Phrase.Listing(silent))));
    }
    return new Leaf.Section(word, Phrase.words("compare." + word), blocks);
  }
}
