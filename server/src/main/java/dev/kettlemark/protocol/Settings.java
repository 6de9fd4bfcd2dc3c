package dev.kettlemark.protocol;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import org.jspecify.annotations.Nullable;

/**
 * What a client may switch, under {@code kettlemark} in its settings.
 *
 * @param grams whether grams stand beside percentages
 * @param percent whether percentages stand beside weights
 * @param otherScale whether the other temperature scale stands beside a temperature
 * @param totals whether totals stand over stages and formulas
 */
record Settings(boolean grams, boolean percent, boolean otherScale, boolean totals) {

  static final Settings USUAL = new Settings(true, true, true, true);

  /** Whether nothing was sent: some clients only say that something is different now. */
  static boolean isNothing(@Nullable Object sent) {
    return !(sent instanceof JsonObject object) || object.size() == 0;
  }

  /** Reads settings as a client sends them; what it does not say stays as it was. */
  static Settings of(@Nullable Object sent, Settings before) {
    if (!(sent instanceof JsonObject object)) {
      return before;
    }
    JsonObject own = object.get("kettlemark") instanceof JsonObject inner ? inner : object;
    return new Settings(
        flag(own, Setting.GRAMS, before),
        flag(own, Setting.PERCENT, before),
        flag(own, Setting.OTHER_SCALE, before),
        flag(own, Setting.TOTALS, before));
  }

  private static boolean flag(JsonObject settings, Setting setting, Settings before) {
    JsonElement inner = settings.get(setting.group());
    JsonElement value = inner instanceof JsonObject object ? object.get(setting.key()) : null;
    if (value instanceof JsonPrimitive said && said.isBoolean()) {
      return said.getAsBoolean();
    }
    return setting.in(before);
  }
}
