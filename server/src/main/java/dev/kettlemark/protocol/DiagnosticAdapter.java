package dev.kettlemark.protocol;

import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Related;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Severity;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Place;
import dev.kettlemark.protocol.wire.ResentDiagnostic;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticCodeDescription;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Findings as diagnostics. */
final class DiagnosticAdapter {

  static final String SOURCE = "kettlemark";

  private final Positions positions;
  private final boolean showsRelated;
  private final Function<String, Optional<String>> pages;

  /** What was told last of each section of a document. */
  private final Map<String, List<Told>> told = new ConcurrentHashMap<>();

  /**
   * The findings of a section, on the line where it started.
   *
   * @param findings the very list of which the diagnostics were made
   */
  private record Told(List<Finding> findings, int line, List<Diagnostic> diagnostics) {

    /** Where a finding leads elsewhere, that place may have moved. */
    @SuppressWarnings("ReferenceEquality")
    boolean isOf(List<Finding> others, int start) {
      return findings == others
          && line == start
          && findings.stream().allMatch(finding -> finding.related().isEmpty());
    }
  }

  /**
   * Converts for one client.
   *
   * @param pages where the page of a rule can be read; empty for a client that shows no links
   */
  DiagnosticAdapter(
      Positions positions, boolean showsRelated, Function<String, Optional<String>> pages) {
    this.positions = positions;
    this.showsRelated = showsRelated;
    this.pages = pages;
  }

  List<Diagnostic> diagnostics(Moment moment, Document document, Work work) {
    List<Told> before = told.getOrDefault(document.uri(), List.of());
    List<Told> now = new ArrayList<>();
    List<Diagnostic> diagnostics = new ArrayList<>();
    for (Entry entry : document.entries()) {
      work.check();
      List<Finding> findings = Rules.of(moment.snapshot(), entry);
      int line = document.text().source().lineAt(entry.placed().offset());
      int index = now.size();
      Told section = index < before.size() && before.get(index).isOf(findings, line)
          ? before.get(index)
          : new Told(findings, line, diagnostics(moment, document, entry, findings));
      now.add(section);
      diagnostics.addAll(section.diagnostics());
    }
    told.put(document.uri(), now);
    if (!now.equals(before) && !moment.open().containsKey(document.uri())) {
      // Of a file that nobody has open, all but its findings can be computed again.
      moment.snapshot().letGo(document);
    }
    return diagnostics;
  }

  private List<Diagnostic> diagnostics(
      Moment moment, Document document, Entry entry, List<Finding> findings) {
    return findings.stream()
        .map(finding -> diagnostic(moment, document, entry, finding))
        .toList();
  }

  private Diagnostic diagnostic(Moment moment, Document document, Entry entry, Finding finding) {
    Diagnostic diagnostic = new ResentDiagnostic();
    diagnostic.setRange(positions.firstLine(
        document.text().source(), entry.place(finding.span()).span()));
    diagnostic.setSeverity(severity(finding.severity()));
    diagnostic.setCode(Either.forLeft(finding.rule().id()));
    pages
        .apply(finding.rule().id())
        .ifPresent(page -> diagnostic.setCodeDescription(new DiagnosticCodeDescription(page)));
    diagnostic.setSource(SOURCE);
    diagnostic.setMessage(message(finding));
    List<DiagnosticRelatedInformation> related = related(moment, finding);
    if (showsRelated && !related.isEmpty()) {
      diagnostic.setRelatedInformation(related);
    }
    return diagnostic;
  }

  static String message(Finding finding) {
    return finding.note().isEmpty() ? finding.message() : finding.message() + "\n" + finding.note();
  }

  private List<DiagnosticRelatedInformation> related(Moment moment, Finding finding) {
    List<DiagnosticRelatedInformation> places = new ArrayList<>();
    for (Related related : finding.related()) {
      Optional<Place> place = moment.library().place(related.origin());
      place
          .flatMap(p -> moment.document(p.uri()).map(d -> location(moment, d, p)))
          .ifPresent(location ->
              places.add(new DiagnosticRelatedInformation(location, related.message())));
    }
    return places;
  }

  private Location location(Moment moment, Document document, Place place) {
    return new Location(
        moment.clientUri(place.uri()), positions.firstLine(document.text().source(), place.span()));
  }

  private static DiagnosticSeverity severity(Severity severity) {
    return switch (severity) {
      case ERROR -> DiagnosticSeverity.Error;
      case WARNING -> DiagnosticSeverity.Warning;
      case INFORMATION -> DiagnosticSeverity.Information;
      case HINT -> DiagnosticSeverity.Hint;
    };
  }
}
