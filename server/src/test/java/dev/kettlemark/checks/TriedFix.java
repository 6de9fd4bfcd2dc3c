package dev.kettlemark.checks;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A fix, and what is told of the whole library before and after it.
 *
 * @param mending which fix it is
 * @param title its title as it is offered
 * @param text what it leaves of the file
 * @param place what became of the place that it mends
 * @param before what was told before
 * @param after what is told once it is applied
 */
record TriedFix(
    Mending mending,
    String title,
    String text,
    Placed place,
    Span left,
    List<Placed> before,
    List<Placed> after) {

  /** A finding where it stands in a file. */
  record Placed(String file, String rule, Severity severity, Span span) {

    boolean isGrave() {
      return severity.compareTo(Severity.WARNING) <= 0;
    }

    boolean isAt(Placed other, Span span) {
      return file.equals(other.file)
          && rule.equals(other.rule)
          && span.start() <= this.span.start()
          && this.span.start() <= Math.max(span.start(), span.end() - 1);
    }
  }

  /** A fix by its rule and its title, of which the names and figures are left out. */
  record Mending(String rule, String title) {
    static Mending of(Finding finding, Fix fix) {
      return new Mending(
          finding.rule().id(),
          fix.title().replaceAll("`[^`]*`", "…").replaceAll("[0-9][0-9.,–-]*", "…"));
    }

    @Override
    public String toString() {
      return rule + ": " + title;
    }
  }

  /** Every fix that is offered in one text of a library, each tried by itself. */
  static List<TriedFix> allOf(Snapshot snapshot, List<Document> documents, Document document) {
    List<Placed> before = told(snapshot, documents);
    List<TriedFix> tried = new ArrayList<>();
    for (Entry entry : document.entries()) {
      for (Finding finding : Rules.of(snapshot, entry)) {
        for (Fix fix : finding.fixes()) {
          List<TextEdit> edits = fix.edits().stream()
              .map(edit -> edit.shiftedBy(entry.placed().offset()))
              .toList();
          Document mended = document.with(edits);
          List<Document> others =
              documents.stream().map(one -> one.equals(document) ? mended : one).toList();
          Placed place = placed(document, entry, finding);
          tried.add(new TriedFix(
              Mending.of(finding, fix),
              fix.title(),
              mended.text().source().text(),
              place,
              moved(place.span(), edits),
              before,
              told(snapshot.with(snapshot.library().with(mended)), others)));
        }
      }
    }
    return tried;
  }

  private static List<Placed> told(Snapshot snapshot, List<Document> documents) {
    List<Placed> told = new ArrayList<>();
    for (Document document : documents) {
      for (Entry entry : document.entries()) {
        Rules.of(snapshot, entry).forEach(finding -> told.add(placed(document, entry, finding)));
      }
    }
    return told;
  }

  private static Placed placed(Document document, Entry entry, Finding finding) {
    return new Placed(
        document.uri(),
        finding.rule().id(),
        finding.severity(),
        entry.place(finding.span()).span());
  }

  /** Where a stretch of text is once the edits are made, with whatever they wrote into it. */
  private static Span moved(Span span, List<TextEdit> edits) {
    int start = span.start();
    int end = span.end();
    for (TextEdit edit : edits) {
      Span touched = edit.span();
      if (touched.end() < span.start()
          || (touched.end() == span.start() && edit.replacement().endsWith("\n"))) {
        start += edit.growth();
      } else if (touched.start() < span.start()) {
        start -= span.start() - touched.start();
      }
      if (touched.start() < span.end() || (touched.isEmpty() && touched.end() == span.end())) {
        end += edit.growth();
      }
    }
    return new Span(start, Math.max(start, end));
  }

  /** What is wrong with the fix; empty if it does what it should. */
  List<String> faults() {
    List<String> faults = new ArrayList<>();
    if (of(after) >= of(before)) {
      faults.add("as many as before");
    }
    if (at(after, left) >= at(before, place.span())) {
      faults.add("still at its place");
    }
    return faults;
  }

  private long of(List<Placed> findings) {
    return findings.stream().filter(one -> one.rule().equals(place.rule())).count();
  }

  private long at(List<Placed> findings, Span span) {
    return findings.stream().filter(one -> one.isAt(place, span)).count();
  }

  /** The rules that find more errors or warnings in some file than before. */
  List<String> news() {
    Map<List<String>, Long> known = grave(before);
    return grave(after).entrySet().stream()
        .filter(entry -> entry.getValue() > known.getOrDefault(entry.getKey(), 0L))
        .map(entry -> entry.getKey().get(1))
        .distinct()
        .sorted()
        .toList();
  }

  private static Map<List<String>, Long> grave(List<Placed> findings) {
    return findings.stream()
        .filter(Placed::isGrave)
        .collect(Collectors.groupingBy(
            one -> List.of(one.file(), one.rule(), one.severity().word()), Collectors.counting()));
  }

  String described(List<String> faults) {
    return mending + " (" + title + ") " + faults + "\n" + text;
  }
}
