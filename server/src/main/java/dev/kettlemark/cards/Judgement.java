package dev.kettlemark.cards;

import dev.kettlemark.sheets.Phrase;
import java.util.List;
import java.util.Locale;

/**
 * Whether one duty of a formula is done alike by another.
 *
 * @param duty what is judged, such as {@code foam}
 * @param told what the figures say, each a sentence
 */
public record Judgement(String duty, Status status, List<Phrase> told) {

  public Judgement {
    told = List.copyOf(told);
  }

  /** What comes of it. */
  public enum Status {
    /** As far as the figures go, it is the same. */
    KEPT,
    /** It surely becomes something else. */
    MOVES,
    /** No figure can tell. */
    UNKNOWN;

    String key() {
      return "verdict." + name().toLowerCase(Locale.ROOT);
    }
  }
}
