package dev.kettlemark.checks;

import dev.kettlemark.quantity.Display;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;

/** Figures that a fix writes. */
final class Figures {

  private Figures() {}

  /** Two significant digits, not above the figure, so that a limit is never passed by rounding. */
  static String roundedDown(double figure) {
    int decimals = decimals(figure);
    double scale = Math.pow(10, decimals);
    return Display.trimmed(Math.floor(figure * scale + 1e-9) / scale, Math.max(0, decimals));
  }

  private static int decimals(double figure) {
    return figure <= 0 ? 0 : 1 - (int) Math.floor(Math.log10(figure));
  }

  /** Writes another figure at the start of a stretch and leaves what stands behind it. */
  static TextEdit rewritten(String text, Span span, String figure) {
    int end = span.start();
    while (end < span.end() && isFigure(text.charAt(end))) {
      end++;
    }
    return new TextEdit(new Span(span.start(), end), figure);
  }

  private static boolean isFigure(char c) {
    return Character.isDigit(c) || ".-–/".indexOf(c) >= 0;
  }
}
