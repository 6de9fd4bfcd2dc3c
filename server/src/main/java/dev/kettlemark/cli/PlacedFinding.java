package dev.kettlemark.cli;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Fix;
import dev.kettlemark.checks.Related;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Place;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Optional;

/**
 * A finding in the file it was made in.
 *
 * @param folder the library
 * @param document the file
 * @param entry the section
 */
record PlacedFinding(LibraryFolder folder, Document document, Entry entry, Finding finding) {

  /** A stretch of some file, with what stands there. */
  record Elsewhere(String uri, Source source, Span span, String message) {}

  Source source() {
    return document.text().source();
  }

  /** Where it is, in the file's own offsets. */
  Span span() {
    return entry.place(finding.span()).span();
  }

  String shownPath() {
    return folder.shown(document.uri());
  }

  /** The edits of a fix in the file's own offsets. */
  List<TextEdit> edits(Fix fix) {
    return fix.edits().stream()
        .map(edit -> edit.shiftedBy(entry.placed().offset()))
        .toList();
  }

  /** The other places that belong to it, as far as they are in the library. */
  List<Elsewhere> elsewhere() {
    return finding.related().stream()
        .flatMap(related -> elsewhere(related).stream())
        .toList();
  }

  private Optional<Elsewhere> elsewhere(Related related) {
    Optional<Place> place = folder.snapshot().library().place(related.origin());
    return place.flatMap(there -> folder
        .snapshot()
        .library()
        .document(there.uri())
        .map(document ->
            new Elsewhere(there.uri(), document.text().source(), there.span(), related.message())));
  }

  /** A place as people count it: line and column from 1, columns in UTF-16 units. */
  static Position humanPosition(Source source, int offset) {
    Position position = source.position(offset, PositionEncoding.UTF16);
    return new Position(position.line() + 1, position.column() + 1);
  }

  /** {@code path:line:column}. */
  static String address(String path, Source source, int offset) {
    Position position = humanPosition(source, offset);
    return path + ":" + position.line() + ":" + position.column();
  }
}
