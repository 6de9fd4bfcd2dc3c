package dev.kettlemark.sheets;

import dev.kettlemark.labelling.IngredientList;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.Nutrition;
import java.util.ArrayList;
import java.util.List;

/** A draft of the list of ingredients, for those who label. */
final class LabelPart implements SheetPart {

  @Override
  public Part.Kind kind() {
    return Part.Kind.LABEL;
  }

  @Override
  public List<Block> of(Shown shown) {
    boolean isWanted = shown.reader() == SheetReader.PRODUCTION
        || (shown.reader() == SheetReader.CHEF && shown.request().shows().contains("label"));
    if (!isWanted || shown.label().isEmpty()) {
      return List.of();
    }
    Label label = shown.label().get();
    List<Block> blocks = new ArrayList<>();
    for (Market market : AllergensPart.markets(shown, label)) {
      IngredientList list = IngredientList.of(label, market);
      List<Phrase> lines = new ArrayList<>();
      lines.add(new Phrase.English(list.text()));
      list.contains().ifPresent(contains -> lines.add(new Phrase.English(contains)));
      blocks.add(new Block.Heading(Phrase.words("label.market", Phrase.given(market.name()))));
      blocks.add(new Block.Lines(lines));
      blocks.addAll(NutritionTable.of(Nutrition.of(label, market)));
      if (!list.notes().isEmpty()) {
        blocks.add(new Block.Points(list.remarks().stream().map(Phrase::told).toList()));
      }
    }
    return blocks;
  }
}
