package dev.kettlemark.preview;

import dev.kettlemark.pictures.PictureKind;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What is shown beside the text. */
public enum View {
  SHEET,
  FLOW,
  TIME,
  SHARES;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public static Optional<View> of(String word) {
    return Stream.of(values()).filter(view -> view.word().equals(word)).findFirst();
  }

  /** The picture that it is; empty for the sheet. */
  Optional<PictureKind> picture() {
    return PictureKind.of(word());
  }
}
