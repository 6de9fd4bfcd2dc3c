package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Temperature;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The trade's names for how far a sucrose syrup is cooked, at sea level, mildest first.
 *
 * <p>Handbooks give the ranges in either scale and round each by itself, so both are kept as printed. They leave gaps
 * (116–118, 130–132, 143–149 °C) and overlap; a temperature may have no name or several. Never finer than ±1 °C.
 *
 * <p>The caution for all of them: hot sugar sticks to the skin and burns deeply; cold water for the look-and-feel test
 * stands ready before the kettle goes on, and nobody tests with a bare finger.
 *
 * <p>Source: [1] H. McGee (2004), On Food and Cooking, table of syrup stages. [2] Handbook charts, union of the ranges.
 */
public enum SugarStage {
  PEARL("pearl", 104, 106, 220, 222, "runs off the spoon in a broad sheet"),
  THREAD("thread", 106, 112, 223, 235, "spins a thin thread between spoon and pan"),
  BLOW("blow", 110, 112, 230, 235, "forms bubbles when blown through a wire loop"),
  SOFT_BALL("soft-ball", 112, 116, 234, 240, "in cold water a ball that flattens when lifted out"),
  FIRM_BALL(
      "firm-ball", 118, 120, 244, 248, "in cold water a ball that holds but gives under a spoon"),
  HARD_BALL(
      "hard-ball", 121, 130, 250, 266, "in cold water a ball that keeps its shape and resists"),
  SOFT_CRACK("soft-crack", 132, 143, 270, 290, "in cold water strands that bend before they break"),
  HARD_CRACK("hard-crack", 149, 154, 300, 310, "in cold water strands that snap and do not stick"),
  CLEAR_LIQUID("clear-liquid", 160, 160, 320, 320, "dry sugar has melted without colour"),
  LIGHT_CARAMEL("light-caramel", 160, 170, 320, 338, "pale gold, smells of sugar"),
  CARAMEL("caramel", 170, 182, 338, 360, "amber, smells of caramel"),
  DARK_CARAMEL("dark-caramel", 176, 190, 350, 375, "deep brown, first bitterness"),
  BURNT("burnt", 190, 205, 375, 400, "near black, smoking and bitter");

  private final String word;
  private final double lowCelsius;
  private final double highCelsius;
  private final int lowFahrenheit;
  private final int highFahrenheit;
  private final String look;

  SugarStage(
      String word,
      double lowCelsius,
      double highCelsius,
      int lowFahrenheit,
      int highFahrenheit,
      String look) {
    this.word = word;
    this.lowCelsius = lowCelsius;
    this.highCelsius = highCelsius;
    this.lowFahrenheit = lowFahrenheit;
    this.highFahrenheit = highFahrenheit;
    this.look = look;
  }

  /** Returns every stage whose range in °C holds the temperature; empty in a gap of the handbooks. */
  public static List<SugarStage> at(Temperature temperature) {
    return Arrays.stream(values())
        .filter(stage -> stage.range().contains(temperature))
        .toList();
  }

  /** Returns the stage that a word of the language names. */
  public static Optional<SugarStage> ofWord(String word) {
    return Arrays.stream(values()).filter(stage -> stage.word.equals(word)).findFirst();
  }

  /** Returns the word of the language. */
  public String word() {
    return word;
  }

  /** Returns the range as printed in °C. */
  public Band<Temperature> range() {
    return new Band<>(Temperature.ofCelsius(lowCelsius), Temperature.ofCelsius(highCelsius));
  }

  /** Returns the range as printed in °F, which is not the exact conversion of the other. */
  public Band<Temperature> rangePrintedInFahrenheit() {
    return new Band<>(
        Temperature.ofFahrenheit(lowFahrenheit), Temperature.ofFahrenheit(highFahrenheit));
  }

  /** Returns how to tell the stage without a thermometer, as a clause in lower case. */
  public String look() {
    return look;
  }
}
