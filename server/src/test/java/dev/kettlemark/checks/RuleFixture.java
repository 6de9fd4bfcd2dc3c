package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Runs one rule over a text and draws what it finds back into the text.
 *
 * <p>A line of carets under a line marks a range, then {@code id: message}; further ranges of the same
 * line follow below it. A line {@code --- name} starts a further file. The built-in pantry is there.
 */
final class RuleFixture {

  private static final Pattern MARK = Pattern.compile("\\s*\\^+ [a-z-]+: .*");
  private static final String FILE = "--- ";

  private final Rule rule;

  private RuleFixture(Rule rule) {
    this.rule = rule;
  }

  static RuleFixture of(Rule rule) {
    return new RuleFixture(rule);
  }

  /** Asserts that the rule finds exactly what is drawn. */
  void check(String drawn) {
    List<Document> documents = documents(drawn);
    Snapshot snapshot = snapshot(documents);
    StringBuilder redrawn = new StringBuilder();
    for (Document document : documents) {
      if (!document.uri().equals("first.kettle")) {
        redrawn.append(FILE).append(document.uri()).append('\n');
      }
      redrawn.append(draw(document, findings(snapshot, document)));
    }
    assertEquals(drawn, redrawn.toString());
  }

  /** As {@link #checkFix}, and that no other fix is offered before it. */
  void checkFirstFix(String title, String before, String after) {
    assertEquals(
        title,
        only(Document.of("first.kettle", before)).finding().fixes().get(0).title());
    checkFix(title, before, after);
  }

  /** As {@link #checkFix} for the first of several findings; all are gone then. */
  void checkFirstFinding(String title, String before, String after) {
    Document document = Document.of("first.kettle", before);
    checkFix(title, document, findings(snapshot(List.of(document)), document).get(0), after);
  }

  /** Asserts that the only finding offers no fix. */
  void checkNoFix(String text) {
    checkFixes(List.of(), text);
  }

  /** Asserts which fixes the only finding offers, best first. */
  void checkFixes(List<String> titles, String text) {
    assertEquals(
        titles,
        only(Document.of("first.kettle", text)).finding().fixes().stream()
            .map(Fix::title)
            .toList());
  }

  private Placed only(Document document) {
    List<Placed> findings = findings(snapshot(List.of(document)), document);
    assertEquals(1, findings.size(), () -> "findings: " + findings);
    return findings.get(0);
  }

  /** Asserts what a fix of the only finding makes of the text, and that the finding is gone then. */
  void checkFix(String title, String before, String after) {
    Document document = Document.of("first.kettle", before);
    checkFix(title, document, only(document), after);
  }

  /** Asserts how grave the only finding is. */
  void checkSeverity(Severity severity, String text) {
    assertEquals(severity, only(Document.of("first.kettle", text)).finding().severity());
  }

  /** Asserts what the only finding says of why it matters. */
  void checkNote(String note, String text) {
    assertEquals(note, only(Document.of("first.kettle", text)).finding().note());
  }

  private void checkFix(String title, Document document, Placed placed, String after) {
    List<Fix> fixes = placed.finding().fixes();
    Fix fix = fixes.stream()
        .filter(f -> f.title().equals(title))
        .findFirst()
        .orElseGet(() -> fail(
            "no fix `" + title + "` among " + fixes.stream().map(Fix::title).toList()));
    List<TextEdit> edits =
        fix.edits().stream().map(edit -> edit.shiftedBy(placed.offset())).toList();
    String mended = document.text().source().with(edits).text();
    assertEquals(after, mended);
    Document changed = Document.of("first.kettle", mended);
    assertTrue(
        findings(snapshot(List.of(changed)), changed).isEmpty(),
        () -> "still found in:\n" + mended);
  }

  private record Placed(Finding finding, int offset) {

    Span span() {
      return finding.span().shiftedBy(offset);
    }
  }

  private static Snapshot snapshot(List<Document> documents) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.addAll(documents);
    return Snapshot.of(Library.of(all), Today.DAY);
  }

  private static List<Document> documents(String drawn) {
    List<Document> documents = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    String uri = "first.kettle";
    for (String line : drawn.split("(?<=\n)")) {
      if (line.startsWith(FILE)) {
        documents.add(Document.of(uri, text.toString()));
        text.setLength(0);
        uri = line.substring(FILE.length()).strip();
      } else if (!MARK.matcher(line.stripTrailing()).matches()) {
        text.append(line);
      }
    }
    documents.add(Document.of(uri, text.toString()));
    return documents;
  }

  private List<Placed> findings(Snapshot snapshot, Document document) {
    List<Placed> findings = new ArrayList<>();
    for (Entry entry : document.entries()) {
      snapshot
          .result((e, scope) -> rule.check(new Subject(e, scope)), entry)
          .forEach(finding -> findings.add(new Placed(finding, entry.placed().offset())));
    }
    findings.sort(Comparator.<Placed>comparingInt(p -> p.span().start())
        .thenComparingInt(p -> p.span().end()));
    return findings;
  }

  private static String draw(Document document, List<Placed> findings) {
    StringBuilder drawn = new StringBuilder();
    var source = document.text().source();
    for (int line = 0; line < source.lineCount(); line++) {
      Span span = source.line(line);
      boolean last = line + 1 == source.lineCount();
      drawn.append(span.of(source.text())).append(last ? "" : "\n");
      for (Placed placed : findings) {
        if (source.lineAt(placed.span().start()) == line) {
          int column = placed.span().start() - span.start();
          int length = Math.max(
              1, Math.min(placed.span().end(), span.end()) - placed.span().start());
          drawn
              .append(" ".repeat(column))
              .append("^".repeat(length))
              .append(' ')
              .append(placed.finding().rule().id())
              .append(": ")
              .append(placed.finding().message())
              .append('\n');
        }
      }
    }
    return drawn.toString();
  }
}
