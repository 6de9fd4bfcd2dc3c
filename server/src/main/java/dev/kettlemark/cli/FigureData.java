package dev.kettlemark.cli;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Density;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.quantity.Volume;
import dev.kettlemark.science.Texture;
import java.util.function.Function;

/** The figures of a mass for other programs: each with its low and its high end, null where unknown. */
final class FigureData {

  private FigureData() {}

  static JsonElement json(MassFigures figures) {
    JsonObject json = new JsonObject();
    json.add("moisturePercent", band(figures.moisture(), Ratio::percent));
    json.add("waterActivity", band(figures.waterActivity(), Ratio::fraction));
    json.add("grainedWaterActivity", band(figures.grainedWaterActivity(), Ratio::fraction));
    json.add("doctorPercent", number(figures.doctorShare().map(Ratio::percent)));
    json.add("sucrosePerWater", band(figures.sucrosePerWater(), Ratio::fraction));
    json.add("supersaturation", band(figures.supersaturation(), Ratio::fraction));
    json.add("dryGlassCelsius", number(figures.dryGlassTransition().map(Temperature::celsius)));
    json.add("glassCelsius", band(figures.glassTransition(), Temperature::celsius));
    json.add("glassAboveRoomCelsius", band(figures.glassMargin(), TemperatureDifference::celsius));
    json.add("texture", texture(figures.texture()));
    json.add("sweetness", band(figures.sweetness(), Ratio::fraction));
    json.add("kilojoulesPer100Grams", number(figures.europeanKilojoules()));
    json.add("kilocaloriesPer100Grams", number(figures.europeanKilocalories()));
    json.add("americanKilocaloriesPer100Grams", number(figures.americanKilocalories()));
    json.add("gramsPerMillilitre", band(figures.density(), Density::gramsPerMillilitre));
    json.add("overrunPercent", band(figures.overrun(), Ratio::percent));
    json.add("millilitres", band(figures.volume(), Volume::millilitres));
    return json;
  }

  private static JsonElement texture(Outcome<Band<Texture>> texture) {
    return texture.fold(
        band -> ends(
            new JsonPrimitive(band.low().word()), new JsonPrimitive(band.high().word())),
        unknown -> JsonNull.INSTANCE);
  }

  private static <T extends Comparable<? super T>> JsonElement band(
      Outcome<Band<T>> figure, Function<T, Double> number) {
    return figure.fold(
        band -> ends(
            new JsonPrimitive(number.apply(band.low())),
            new JsonPrimitive(number.apply(band.high()))),
        unknown -> JsonNull.INSTANCE);
  }

  private static JsonElement ends(JsonPrimitive low, JsonPrimitive high) {
    JsonObject json = new JsonObject();
    json.add("low", low);
    json.add("high", high);
    return json;
  }

  private static JsonElement number(Outcome<Double> figure) {
    return figure.fold(JsonPrimitive::new, unknown -> JsonNull.INSTANCE);
  }
}
