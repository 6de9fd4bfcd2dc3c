package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import dev.kettlemark.cards.Exchange;
import dev.kettlemark.cards.Judgement;
import dev.kettlemark.cards.LabelWord;
import dev.kettlemark.cards.ProductSide;
import dev.kettlemark.cards.ProductsSideBySide;
import dev.kettlemark.cards.Side;
import dev.kettlemark.cards.SideBySide;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Difference;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Reach;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A comparison of two formulas for other programs, with its figures in full. */
final class CompareJson {

  private CompareJson() {}

  static JsonObject of(SideBySide both, Leaf page) {
    JsonObject json = new JsonObject();
    json.add("first", side(both.first()));
    json.add("second", side(both.second()));
    json.addProperty("batchGrams", both.batch().grams());
    json.add("verdict", verdict(both, page));
    JsonArray amounts = new JsonArray();
    both.amounts().forEach(exchange -> amounts.add(exchange(exchange)));
    json.add("amounts", amounts);
    json.add("figures", pairs(both.figures()));
    json.add("label", words(both.words()));
    return json;
  }

  /** Two products, piece beside piece. */
  static JsonObject of(ProductsSideBySide both) {
    JsonObject json = new JsonObject();
    json.add("first", side(both.first()));
    json.add("second", side(both.second()));
    json.add("figures", pairs(both.figures()));
    JsonArray parts = new JsonArray();
    both.parts().forEach(part -> {
      JsonObject one = new JsonObject();
      one.addProperty("part", part.role());
      part.first().ifPresent(material -> one.addProperty("first", material));
      part.second().ifPresent(material -> one.addProperty("second", material));
      one.add("figures", pairs(part.figures()));
      parts.add(one);
    });
    json.add("parts", parts);
    json.add("label", words(both.words()));
    return json;
  }

  private static JsonObject side(ProductSide side) {
    JsonObject json = new JsonObject();
    json.addProperty("name", side.name());
    json.addProperty("title", side.title());
    side.state().ifPresent(state -> json.addProperty("state", state));
    return json;
  }

  private static JsonArray pairs(List<Pair> pairs) {
    JsonArray figures = new JsonArray();
    pairs.forEach(pair -> figures.add(pair(pair)));
    return figures;
  }

  private static JsonArray words(List<LabelWord> all) {
    JsonArray words = new JsonArray();
    all.forEach(word -> words.add(word(word)));
    return words;
  }

  private static JsonObject side(Side side) {
    JsonObject json = new JsonObject();
    json.addProperty("name", side.name());
    json.addProperty("title", side.title());
    side.version().ifPresent(version -> json.addProperty("version", version));
    side.state().ifPresent(state -> json.addProperty("state", state));
    json.addProperty("trials", side.trials().size());
    return json;
  }

  private static JsonArray verdict(SideBySide both, Leaf page) {
    JsonArray array = new JsonArray();
    for (Judgement judgement : both.judgements()) {
      JsonObject json = new JsonObject();
      json.addProperty("duty", judgement.duty());
      json.addProperty("status", word(judgement.status()));
      JsonArray told = new JsonArray();
      judgement.told().forEach(phrase -> told.add(page.text(phrase)));
      json.add("told", told);
      array.add(json);
    }
    return array;
  }

  private static JsonObject exchange(Exchange exchange) {
    JsonObject json = new JsonObject();
    exchange.first().ifPresent(amount -> json.add("first", amount(amount)));
    exchange.second().ifPresent(amount -> json.add("second", amount(amount)));
    exchange.function().ifPresent(function -> json.addProperty("function", function.word()));
    return json;
  }

  private static JsonObject amount(Exchange.Amount amount) {
    JsonObject json = new JsonObject();
    json.addProperty("ingredient", amount.material());
    amount.share().ifKnown(share -> json.addProperty("percentOfCharge", 100 * share.doubleValue()));
    return json;
  }

  private static JsonObject pair(Pair pair) {
    JsonObject json = new JsonObject();
    json.addProperty("figure", pair.word());
    json.addProperty("unit", pair.first().unit().symbol());
    json.add("first", figure(pair.first()));
    json.add("second", figure(pair.second()));
    Difference difference = pair.difference();
    json.addProperty("difference", word(difference.kind()));
    if (difference.kind() != Difference.Kind.UNKNOWN) {
      json.addProperty("by", difference.by());
    }
    return json;
  }

  private static JsonObject figure(SheetFigure figure) {
    JsonObject json = new JsonObject();
    Optional<Reach> reach = figure.reach().toOptional();
    reach.ifPresent(known -> {
      json.addProperty("low", known.low());
      json.addProperty("value", known.best());
      json.addProperty("high", known.high());
    });
    if (figure.reach() instanceof Outcome.Unknown<Reach> unknown) {
      json.addProperty("unknown", unknown.because());
    }
    json.addProperty("basis", word(figure.basis()));
    return json;
  }

  private static JsonObject word(LabelWord word) {
    JsonObject json = new JsonObject();
    json.addProperty("kind", word(word.kind()));
    json.addProperty("word", word.word());
    json.addProperty("first", word.first().substring(word.first().indexOf('.') + 1));
    json.addProperty("second", word.second().substring(word.second().indexOf('.') + 1));
    return json;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }
}
