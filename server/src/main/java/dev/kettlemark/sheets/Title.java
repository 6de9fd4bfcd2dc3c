package dev.kettlemark.sheets;

import dev.kettlemark.model.OtherNames;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * A display name of the source.
 *
 * @param plain as the source has it
 * @param language in which the source is written
 * @param others in other languages
 */
public record Title(String plain, String language, OtherNames others) {

  /** What a reader of that language is told. */
  String in(Locale locale) {
    return others.in(locale).orElse(plain);
  }

  /** Whether such a reader is told it in another language. */
  boolean isForeignIn(Locale locale) {
    return others.in(locale).isEmpty() && !language.equals(locale.getLanguage());
  }

  /** Without its grade, which stands behind a comma. */
  Title brief() {
    UnaryOperator<String> cut = text -> text.split(",", 2)[0];
    if (plain.indexOf(',') < 0
        && others.byLanguage().values().stream().noneMatch(name -> name.indexOf(',') >= 0)) {
      return this;
    }
    return new Title(cut.apply(plain), language, others.map(cut));
  }

  /** Whether a reader of some language would take one for the other. */
  boolean isLike(Title other) {
    return plain.equals(other.plain)
        || others.byLanguage().entrySet().stream()
            .anyMatch(name -> name.getValue().equals(other.others.byLanguage().get(name.getKey())));
  }
}
