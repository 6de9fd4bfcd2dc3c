package dev.kettlemark.pictures;

import java.util.List;

/**
 * An arrow of the flow.
 *
 * @param from the box that feeds
 * @param to the box that is fed
 * @param label what flows: how much, and how warm
 */
record FlowArrow(String from, String to, List<String> label) {

  private static final double LINE = 14;
  private static final double MARGIN = 6;

  double labelWidth() {
    return label.stream()
            .mapToDouble(line -> TextWidth.of(line, TextWidth.SMALL))
            .max()
            .orElse(0)
        + 2 * MARGIN;
  }

  double labelHeight() {
    return label.size() * LINE + MARGIN;
  }

  static double lineHeight() {
    return LINE;
  }

  static double margin() {
    return MARGIN;
  }
}
