package dev.kettlemark.checks;

import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.PositionEncoding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The findings of documents as lines of text. */
final class Listing {

  private Listing() {}

  /** A finding with the line in which the listing shows it. */
  record Shown(Severity severity, String rule, String line) {}

  /** The findings of documents that make a library together. */
  static List<Shown> findings(List<Document> library) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.addAll(library);
    Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
    List<Shown> shown = new ArrayList<>();
    for (Document document : library) {
      for (Entry entry : document.entries()) {
        for (Finding finding : Rules.of(snapshot, entry)) {
          shown.add(shown(document, entry, finding));
        }
      }
    }
    return shown;
  }

  private static Shown shown(Document document, Entry entry, Finding finding) {
    Position position = document
        .text()
        .source()
        .position(entry.place(finding.span()).span().start(), PositionEncoding.UTF16);
    String line = String.format(
        Locale.ROOT,
        "%s:%d:%d: %s %s: %s",
        document.uri(),
        position.line() + 1,
        position.column() + 1,
        finding.severity().word(),
        finding.rule().id(),
        finding.message());
    return new Shown(finding.severity(), finding.rule().id(), line);
  }

  /** The findings, one on each line. */
  static String text(List<Shown> findings) {
    return findings.stream().map(finding -> finding.line() + "\n").collect(Collectors.joining());
  }
}
