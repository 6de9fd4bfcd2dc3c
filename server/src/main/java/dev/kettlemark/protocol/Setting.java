package dev.kettlemark.protocol;

/** What a client may switch, by the name that it has under {@code kettlemark}: the only list. */
enum Setting {
  GRAMS("inlayHints", "grams", "Shows the grams of the batch beside a percent."),
  PERCENT("inlayHints", "percent", "Shows the percent beside a weight."),
  OTHER_SCALE(
      "inlayHints",
      "otherScale",
      "Shows a temperature in the other scale, °F beside °C and °C beside °F."),
  TOTALS("codeLens", "totals", "Shows charge, finished weight and yield above each formula.");

  private final String group;
  private final String key;
  private final String meaning;

  Setting(String group, String key, String meaning) {
    this.group = group;
    this.key = key;
    this.meaning = meaning;
  }

  String group() {
    return group;
  }

  String key() {
    return key;
  }

  /** Its name as a writer sets it, such as {@code kettlemark.inlayHints.grams}. */
  String qualifiedName() {
    return "kettlemark." + group + "." + key;
  }

  /** One sentence for whoever sets it. */
  String meaning() {
    return meaning;
  }

  boolean in(Settings settings) {
    return switch (this) {
      case GRAMS -> settings.grams();
      case PERCENT -> settings.percent();
      case OTHER_SCALE -> settings.otherScale();
      case TOTALS -> settings.totals();
    };
  }
}
