package dev.kettlemark.pictures;

import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The scale of temperatures that all stages of a picture share.
 *
 * @param low its foot, in °C
 * @param high its top, in °C
 * @param step from one mark to the next, in °C
 */
record TimeScale(int low, int high, int step) {

  private static final double HEIGHT = 84;
  private static final int STEP = 20;
  private static final int WIDE_STEP = 40;
  private static final int ROOM = 20;
  private static final int BOILING = 100;

  /** Beyond these no kitchen works, and marks would fill the picture. */
  private static final int COLDEST = -100;

  private static final int HOTTEST = 400;

  /** The scale that holds all temperatures, and at least those from a room to boiling water. */
  static TimeScale of(List<Temperature> temperatures) {
    double coldest =
        temperatures.stream().mapToDouble(Temperature::celsius).min().orElse(ROOM);
    double hottest =
        temperatures.stream().mapToDouble(Temperature::celsius).max().orElse(ROOM);
    int low = STEP * (int) Math.floor((Math.min(coldest, ROOM) - 1) / STEP);
    int high = STEP * (int) Math.ceil(Math.max(hottest, BOILING) / STEP);
    int held = Math.max(COLDEST, low);
    int top = Math.min(HOTTEST, high);
    return new TimeScale(held, top, top - held > 6 * STEP ? WIDE_STEP : STEP);
  }

  static double height() {
    return HEIGHT;
  }

  /** How far below the top of the scale a temperature lies. */
  double down(Temperature temperature) {
    double celsius = Math.max(low, Math.min(high, temperature.celsius()));
    return (high - celsius) / (high - low) * HEIGHT;
  }

  List<Integer> marks() {
    return IntStream.rangeClosed(low, high)
        .filter(mark -> mark % step == 0)
        .boxed()
        .toList();
  }
}
