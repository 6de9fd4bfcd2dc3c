package dev.kettlemark.protocol;

import dev.kettlemark.library.Document;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DocumentDiagnosticReport;
import org.eclipse.lsp4j.FullDocumentDiagnosticReport;
import org.eclipse.lsp4j.PreviousResultId;
import org.eclipse.lsp4j.RelatedFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.RelatedUnchangedDocumentDiagnosticReport;
import org.eclipse.lsp4j.UnchangedDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceFullDocumentDiagnosticReport;
import org.eclipse.lsp4j.WorkspaceUnchangedDocumentDiagnosticReport;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.jspecify.annotations.Nullable;

/** Findings for a client that fetches them, and what it was told last. */
final class DiagnosticPull {

  private final DiagnosticAdapter adapter;
  private final Map<String, Told> told = new ConcurrentHashMap<>();

  /**
   * What a client knows of a document.
   *
   * @param document the text it knows it of
   * @param resultId the name of the findings it has
   */
  record Told(Document document, String resultId) {}

  /** The findings of a document and their name. */
  private record Answer(List<Diagnostic> diagnostics, String resultId) {

    FullDocumentDiagnosticReport full() {
      FullDocumentDiagnosticReport report = new FullDocumentDiagnosticReport(diagnostics);
      report.setResultId(resultId);
      return report;
    }
  }

  DiagnosticPull(DiagnosticAdapter adapter) {
    this.adapter = adapter;
  }

  Optional<Told> told(String key) {
    return Optional.ofNullable(told.get(key));
  }

  /** The name that the findings of a document have now. */
  String resultId(Moment moment, Document document, Work work) {
    return ResultId.of(adapter.diagnostics(moment, document, work));
  }

  /**
   * The findings of a document.
   *
   * @param previous the name of what the client has
   * @param related whether to tell of other open documents whose findings are new
   */
  DocumentDiagnosticReport document(
      Scene scene, @Nullable String previous, boolean related, Work work) {
    Answer answer = answer(scene.moment(), scene.document(), work);
    Map<String, Either<FullDocumentDiagnosticReport, UnchangedDocumentDiagnosticReport>> others =
        related ? others(scene, work) : Map.of();
    if (answer.resultId().equals(previous)) {
      RelatedUnchangedDocumentDiagnosticReport report =
          new RelatedUnchangedDocumentDiagnosticReport(answer.resultId());
      if (!others.isEmpty()) {
        report.setRelatedDocuments(others);
      }
      return new DocumentDiagnosticReport(report);
    }
    RelatedFullDocumentDiagnosticReport report =
        new RelatedFullDocumentDiagnosticReport(answer.diagnostics());
    report.setResultId(answer.resultId());
    if (!others.isEmpty()) {
      report.setRelatedDocuments(others);
    }
    return new DocumentDiagnosticReport(report);
  }

  /** Other open documents that the client knows and that an edit of this one gave other findings. */
  private Map<String, Either<FullDocumentDiagnosticReport, UnchangedDocumentDiagnosticReport>>
      others(Scene scene, Work work) {
    Map<String, Either<FullDocumentDiagnosticReport, UnchangedDocumentDiagnosticReport>> others =
        new LinkedHashMap<>();
    Moment moment = scene.moment();
    for (String key : moment.open().keySet()) {
      Told before = told.get(key);
      Optional<Document> document = moment.document(key);
      if (before != null && document.isPresent() && !key.equals(scene.document().uri())) {
        Answer now = answer(moment, document.get(), work);
        if (!now.resultId().equals(before.resultId())) {
          others.put(moment.clientUri(key), Either.forLeft(now.full()));
        }
      }
    }
    return others;
  }

  /**
   * The findings of all documents.
   *
   * @param known what the client has, by the library's spelling of its document
   * @param parts takes reports as they come
   */
  List<WorkspaceDocumentDiagnosticReport> workspace(
      List<Moment> moments,
      Map<String, PreviousResultId> known,
      Optional<Consumer<List<WorkspaceDocumentDiagnosticReport>>> parts,
      Work work) {
    Map<String, PreviousResultId> previous = new HashMap<>(known);
    List<Job> jobs = new ArrayList<>();
    for (Moment moment : moments) {
      moment
          .snapshot()
          .library()
          .ownDocuments()
          .forEach(document -> jobs.add(
              new Job(moment, document, Optional.ofNullable(previous.remove(document.uri())))));
    }
    List<WorkspaceDocumentDiagnosticReport> gone =
        previous.values().stream().map(DiagnosticPull::gone).toList();
    parts.filter(taker -> !gone.isEmpty()).ifPresent(taker -> taker.accept(gone));
    List<WorkspaceDocumentDiagnosticReport> reports =
        new ArrayList<>(work.forEach(jobs, job -> List.of(report(job, work)), parts));
    if (parts.isEmpty()) {
      reports.addAll(gone);
    }
    return reports;
  }

  /** A document to be reported, and what the client has of it. */
  private record Job(Moment moment, Document document, Optional<PreviousResultId> previous) {}

  private WorkspaceDocumentDiagnosticReport report(Job job, Work work) {
    Answer answer = answer(job.moment(), job.document(), work);
    String uri = job.moment().clientUri(job.document().uri());
    Moment.OpenBuffer buffer = job.moment().open().get(job.document().uri());
    Integer version = buffer == null ? null : buffer.version();
    if (job.previous().filter(p -> p.getValue().equals(answer.resultId())).isPresent()) {
      return new WorkspaceDocumentDiagnosticReport(
          new WorkspaceUnchangedDocumentDiagnosticReport(answer.resultId(), uri, version));
    }
    WorkspaceFullDocumentDiagnosticReport report =
        new WorkspaceFullDocumentDiagnosticReport(answer.diagnostics(), uri, version);
    report.setResultId(answer.resultId());
    return new WorkspaceDocumentDiagnosticReport(report);
  }

  private static WorkspaceDocumentDiagnosticReport gone(PreviousResultId known) {
    return new WorkspaceDocumentDiagnosticReport(
        new WorkspaceFullDocumentDiagnosticReport(List.of(), known.getUri(), null));
  }

  private Answer answer(Moment moment, Document document, Work work) {
    List<Diagnostic> diagnostics = adapter.diagnostics(moment, document, work);
    Answer answer = new Answer(diagnostics, ResultId.of(diagnostics));
    told.put(document.uri(), new Told(document, answer.resultId()));
    return answer;
  }
}
