package dev.kettlemark.pictures;

import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;

/** How pictures speak of a stage. */
final class StageNames {

  private StageNames() {}

  /** Its display name, or the name by which later stages take it. */
  static String title(StageResult stage) {
    return stage.stage().title().orElse(stage.name());
  }

  /** Its display name and where it happens. */
  static String titleAndVessel(StageResult stage) {
    return title(stage)
        + stage.stage().vessel().map(Located::value).map(name -> " in " + name).orElse("");
  }

  /** What it leaves, by weight. */
  static String mass(StageResult stage) {
    return stage.left().mass().fold(Display::estimate, unknown -> "weight unknown");
  }
}
