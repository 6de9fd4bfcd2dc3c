package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.gson.GsonBuilder;
import com.google.gson.JsonObject;
import dev.kettlemark.Pinned;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The settings are told to the editors' side by one list, and each of them switches what it says. */
class SettingsTest {

  /** The editors' side is checked against this file. */
  private static final Path LIST = Path.of("../editor-client/words/settings.json");

  @Test
  void theEditorsKnowEverySetting() {
    JsonObject list = new JsonObject();
    for (Setting setting : Setting.values()) {
      JsonObject told = new JsonObject();
      told.addProperty("default", setting.in(Settings.USUAL));
      told.addProperty("description", setting.meaning());
      list.add(setting.qualifiedName(), told);
    }
    String text =
        new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create().toJson(list) + "\n";
    Pinned.file(LIST).check(text, getClass());
  }

  @ParameterizedTest
  @EnumSource(Setting.class)
  void aSettingSwitchesItselfAndNothingElse(Setting setting) {
    Settings off = Settings.of(sent(setting, false), Settings.USUAL);
    for (Setting other : Setting.values()) {
      assertEquals(
          other == setting ? false : other.in(Settings.USUAL),
          other.in(off),
          other.qualifiedName());
    }
    assertEquals(Settings.USUAL, Settings.of(sent(setting, true), off));
  }

  @Test
  void whatIsNotSaidStays() {
    Settings off = Settings.of(sent(Setting.TOTALS, false), Settings.USUAL);
    assertEquals(off, Settings.of(new JsonObject(), off));
    assertEquals(off, Settings.of(null, off));
  }

  private static JsonObject sent(Setting setting, boolean value) {
    JsonObject group = new JsonObject();
    group.addProperty(setting.key(), value);
    JsonObject own = new JsonObject();
    own.add(setting.group(), group);
    JsonObject all = new JsonObject();
    all.add("kettlemark", own);
    return all;
  }
}
