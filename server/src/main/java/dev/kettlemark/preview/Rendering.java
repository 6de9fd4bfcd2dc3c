package dev.kettlemark.preview;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.pictures.Picture;
import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.pictures.Pictures;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetContent;
import dev.kettlemark.sheets.SheetHtml;
import dev.kettlemark.sheets.SheetNotice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One sheet or the pictures of one subject, as they are shown beside the text. */
final class Rendering {

  private final Snapshot snapshot;
  private final Shown shown;
  private final PreviewRequest request;

  /** A formula that is drawn. */
  private record Drawn(Entry entry, Picture picture) {}

  Rendering(Snapshot snapshot, Shown shown, PreviewRequest wanted) {
    this.snapshot = snapshot;
    this.shown = shown;
    this.request = new PreviewRequest(
        wanted.view(),
        Optional.of(shown.request().reader()),
        Optional.of(shown.request().locale()));
  }

  Preview sheet() {
    Outcome<SheetContent> content = SheetContent.of(snapshot, shown.request());
    return content.fold(this::sheet, unknown -> noSheet(unknown.because()));
  }

  private Preview sheet(SheetContent content) {
    String html = SheetHtml.fragment(content);
    List<Anchor> anchors = new ArrayList<>();
    for (Entry formula : shown.formulas(snapshot)) {
      SourceLines.of(snapshot, formula).stream()
          .map(line -> new Anchor(line.place(), line.mark().id()))
          .filter(anchor -> html.contains("id=\"" + anchor.id() + "\""))
          .forEach(anchors::add);
    }
    return preview(
        content.head().title(),
        errors() + html,
        PreviewStyle.ofSheet() + SheetHtml.pictureStyle(content),
        anchors);
  }

  /** Without a sheet, what is known of the flow is drawn all the same. */
  private Preview noSheet(String because) {
    List<Drawn> drawn = drawn(PictureKind.FLOW);
    String html = errors()
        + notice(Phrase.words("preview.no-sheet", Phrase.given(shown.subject())), because)
        + (drawn.isEmpty() ? "" : notice(Phrase.words("preview.as-far"), ""));
    return drawing(html, drawn);
  }

  Preview pictures(PictureKind kind) {
    List<Drawn> drawn = drawn(kind);
    String missing = drawn.isEmpty()
        ? notice(Phrase.words("preview.no-picture", Phrase.given(shown.subject())), "")
        : "";
    return drawing(errors() + missing, drawn);
  }

  private List<Drawn> drawn(PictureKind kind) {
    return shown.formulas(snapshot).stream()
        .flatMap(entry ->
            Pictures.of(snapshot, entry, kind).stream().map(picture -> new Drawn(entry, picture)))
        .toList();
  }

  private Preview drawing(String above, List<Drawn> drawn) {
    List<Picture> pictures = drawn.stream().map(Drawn::picture).toList();
    String html = pictures.stream()
        .map(one -> "<div class=\"drawing\" lang=\"en\">\n" + one.bare() + "</div>\n")
        .collect(Collectors.joining());
    List<Anchor> anchors = new ArrayList<>();
    for (Drawn one : drawn) {
      for (SourceLines.Line line : SourceLines.of(snapshot, one.entry())) {
        Anchor anchor = new Anchor(line.place(), one.picture().stage(line.mark().stage()));
        if (!anchors.contains(anchor) && html.contains("id=\"" + anchor.id() + "\"")) {
          anchors.add(anchor);
        }
      }
    }
    String title = pictures.stream().map(Picture::title).findFirst().orElse(shown.subject());
    return preview(title, above + html, PreviewStyle.of(pictures), anchors);
  }

  private Preview preview(String title, String html, String style, List<Anchor> anchors) {
    return new Preview(shown.name(), title, request, Preview.around(html), style, anchors);
  }

  /** A sentence on top where the text has errors. */
  private String errors() {
    long errors = Stream.of(
            Stream.of(shown.entry()),
            shown.subjectEntry(snapshot.library()).stream(),
            shown.formulas(snapshot).stream())
        .flatMap(entries -> entries)
        .distinct()
        .flatMap(entry -> Rules.of(snapshot, entry).stream())
        .filter(finding -> finding.severity() == Severity.ERROR)
        .count();
    return errors == 0
        ? ""
        : notice(Phrase.words("preview.errors", Phrase.given(Long.toString(errors))), "");
  }

  private String notice(Phrase sentence, String because) {
    return SheetNotice.html(shown.request().locale(), sentence, because);
  }
}
