package dev.kettlemark.preview;

import dev.kettlemark.sheets.SheetReader;
import java.util.Locale;
import java.util.Optional;

/**
 * What somebody wants to see.
 *
 * @param reader for whom a sheet is made; empty for whom it was declared for, or else for a chef
 * @param locale language and region; empty for what the sheet was declared in, or else British English
 */
public record PreviewRequest(View view, Optional<SheetReader> reader, Optional<Locale> locale) {

  /**
   * A request in words.
   *
   * @return empty where there is no such view, or no such reader
   */
  public static Optional<PreviewRequest> of(
      String view, Optional<String> reader, Optional<String> locale) {
    Optional<SheetReader> known = reader.flatMap(SheetReader::of);
    return View.of(view)
        .filter(one -> reader.isPresent() == known.isPresent())
        .map(one -> new PreviewRequest(one, known, locale.map(Locale::forLanguageTag)));
  }

  /** The word of the reader. */
  public Optional<String> readerWord() {
    return reader.map(SheetReader::word);
  }

  /** The tag of the language. */
  public Optional<String> tag() {
    return locale.map(Locale::toLanguageTag);
  }
}
