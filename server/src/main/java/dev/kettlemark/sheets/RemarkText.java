package dev.kettlemark.sheets;

import dev.kettlemark.quantity.Remark;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Tells a {@link Remark} in the language of a sheet; one that has no words in it stays English, and marked so. */
final class RemarkText {

  /** A figure alone, with its unit; whatever else holds digits, such as a citation, is no figure. */
  private static final Pattern FIGURE =
      Pattern.compile("[≈<>−-]?\\s?\\d[\\d.]*([–-]\\d[\\d.]*)?(\\s?[^\\s\\d]{1,8})?");

  private static final Pattern MARK = Pattern.compile("(?<=\\d)\\.(?=\\d)");

  private final Wording wording;
  private final Locale locale;

  RemarkText(Wording wording, Locale locale) {
    this.wording = wording;
    this.locale = locale;
  }

  /** Whether the language has words for it, as English always has. */
  boolean knows(Remark remark) {
    return isEnglish() || message(remark).isPresent();
  }

  List<Run> runs(Remark remark) {
    if (isEnglish()) {
      return List.of(Run.plain(plain(remark.english())));
    }
    return message(remark)
        .map(message -> List.of(Run.plain(filled(message, remark))))
        .orElseGet(
            () -> List.of(Run.foreign(plain(remark.english()), Locale.ENGLISH.getLanguage())));
  }

  private boolean isEnglish() {
    return locale.getLanguage().equals(Locale.ENGLISH.getLanguage());
  }

  private Optional<String> message(Remark remark) {
    return wording.find("remark." + remark.key());
  }

  private String filled(String message, Remark remark) {
    List<Object> places = remark.places();
    return wording.pieces(message).stream()
        .map(piece -> piece
            .place()
            .map(number -> number < places.size() ? text(places.get(number)) : "")
            .orElse(piece.text()))
        .collect(Collectors.joining());
  }

  private String text(Object value) {
    if (value instanceof Remark inner) {
      return message(inner)
          .map(message -> filled(message, inner))
          .orElseGet(() -> plain(inner.english()));
    }
    if (value instanceof Remark.Word word) {
      return wording.find(word.kind() + "." + word.word()).orElseGet(word::toString);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(this::text).collect(Collectors.joining(", "));
    }
    String text = plain(value.toString());
    return FIGURE.matcher(text).matches()
        ? MARK.matcher(text).replaceAll(wording.text("number.mark"))
        : text;
  }

  /** The marks around words of the language are of no use on paper. */
  private static String plain(String text) {
    return text.replace("`", "");
  }
}
