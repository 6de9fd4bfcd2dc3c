package dev.kettlemark.protocol;

import dev.kettlemark.files.KettleFolder;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.library.Library;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.function.Function;
import java.util.function.Supplier;
import org.eclipse.lsp4j.FileChangeType;
import org.eclipse.lsp4j.FileEvent;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.jsonrpc.CompletableFutures;
import org.eclipse.lsp4j.services.LanguageClient;
import org.jspecify.annotations.Nullable;

/**
 * What the server knows of its client: the libraries, the settings, and how requests are answered.
 *
 * <p>Changes come one at a time on the calling thread. A request takes the moment it arrives at and is
 * answered from it on another thread, so that answers and edits never meet.
 */
final class ServerState {

  private final ExecutorService workers;
  private final Libraries libraries;
  private volatile ClientTraits traits;
  private volatile Settings settings = Settings.USUAL;
  private volatile Publisher publisher;
  private final Supplier<LanguageClient> client;

  ServerState(ExecutorService workers, Supplier<LanguageClient> client, Supplier<LocalDate> today) {
    this.libraries = new Libraries(today);
    this.workers = workers;
    this.client = client;
    this.traits = ClientTraits.of(new InitializeParams());
    this.publisher = publisherFor(traits);
  }

  void initialize(InitializeParams params) {
    traits = ClientTraits.of(params);
    publisher = publisherFor(traits);
    settings = Settings.of(params.getInitializationOptions(), settings);
    if (params.getWorkspaceFolders() != null) {
      params.getWorkspaceFolders().forEach(this::addFolder);
    } else if (rootUri(params) != null) {
      addFolder(new WorkspaceFolder(rootUri(params), ""));
    }
  }

  @SuppressWarnings("deprecation") // Older clients name their only folder in this way.
  private static @Nullable String rootUri(InitializeParams params) {
    return params.getRootUri();
  }

  ClientTraits traits() {
    return traits;
  }

  Settings settings() {
    return settings;
  }

  LanguageClient client() {
    return client.get();
  }

  void set(Settings changed) {
    settings = changed;
  }

  void publishAll() {
    libraries.all().forEach(publisher::changed);
  }

  void addFolder(WorkspaceFolder folder) {
    Uris.path(folder.getUri()).ifPresent(path -> {
      libraries.addFolder(path);
      libraries.known(path).ifPresent(publisher::changed);
    });
  }

  void removeFolder(WorkspaceFolder folder) {
    Uris.path(folder.getUri()).ifPresent(libraries::removeFolder);
  }

  void open(TextDocumentItem item) {
    String key = Uris.key(item.getUri());
    LiveLibrary library = libraries.of(key);
    library.open(key, new Moment.OpenBuffer(item.getUri(), item.getVersion()), item.getText());
    publisher.changed(library);
  }

  void change(
      VersionedTextDocumentIdentifier identifier, List<TextDocumentContentChangeEvent> changes) {
    String key = Uris.key(identifier.getUri());
    LiveLibrary library = libraries.of(key);
    Moment.OpenBuffer before = library.moment().open().get(key);
    if (before == null) {
      return;
    }
    Integer version = identifier.getVersion();
    library.change(
        key,
        new Moment.OpenBuffer(before.uri(), version == null ? before.version() + 1 : version),
        changes.stream()
            .map(change -> ContentChange.edit(change, traits.positions()))
            .toList());
    publisher.changed(library);
  }

  void close(TextDocumentIdentifier identifier) {
    String key = Uris.key(identifier.getUri());
    LiveLibrary library = libraries.of(key);
    library.close(key);
    publisher.changed(library);
  }

  /** Files that appeared, changed or went; a folder that went takes its files along on the next event. */
  void onDisk(List<FileEvent> events) {
    for (FileEvent event : events) {
      Optional<Path> path = Uris.path(event.getUri()).filter(KettleFolder::isFormulaFile);
      path.flatMap(libraries::known).ifPresent(library -> {
        takeOver(library, path.orElseThrow(), event.getType());
        publisher.changed(library);
      });
    }
  }

  private static void takeOver(LiveLibrary library, Path path, FileChangeType type) {
    String key = Uris.key(path);
    if (type == FileChangeType.Deleted) {
      library.deletedOnDisk(key);
      return;
    }
    try {
      library.changedOnDisk(key, TextFile.read(path));
    } catch (IOException gone) {
      library.deletedOnDisk(key);
    }
  }

  /** Answers a request about a document from the moment it arrives at; empty for unknown documents. */
  <T> CompletableFuture<T> answer(
      TextDocumentIdentifier identifier, T nothing, Function<Scene, T> answer) {
    Optional<Scene> scene = scene(identifier.getUri());
    return scene.isEmpty()
        ? CompletableFuture.completedFuture(nothing)
        : compute(() -> answer.apply(scene.get()));
  }

  /** Answers a request to which there may be no answer. */
  <T> CompletableFuture<@Nullable T> answerIfAny(
      TextDocumentIdentifier identifier, Function<Scene, Optional<T>> answer) {
    Optional<Scene> scene = scene(identifier.getUri());
    return CompletableFutures.computeAsync(workers, cancelled -> {
      cancelled.checkCanceled();
      return scene.flatMap(answer).orElse(null);
    });
  }

  /** What a client asks about; empty for a document that no library holds. */
  Optional<Scene> scene(String uri) {
    String key = Uris.key(uri);
    Moment moment = libraries.of(key).moment();
    return moment.document(key).map(document -> new Scene(moment, document, traits));
  }

  /** What the library of a document holds on disk, whatever editors have not saved. */
  Library saved(String uri) {
    return libraries.of(Uris.key(uri)).saved(key -> Uris.path(key).flatMap(ServerState::read));
  }

  private static Optional<String> read(Path path) {
    try {
      return Optional.of(TextFile.read(path));
    } catch (IOException absent) {
      return Optional.empty();
    }
  }

  /** The present moment of every library. */
  List<Moment> moments() {
    return libraries.all().stream().map(LiveLibrary::moment).toList();
  }

  <T> CompletableFuture<T> compute(Supplier<T> answer) {
    return CompletableFutures.computeAsync(workers, cancelled -> {
      cancelled.checkCanceled();
      return answer.get();
    });
  }

  private Publisher publisherFor(ClientTraits who) {
    DiagnosticAdapter adapter = new DiagnosticAdapter(who.positions(), who.showsRelated());
    return new Publisher(workers, adapter, this::publish);
  }

  private void publish(PublishDiagnosticsParams diagnostics) {
    client.get().publishDiagnostics(diagnostics);
  }
}
