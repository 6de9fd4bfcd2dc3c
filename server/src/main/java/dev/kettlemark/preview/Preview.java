package dev.kettlemark.preview;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetNotice;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What is shown beside a text.
 *
 * @param name of what is shown; empty where nothing is
 * @param request with the reader and the language that it was made for
 * @param html a part of a page, without script and without style
 * @param style the style sheet that belongs to it
 * @param anchors which element tells which line, in the order of the elements
 */
public record Preview(
    String name,
    String title,
    PreviewRequest request,
    String html,
    String style,
    List<Anchor> anchors) {

  public Preview {
    anchors = List.copyOf(anchors);
  }

  /** What the library holds of that name. */
  public static Preview named(Snapshot snapshot, String name, PreviewRequest request) {
    return Shown.named(snapshot.library(), name)
        .map(entry -> of(snapshot, entry, request))
        .orElseGet(() -> sentence(
            request, Phrase.words("preview.not-known", Phrase.given(name)), Optional.empty()));
  }

  /** The section that a place in a text speaks of; at the head of a text, its first one. */
  public static Entry sectionAt(Document document, int offset) {
    return Shown.at(document, offset);
  }

  /** What a section declares, or what it speaks of. */
  public static Preview of(Snapshot snapshot, Entry entry, PreviewRequest request) {
    Optional<Shown> shown = Shown.of(snapshot, entry, request);
    if (shown.isEmpty()) {
      Optional<Sheet> sheet = entry
          .declaration()
          .flatMap(d -> d instanceof Sheet found ? Optional.of(found) : Optional.empty());
      Phrase missing = sheet
          .map(found ->
              Phrase.words("preview.not-said", Phrase.given(found.name().value())))
          .orElseGet(() -> Phrase.words("preview.nothing-here"));
      return sentence(request, missing, sheet.map(found -> found.name().value()));
    }
    Rendering rendering = new Rendering(snapshot, shown.get(), request);
    return request.view().picture().map(rendering::pictures).orElseGet(rendering::sheet);
  }

  /** What is shown of a text that no library holds. */
  public static Preview ofNothing(PreviewRequest request) {
    return sentence(request, Phrase.words("preview.no-text"), Optional.empty());
  }

  private static Preview sentence(PreviewRequest request, Phrase missing, Optional<String> name) {
    Locale locale = request.locale().orElse(Locale.UK);
    return new Preview(
        name.orElse(""),
        name.orElse(""),
        request,
        around(SheetNotice.html(locale, missing, "")),
        PreviewStyle.ofSheet(),
        List.of());
  }

  /** The part of the page with its root, by which its style finds it. */
  static String around(String html) {
    return "<div class=\"kettlemark-preview\">\n" + html + "</div>\n";
  }
}
