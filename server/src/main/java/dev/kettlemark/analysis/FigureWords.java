package dev.kettlemark.analysis;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.TemperatureDifference;
import dev.kettlemark.science.GrainingRisk;
import dev.kettlemark.science.Texture;
import java.util.Locale;

/** The figures of a mass in words, the same wherever they are shown. */
public final class FigureWords {

  private FigureWords() {}

  /** One figure with its unit and what it means; unknown for the reason for which the figure is. */
  public static Outcome<String> of(MassFigures figures, Figure figure) {
    return switch (figure) {
      case MOISTURE -> figures.moisture().map(Display::estimate);
      case GRAINED_WATER_ACTIVITY ->
        figures
            .grainedWaterActivity()
            .map(band -> "water activity " + Display.activity(band)
                + " once the sucrose beyond saturation has crystallised");
      case WATER_ACTIVITY ->
        figures
            .waterActivity()
            .map(band -> Display.activity(band) + " at " + Display.celsius(MassFigures.STORED_AT)
                + ", if nothing grains");
      case DOCTOR_SHARE ->
        figures.doctorShare().map(share -> Display.estimate(share) + " of the saccharides");
      case SUCROSE_PER_WATER ->
        figures.sucrosePerWater().map(band -> Display.number(band, 1) + " g/g");
      case SUPERSATURATION ->
        figures
            .supersaturation()
            .map(band -> Display.number(band, 1) + " times saturated at "
                + Display.celsius(MassFigures.STORED_AT.low()) + ", "
                + GrainingRisk.of(band.high()).name().toLowerCase(Locale.ROOT));
      case DRY_GLASS_TRANSITION -> figures.dryGlassTransition().map(Display::celsius);
      case GLASS_TRANSITION -> figures.glassTransition().map(Display::celsius);
      case TEXTURE -> Outcome.both(figures.texture(), figures.glassMargin(), FigureWords::texture);
      case SWEETNESS -> figures.sweetness().map(band -> Display.number(band, 2) + " of sucrose");
      case ENERGY -> energy(figures);
      case DENSITY -> figures.density().map(Display::density);
      case OVERRUN ->
        figures.overrun().map(band -> Display.number(band.map(r -> r.times(100)), 0) + " %");
      case VOLUME -> figures.volume().map(Display::volume);
    };
  }

  /** One word, or two where the band holds more. */
  public static String texture(Band<Texture> band) {
    return band.isExact()
        ? band.low().word()
        : band.low().word() + " to " + band.high().word();
  }

  private static String texture(Band<Texture> band, Band<TemperatureDifference> margin) {
    return texture(band) + ": the room is " + Display.aboveGlass(margin)
        + (band.high() == Texture.SOFT ? "; gel, foam, fat or grain must hold it up" : "");
  }

  private static Outcome<String> energy(MassFigures figures) {
    Outcome<String> european = Outcome.both(
        figures.europeanKilojoules(),
        figures.europeanKilocalories(),
        (kilojoules, kilocalories) -> Display.fixed(kilojoules, 0) + " kJ, "
            + Display.fixed(kilocalories, 0) + " kcal per 100 g by EU factors");
    return Outcome.both(
        european,
        figures.americanKilocalories(),
        (here, there) -> here + ", " + Display.fixed(there, 0) + " kcal by US factors");
  }
}
