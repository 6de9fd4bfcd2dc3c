package dev.kettlemark.protocol;

import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import org.eclipse.lsp4j.ApplyWorkspaceEditParams;
import org.eclipse.lsp4j.ApplyWorkspaceEditResponse;
import org.eclipse.lsp4j.ConfigurationItem;
import org.eclipse.lsp4j.ConfigurationParams;
import org.eclipse.lsp4j.LogTraceParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.ProgressParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Registration;
import org.eclipse.lsp4j.RegistrationParams;
import org.eclipse.lsp4j.ShowDocumentParams;
import org.eclipse.lsp4j.ShowDocumentResult;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.WorkDoneProgressCreateParams;
import org.eclipse.lsp4j.services.LanguageClient;

/** An editor's side that keeps what it is told and asked, in order, for tests to take out. */
final class RecordingClient implements LanguageClient {

  private static final long PATIENCE_SECONDS = 20;

  final BlockingQueue<PublishDiagnosticsParams> told = new LinkedBlockingQueue<>();
  final BlockingQueue<ProgressParams> progress = new LinkedBlockingQueue<>();
  final BlockingQueue<WorkDoneProgressCreateParams> created = new LinkedBlockingQueue<>();
  final BlockingQueue<ShowDocumentParams> shown = new LinkedBlockingQueue<>();
  final BlockingQueue<ApplyWorkspaceEditParams> applied = new LinkedBlockingQueue<>();
  final BlockingQueue<Registration> registered = new LinkedBlockingQueue<>();
  final BlockingQueue<List<ConfigurationItem>> asked = new LinkedBlockingQueue<>();
  final BlockingQueue<String> refreshed = new LinkedBlockingQueue<>();
  final BlockingQueue<LogTraceParams> traced = new LinkedBlockingQueue<>();
  final BlockingQueue<MessageParams> logged = new LinkedBlockingQueue<>();
  final BlockingQueue<MessageParams> messages = new LinkedBlockingQueue<>();
  volatile Function<ConfigurationItem, Object> settings = item -> "";

  /** The next thing of a kind; a failure if it does not come. */
  static <T> T next(BlockingQueue<T> queue) throws InterruptedException {
    T next = queue.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (next == null) {
      throw new AssertionError("the server told nothing");
    }
    return next;
  }

  @Override
  public void publishDiagnostics(PublishDiagnosticsParams diagnostics) {
    told.add(diagnostics);
  }

  @Override
  public void telemetryEvent(Object object) {
    throw new AssertionError("the server sends nothing about its user");
  }

  @Override
  public void showMessage(MessageParams message) {
    messages.add(message);
  }

  @Override
  public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams request) {
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void logMessage(MessageParams message) {
    logged.add(message);
  }

  @Override
  public void logTrace(LogTraceParams params) {
    traced.add(params);
  }

  @Override
  public void notifyProgress(ProgressParams params) {
    progress.add(params);
  }

  @Override
  public CompletableFuture<Void> createProgress(WorkDoneProgressCreateParams params) {
    created.add(params);
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public CompletableFuture<ShowDocumentResult> showDocument(ShowDocumentParams params) {
    shown.add(params);
    return CompletableFuture.completedFuture(new ShowDocumentResult(true));
  }

  @Override
  public CompletableFuture<ApplyWorkspaceEditResponse> applyEdit(ApplyWorkspaceEditParams params) {
    applied.add(params);
    return CompletableFuture.completedFuture(new ApplyWorkspaceEditResponse(true));
  }

  @Override
  public CompletableFuture<Void> registerCapability(RegistrationParams params) {
    registered.addAll(params.getRegistrations());
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public CompletableFuture<List<Object>> configuration(ConfigurationParams params) {
    asked.add(params.getItems());
    return CompletableFuture.completedFuture(
        params.getItems().stream().map(settings).toList());
  }

  @Override
  public CompletableFuture<Void> refreshDiagnostics() {
    return refreshed("diagnostics");
  }

  @Override
  public CompletableFuture<Void> refreshInlayHints() {
    return refreshed("hints");
  }

  @Override
  public CompletableFuture<Void> refreshCodeLenses() {
    return refreshed("lenses");
  }

  private CompletableFuture<Void> refreshed(String what) {
    refreshed.add(what);
    return CompletableFuture.completedFuture(null);
  }
}
