package dev.kettlemark.science;

import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.TemperatureDifference;
import java.util.Arrays;
import java.util.List;

/**
 * The printed boiling tables of pure sucrose syrups at sea level, which contradict each other.
 *
 * <p>At 80 % Browne's table after Gerlach stands at 112.0 °C and Claassen's at 109.4 °C. The model follows Claassen up to
 * 85 %, since only those figures agree with what is known of water activity at the same strength, and the candy
 * makers' graph above that, where Claassen's table thins out.
 */
// Both fields are immutable, but the annotation that would say so belongs to no dependency here.
@SuppressWarnings("ImmutableEnumChecker")
public enum PublishedBoiling {
  CLAASSEN(
      Check.Source.remembered(
          "Claassen's table of cane sugar at 760 mm, in Spencer and Meade, Cane Sugar Handbook"),
      0,
      new double[][] {
        {10, 0.1, 0.3},
        {20, 0.3, 0.3},
        {30, 0.6, 0.3},
        {40, 1.05, 0.3},
        {50, 1.8, 0.3},
        {60, 3.0, 0.3},
        {65, 3.8, 0.3},
        {70, 5.1, 0.3},
        {75, 7.0, 0.3},
        {80, 9.4, 1.1},
        {85, 13.0, 1.1},
        {90, 19.6, 3},
        {94, 30.5, 5}
      }),
  BROWNE(
      Check.Source.read(
          "Browne 1912, Handbook of Sugar Analysis, table after Gerlach; too high from 66 % up"),
      0,
      new double[][] {
        {10, 0.4, 0.5},
        {20, 0.6, 0.5},
        {40, 1.5, 0.5},
        {50, 2.0, 0.5},
        {62, 3.4, 0.5},
        {64, 4.0, 0.6},
        {66, 4.8, 1},
        {68, 5.6, 1.5},
        {70, 6.5, 3},
        {72, 7.4, 3},
        {76, 9.4, 3},
        {80, 12.0, 3},
        {82, 13.9, 3.5}
      }),
  BROWNE_REMEMBERED(
      Check.Source.remembered("Browne 1912, table after Gerlach"),
      100,
      new double[][] {{30, 101.0, 0.5}, {60, 103.0, 0.5}}),
  CANDY(Check.Source.remembered("McGee 2004, graph of boiling sugar syrups"), 100, new double[][] {
    {90, 123, 2},
    {95, 140, 2},
    {97, 151, 2},
    {98.2, 160, 5},
    {99.5, 166, 5}
  }),
  STAGES(
      Check.Source.read("trade's pairs of stage and solids, two reference pages"),
      100,
      new double[][] {
        {80, 110.5, 0},
        {85, 113.5, 0},
        {87, 119, 0},
        {92, 125.5, 0},
        {95, 137.5, 0},
        {99, 150, 0}
      });

  private final Check.Source source;
  private final List<Point> points;

  /**
   * One line of a table.
   *
   * @param solids sucrose by mass
   * @param aboveWater elevation above the boiling point of water that the table itself starts from
   * @param tolerance how far the model claims to lie from it at most
   */
  public record Point(
      Ratio solids, TemperatureDifference aboveWater, TemperatureDifference tolerance) {}

  PublishedBoiling(Check.Source source, double waterCelsius, double[][] lines) {
    this.source = source;
    this.points = Arrays.stream(lines)
        .map(line -> new Point(
            Ratio.ofPercent(line[0]),
            TemperatureDifference.ofCelsius(line[1] - waterCelsius),
            TemperatureDifference.ofCelsius(line[2])))
        .toList();
  }

  Check.Source source() {
    return source;
  }

  /** Returns the lines of the table, thinnest syrup first. */
  public List<Point> points() {
    return points;
  }
}
