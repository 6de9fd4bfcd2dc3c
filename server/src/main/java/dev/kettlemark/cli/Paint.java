package dev.kettlemark.cli;

import dev.kettlemark.checks.Severity;

/** Colours of the terminal, or none; the text reads the same without. */
final class Paint {

  private static final String RESET = "\u001b[0m";

  private final boolean on;

  private Paint(boolean on) {
    this.on = on;
  }

  static Paint plain() {
    return new Paint(false);
  }

  static Paint coloured() {
    return new Paint(true);
  }

  boolean isOn() {
    return on;
  }

  String bold(String text) {
    return with("1", text);
  }

  /** For what is needed to read on, but is not the matter itself. */
  String faint(String text) {
    return with("2", text);
  }

  String good(String text) {
    return with("32", text);
  }

  String bad(String text) {
    return with("1;31", text);
  }

  String severity(Severity severity, String text) {
    return switch (severity) {
      case ERROR -> bad(text);
      case WARNING -> with("1;33", text);
      case INFORMATION -> with("1;34", text);
      case HINT -> with("1;36", text);
    };
  }

  private String with(String code, String text) {
    return on && !text.isEmpty() ? "\u001b[" + code + "m" + text + RESET : text;
  }
}
