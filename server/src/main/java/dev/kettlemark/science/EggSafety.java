package dev.kettlemark.science;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Temperature;

/**
 * The temperatures that decide whether egg is safe and whether egg white sets.
 *
 * <p>Range: judges a temperature that the whole mass reaches; a foam warms unevenly, so the coldest spot counts.
 *
 * <p>Expected error: the limits are law or printed advice; the temperature judged has the error of its own model.
 *
 * <p>Source: [1] 9 CFR 590.570, pasteurisation of liquid eggs. [2] U.S. Food Code (2022) 3-401.11 and consumer advice,
 * from memory. [3] Published denaturation temperatures of egg-white proteins.
 */
public final class EggSafety {

  /** Egg white without additives, held for 3.5 minutes: [1], 134 °F. */
  public static final Temperature ALBUMEN_HELD_3_5_MINUTES = Temperature.ofFahrenheit(134);

  /** Egg white without additives, held for 6.2 minutes: [1], 132 °F. */
  public static final Temperature ALBUMEN_HELD_6_2_MINUTES = Temperature.ofFahrenheit(132);

  /** Whole egg, held for 3.5 minutes: [1], 140 °F. */
  public static final Temperature WHOLE_EGG_HELD_3_5_MINUTES = Temperature.ofFahrenheit(140);

  /** Plain yolk, held for 3.5 minutes: [1], 142 °F. */
  public static final Temperature YOLK_HELD_3_5_MINUTES = Temperature.ofFahrenheit(142);

  /** Spray-dried egg white, held for seven days: 9 CFR 590.575, 130 °F. */
  public static final Temperature DRIED_WHITE_HELD_7_DAYS = Temperature.ofFahrenheit(130);

  /** Egg counts as safe at once: [2], advice to consumers, 160 °F. */
  public static final Temperature SAFE_AT_ONCE = Temperature.ofFahrenheit(160);

  /** The first protein of egg white to set, ovotransferrin: [3]. */
  public static final Temperature OVOTRANSFERRIN_SETS = Temperature.ofCelsius(61);

  /** The main protein of egg white, ovalbumin: [3]. Poured syrup rarely gets there. */
  public static final Temperature OVALBUMIN_SETS = Temperature.ofCelsius(84.5);

  /** What a temperature means for raw egg white. */
  public enum Verdict {
    /** The coldest estimate already lies below every pasteurisation. */
    NOT_PASTEURISED,
    /** Safe only if held long enough, or if the estimate turns out on its warm side. */
    DEPENDS_ON_HOLDING,
    /** Even the coldest estimate reaches the temperature that is safe at once. */
    SAFE_AT_ONCE
  }

  private EggSafety() {}

  /** Judges the band in which the temperature of a mass with raw egg white lies, by its cold end. */
  public static Verdict ofWhite(Band<Temperature> reached) {
    if (reached.low().compareTo(SAFE_AT_ONCE) >= 0) {
      return Verdict.SAFE_AT_ONCE;
    }
    return reached.low().compareTo(ALBUMEN_HELD_3_5_MINUTES) < 0
        ? Verdict.NOT_PASTEURISED
        : Verdict.DEPENDS_ON_HOLDING;
  }
}
