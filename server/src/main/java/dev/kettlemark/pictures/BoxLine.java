package dev.kettlemark.pictures;

/**
 * One line in a box.
 *
 * @param look how it is set
 * @param text what it says; empty for a rule
 */
record BoxLine(Look look, String text) {

  private static final double TALL = 20;
  private static final double USUAL = 16;
  private static final double THIN = 8;

  /** How a line is set. */
  enum Look {
    HEAD("head", TextWidth.HEAD, TALL),
    PLAIN("plain", TextWidth.PLAIN, USUAL),
    SMALL("small", TextWidth.SMALL, USUAL),
    /** A line drawn across the box. */
    RULE("fine", TextWidth.PLAIN, THIN);

    private final String style;
    private final double size;
    private final double height;

    Look(String style, double size, double height) {
      this.style = style;
      this.size = size;
      this.height = height;
    }

    String style() {
      return style;
    }

    double size() {
      return size;
    }

    double height() {
      return height;
    }
  }

  static BoxLine head(String text) {
    return new BoxLine(Look.HEAD, text);
  }

  static BoxLine plain(String text) {
    return new BoxLine(Look.PLAIN, text);
  }

  static BoxLine small(String text) {
    return new BoxLine(Look.SMALL, text);
  }

  static BoxLine rule() {
    return new BoxLine(Look.RULE, "");
  }

  /** The same line, cut to a room. */
  BoxLine fit(double room) {
    return new BoxLine(look, TextWidth.fit(text, look.size(), room));
  }

  double width() {
    return TextWidth.of(text, look.size());
  }
}
