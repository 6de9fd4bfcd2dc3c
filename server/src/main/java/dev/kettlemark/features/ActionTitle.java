package dev.kettlemark.features;

/** Titles that a menu shows whole. */
final class ActionTitle {

  /** Editors cut what is wider. */
  static final int MOST = 72;

  private ActionTitle() {}

  /** A title with as many of its additions as there is room for. */
  static String of(String title, String... additions) {
    StringBuilder whole = new StringBuilder(title);
    for (String addition : additions) {
      if (whole.length() + addition.length() > MOST) {
        break;
      }
      whole.append(addition);
    }
    if (whole.length() <= MOST) {
      return whole.toString();
    }
    int end = Character.isHighSurrogate(whole.charAt(MOST - 2)) ? MOST - 2 : MOST - 1;
    return whole.substring(0, end).stripTrailing() + "…";
  }
}
