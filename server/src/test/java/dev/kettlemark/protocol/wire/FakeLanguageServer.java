package dev.kettlemark.protocol.wire;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.lsp4j.ConfigurationItem;
import org.eclipse.lsp4j.ConfigurationParams;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.services.JsonDelegate;
import org.eclipse.lsp4j.jsonrpc.services.JsonRequest;
import org.eclipse.lsp4j.jsonrpc.services.JsonSegment;
import org.eclipse.lsp4j.jsonrpc.validation.NonNull;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;
import org.jspecify.annotations.Nullable;

/**
 * A server that keeps texts, trusts every range that it is given, and misbehaves on demand.
 *
 * <p>It guards nothing, so whatever survives in a test was guarded by the wire.
 */
public final class FakeLanguageServer implements LanguageServer {

  private final Map<String, String> texts = new ConcurrentHashMap<>();
  private final AtomicReference<@Nullable LanguageClient> client = new AtomicReference<>();
  private final Probe probe = new Misbehaviour();

  void connect(LanguageClient newClient) {
    client.set(newClient);
  }

  private LanguageClient client() {
    return Objects.requireNonNull(client.get(), "connected before the first call");
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    return CompletableFuture.completedFuture(new InitializeResult(new ServerCapabilities()));
  }

  @Override
  public CompletableFuture<@Nullable Object> shutdown() {
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void exit() {}

  @JsonDelegate
  public Probe getProbe() {
    return probe;
  }

  @Override
  public TextDocumentService getTextDocumentService() {
    return new Documents();
  }

  @Override
  public WorkspaceService getWorkspaceService() {
    return new WorkspaceService() {
      @Override
      public void didChangeConfiguration(DidChangeConfigurationParams params) {}

      @Override
      public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {}
    };
  }

  private final class Documents implements TextDocumentService {

    @Override
    public void didOpen(DidOpenTextDocumentParams params) {
      var document = params.getTextDocument();
      put(document.getUri(), document.getText(), document.getVersion());
    }

    @Override
    public void didChange(DidChangeTextDocumentParams params) {
      String uri = params.getTextDocument().getUri();
      String text = Objects.requireNonNull(texts.get(uri), "not open");
      for (TextDocumentContentChangeEvent change : params.getContentChanges()) {
        Range range = change.getRange();
        text = range == null
            ? change.getText()
            : text.substring(0, offset(text, range.getStart()))
                + change.getText()
                + text.substring(offset(text, range.getEnd()));
      }
      put(uri, text, params.getTextDocument().getVersion());
    }

    private void put(String uri, String text, int version) {
      texts.put(uri, text);
      client().publishDiagnostics(new PublishDiagnosticsParams(uri, List.of(), version));
    }

    @Override
    public void didClose(DidCloseTextDocumentParams params) {
      texts.remove(params.getTextDocument().getUri());
    }

    @Override
    public void didSave(DidSaveTextDocumentParams params) {}

    /** Answers with the text behind the position. */
    @Override
    public CompletableFuture<@Nullable Hover> hover(HoverParams params) {
      String text = texts.get(params.getTextDocument().getUri());
      Hover hover = text == null
          ? null
          : new Hover(
              new MarkupContent("plaintext", text.substring(offset(text, params.getPosition()))));
      return CompletableFuture.completedFuture(hover);
    }

    private static int offset(String text, Position position) {
      int start = 0;
      for (int line = 0; line < position.getLine(); line++) {
        start = text.indexOf('\n', start) + 1;
      }
      return start + position.getCharacter();
    }
  }

  /** What a probe is asked to do. */
  public static final class Order {
    private @Nullable String text;
    private int size;

    @NonNull
    String getText() {
      return Objects.requireNonNullElse(text, "");
    }
  }

  /** Requests outside LSP, as an own extension would declare them. */
  @JsonSegment("probe")
  public interface Probe {

    @JsonRequest
    CompletableFuture<String> echo(Order order);

    @JsonRequest
    CompletableFuture<String> large(Order order);

    @JsonRequest
    CompletableFuture<String> never();

    @JsonRequest
    CompletableFuture<String> block(Order order) throws InterruptedException;

    @JsonRequest
    CompletableFuture<String> ask() throws Exception;

    @JsonRequest
    CompletableFuture<Object> circle();

    @JsonRequest
    CompletableFuture<Object> notNumber();

    @JsonRequest
    CompletableFuture<String> nothing();

    @JsonRequest
    CompletableFuture<String> fail(Order order) throws Exception;
  }

  private final class Misbehaviour implements Probe {

    @Override
    public CompletableFuture<String> echo(Order order) {
      return CompletableFuture.completedFuture(order.getText());
    }

    @Override
    public CompletableFuture<String> large(Order order) {
      return CompletableFuture.completedFuture("x".repeat(order.size));
    }

    @Override
    public CompletableFuture<String> never() {
      return new CompletableFuture<>();
    }

    @Override
    public CompletableFuture<String> block(Order order) throws InterruptedException {
      TimeUnit.MILLISECONDS.sleep(order.size);
      return CompletableFuture.completedFuture("woke");
    }

    /** Waits on the calling thread, as nobody should. */
    @Override
    public CompletableFuture<String> ask() throws Exception {
      ConfigurationItem item = new ConfigurationItem();
      item.setSection("colour");
      List<Object> values =
          client().configuration(new ConfigurationParams(List.of(item))).get(5, TimeUnit.SECONDS);
      return CompletableFuture.completedFuture(values.toString());
    }

    @Override
    public CompletableFuture<Object> circle() {
      Object[] circle = new Object[1];
      circle[0] = circle;
      return CompletableFuture.completedFuture(circle);
    }

    @Override
    public CompletableFuture<Object> notNumber() {
      return CompletableFuture.completedFuture(Double.NaN);
    }

    @Override
    @SuppressWarnings("NullAway") // The missing future is the misbehaviour.
    public CompletableFuture<String> nothing() {
      return null;
    }

    @Override
    public CompletableFuture<String> fail(Order order) throws Exception {
      switch (order.getText()) {
        case "exception" -> throw new IllegalArgumentException("secret detail");
        case "checked" -> throw new Exception("secret detail");
        case "unsupported" -> List.of().add(1);
        case "stack" -> order.size = overflow(1);
        case "memory" -> throw new OutOfMemoryError("secret detail");
        case "assertion" -> throw new AssertionError("secret detail");
        case "later" -> {
          return CompletableFuture.supplyAsync(() -> {
            throw new IllegalStateException("secret detail");
          });
        }
        default ->
          throw new ResponseErrorException(
              new ResponseError(ResponseErrorCode.RequestFailed, "told the client", null));
      }
      return CompletableFuture.completedFuture("survived");
    }

    private int overflow(int depth) {
      return depth == 0 ? 0 : overflow(depth + 1) + 1;
    }
  }
}
