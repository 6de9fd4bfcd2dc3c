package dev.kettlemark.preview;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreviewStyleTest {

  private static final String STYLE = PreviewStyle.ofSheet();

  @Test
  void namesNoEditor() {
    assertFalse(STYLE.contains("vscode"));
  }

  /** Web Content Accessibility Guidelines 2.2, criterion 1.4.3: text against its ground at least 4.5 : 1. */
  @ParameterizedTest
  @CsvSource({
    "light, ink, paper", "light, soft, paper", "light, warn, paper", "light, ink, here",
        "light, soft, here",
    "dark, ink, paper", "dark, soft, paper", "dark, warn, paper", "dark, ink, here",
        "dark, soft, here"
  })
  void textCanBeRead(String theme, String text, String ground) {
    double contrast = contrast(colour(theme, text), colour(theme, ground));
    assertTrue(contrast >= 4.5, () -> theme + " " + text + " on " + ground + ": " + contrast);
  }

  /** The same, criterion 1.4.11: what marks the focus against its ground at least 3 : 1. */
  @ParameterizedTest
  @CsvSource({"light", "dark"})
  void theFocusCanBeSeen(String theme) {
    double contrast = contrast(colour(theme, "focus"), colour(theme, "paper"));
    assertTrue(contrast >= 3, () -> theme + ": " + contrast);
  }

  /** The same, criterion 1.4.6 for the themes of high contrast: at least 7 : 1. */
  @ParameterizedTest
  @CsvSource({"contrast-dark", "contrast-light"})
  void highContrastIsHigh(String theme) {
    String block = STYLE.substring(STYLE.indexOf("[data-theme=\"" + theme + "\"]"));
    block = block.substring(0, block.indexOf('}'));
    Map<String, String> colours = new HashMap<>();
    Matcher colour = Pattern.compile("--(\\w+): var\\([^,()]+, (#\\w{6})\\)").matcher(block);
    while (colour.find()) {
      colours.put(colour.group(1), colour.group(2));
    }
    for (String text : new String[] {"ink", "warn", "focus"}) {
      double contrast = contrast(colours.getOrDefault(text, ""), colours.getOrDefault("paper", ""));
      assertTrue(contrast >= 7, () -> theme + " " + text + ": " + contrast);
    }
  }

  private static String colour(String theme, String name) {
    Matcher found =
        Pattern.compile("--" + theme + "-" + name + ": (#[0-9a-f]{6})").matcher(STYLE);
    assertTrue(found.find(), () -> theme + " has no " + name);
    return found.group(1);
  }

  /** The same, contrast ratio and relative luminance as they are defined there; from memory. */
  private static double contrast(String one, String other) {
    double first = luminance(one);
    double second = luminance(other);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(String colour) {
    return 0.2126 * linear(colour, 1) + 0.7152 * linear(colour, 3) + 0.0722 * linear(colour, 5);
  }

  private static double linear(String colour, int at) {
    double part = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }
}
