package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import dev.kettlemark.labelling.CautionNeed;
import dev.kettlemark.labelling.ClaimAnswer;
import dev.kettlemark.labelling.Diet;
import dev.kettlemark.labelling.IngredientList;
import dev.kettlemark.labelling.IngredientUse;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Law;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.labelling.MarketAllergens;
import dev.kettlemark.labelling.MarketAllergens.Listed;
import dev.kettlemark.labelling.Nutrition;
import dev.kettlemark.labelling.Way;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** A label for other programs: full figures, null for what is unknown. */
final class LabelData {

  private LabelData() {}

  static JsonObject json(Label label, Market market) {
    MarketAllergens allergens = MarketAllergens.of(label.allergens(), market);
    IngredientList list = IngredientList.of(label, market);
    JsonObject json = new JsonObject();
    json.addProperty("name", label.name());
    json.addProperty("title", label.shownName());
    json.addProperty("market", market.name());
    json.addProperty("notice", Label.DRAFT);
    json.add("allergens", array(allergens.contained(), LabelData::listed));
    json.add("mayContain", array(allergens.mayContain(), LabelData::listed));
    json.add("onSite", array(allergens.onSite(), LabelData::listed));
    json.add("allergenNotes", array(allergens.notes()));
    json.add("diets", array(label.diets(), LabelData::diet));
    json.add(
        "claims",
        array(
            label.claims().stream().filter(claim -> claim.market() == market).toList(),
            LabelData::claim));
    json.add(
        "cautions",
        array(
            label.cautions().stream()
                .filter(need -> need.market().isEmpty() || need.market().get() == market)
                .toList(),
            LabelData::caution));
    json.addProperty("ingredientList", list.text());
    json.addProperty("contains", list.contains().orElse(null));
    json.add("ingredients", array(list.items(), LabelData::item));
    json.add("ingredientNotes", array(list.notes()));
    json.add("nutrition", nutrition(Nutrition.of(label, market)));
    return json;
  }

  private static JsonObject listed(Listed listed) {
    JsonObject json = new JsonObject();
    json.addProperty("group", listed.group().name());
    json.add("words", array(listed.words()));
    json.add("from", array(listed.sources(), LabelData::use));
    json.addProperty("law", law(listed.group().law()));
    return json;
  }

  private static JsonObject use(IngredientUse use) {
    JsonObject json = new JsonObject();
    json.addProperty("ingredient", use.name());
    json.add("gramsIn100g", percent(use.share()));
    json.add("ways", array(use.ways().stream().map(Way::words).toList()));
    return json;
  }

  private static JsonObject diet(Diet.Answer answer) {
    JsonObject json = new JsonObject();
    json.addProperty("diet", answer.diet().word());
    json.addProperty("standing", word(answer.standing()));
    json.add(
        "offenders", array(answer.offenders().stream().map(IngredientUse::name).toList()));
    json.add("silent", array(answer.silent().stream().map(IngredientUse::name).toList()));
    return json;
  }

  private static JsonObject claim(ClaimAnswer claim) {
    JsonObject json = new JsonObject();
    json.addProperty("claim", claim.claim());
    json.addProperty("standing", word(claim.standing()));
    json.add(
        "grounds", array(claim.grounds().stream().map(ClaimAnswer.Ground::text).toList()));
    json.addProperty("law", law(claim.law()));
    return json;
  }

  private static JsonObject caution(CautionNeed need) {
    JsonObject json = new JsonObject();
    json.addProperty("caution", need.caution());
    json.addProperty("stated", need.isStated());
    json.addProperty("statement", need.statement());
    json.addProperty("reason", need.reason());
    json.addProperty("law", law(need.law()));
    return json;
  }

  private static JsonObject item(IngredientList.Item item) {
    JsonObject json = new JsonObject();
    json.addProperty("label", item.label());
    json.add("gramsIn100g", percent(item.share()));
    json.addProperty("namedInTitle", item.named());
    json.add("from", array(item.uses().stream().map(IngredientUse::name).toList()));
    return json;
  }

  private static JsonObject nutrition(Nutrition nutrition) {
    JsonObject json = new JsonObject();
    json.addProperty("pieceGrams", nutrition.piece().map(Mass::grams).orElse(null));
    json.add("rows", array(nutrition.rows(), row -> {
      JsonObject one = new JsonObject();
      one.addProperty("name", row.name());
      one.addProperty("unit", row.unit());
      one.add("in100g", number(row.per100()));
      one.add("inPiece", row.perPiece().map(LabelData::number).orElse(JsonNull.INSTANCE));
      return one;
    }));
    return json;
  }

  private static JsonElement percent(Outcome<Ratio> share) {
    return number(share.map(Ratio::percent));
  }

  private static JsonElement number(Outcome<Double> figure) {
    return figure.<JsonElement>map(JsonPrimitive::new).orElse(JsonNull.INSTANCE);
  }

  private static String law(Law law) {
    return law.words();
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private static JsonArray array(List<String> texts) {
    JsonArray array = new JsonArray();
    texts.forEach(array::add);
    return array;
  }

  private static <T> JsonArray array(List<T> items, Function<T, JsonObject> json) {
    JsonArray array = new JsonArray();
    items.forEach(item -> array.add(json.apply(item)));
    return array;
  }
}
