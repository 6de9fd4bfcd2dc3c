package dev.kettlemark.sheets;

import java.util.List;
import java.util.Locale;

/** A sentence that stands where a sheet would, or above it, in the language of the sheet. */
public final class SheetNotice {

  private SheetNotice() {}

  /**
   * The sentence as an element.
   *
   * @param locale of the sheet; English where there are no words in its language
   * @param sentence a key of the message files, and what stands in its places
   * @param because an explanation of the program in English; empty where there is none
   */
  public static String html(Locale locale, Phrase sentence, String because) {
    Speech speech = speech(locale);
    Element notice =
        Element.of("p").with("class", "notice").with("lang", speech.locale().toLanguageTag());
    spoken(notice, speech, Phrase.sentence(sentence));
    if (!because.isEmpty()) {
      notice.text(" ");
      spoken(notice, speech, Phrase.sentence(new Phrase.English(because)));
    }
    return notice.markup();
  }

  private static void spoken(Element notice, Speech speech, Phrase phrase) {
    for (Run run : speech.runs(phrase)) {
      Element span = Element.of("span");
      run.language().ifPresent(language -> span.with("lang", language));
      notice.add(span.text(run.text()));
    }
  }

  private static Speech speech(Locale locale) {
    return List.of(locale, Locale.UK).stream()
        .flatMap(one -> Speech.of(SheetRequest.of("", SheetReader.CHEF, one)).stream())
        .findFirst()
        .orElseThrow();
  }
}
