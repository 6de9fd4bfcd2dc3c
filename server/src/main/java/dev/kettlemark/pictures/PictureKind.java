package dev.kettlemark.pictures;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a picture of a formula shows. */
public enum PictureKind {
  /** What feeds what, with weights and temperatures. */
  FLOW,
  /** How warm each stage is while it is worked on. */
  TIME,
  /** What each stage leaves, by what it is made of. */
  SHARES;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<PictureKind> of(String word) {
    return Stream.of(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
