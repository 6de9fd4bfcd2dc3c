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
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.MessageType;
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
  private final Supplier<LanguageClient> client;
  private final Libraries libraries;
  private final Folders folders;
  private final Works works;
  private final Configuration configuration = new Configuration();
  private volatile ClientTraits traits;
  private volatile Connection connection;

  /**
   * What hangs on the abilities of the client.
   *
   * @param pages that it can open
   * @param pull what it fetched
   * @param announcer how it is told of changes
   */
  private record Connection(Pages pages, DiagnosticPull pull, Announcer announcer) {}

  ServerState(ExecutorService workers, Supplier<LanguageClient> client, Supplier<LocalDate> today) {
    this.workers = workers;
    this.client = client;
    this.libraries = new Libraries(today, this::log);
    this.works = new Works(workers, client);
    this.traits = ClientTraits.of(new InitializeParams());
    this.connection = connect(traits);
    this.folders = new Folders(libraries, works);
  }

  void initialize(InitializeParams params) {
    traits = ClientTraits.of(params);
    connection = connect(traits);
    var unused = configuration.take(params.getInitializationOptions());
    folders.named(params);
  }

  private Connection connect(ClientTraits who) {
    Pages pages = new Pages(who.plumbing().window().contents());
    DiagnosticAdapter adapter = new DiagnosticAdapter(
        who.positions(),
        who.showsRelated(),
        who.plumbing().describesCodes() ? pages::ofRule : rule -> Optional.empty());
    DiagnosticPull pull = new DiagnosticPull(adapter);
    Announcer announcer = who.plumbing().pulls().documents()
        ? new PullRefresh(workers, pull, () -> refreshDiagnostics(who))
        : new Publisher(workers, adapter, told -> client.get().publishDiagnostics(told));
    return new Connection(pages, pull, announcer);
  }

  private void refreshDiagnostics(ClientTraits who) {
    if (who.plumbing().pulls().refreshes()) {
      // The answer says only that the client has heard it.
      var unused = client.get().refreshDiagnostics();
    }
  }

  /** The client may be asked and told things from now on. */
  void begin() {
    openFolders();
    askForSettings();
    publishAll();
  }

  private void openFolders() {
    folders.open(traits.plumbing().window().progress(), this::warn);
  }

  /** Asks for settings, if the client can be asked. */
  void askForSettings() {
    if (traits.plumbing().asksForSettings()) {
      var unused = configuration.ask(client.get(), folders.spelled()).thenAccept(changed -> {
        if (changed) {
          refreshFigures();
        }
      });
    }
  }

  /** Takes over settings that the client sent; without any, it wants to be asked. */
  void settingsChanged(@Nullable Object sent) {
    if (Settings.isNothing(sent)) {
      askForSettings();
    } else if (configuration.take(sent)) {
      refreshFigures();
    }
  }

  private void refreshFigures() {
    if (traits.refreshesHints()) {
      var unused = client.get().refreshInlayHints();
    }
    if (traits.refreshesLenses()) {
      var unused = client.get().refreshCodeLenses();
    }
  }

  ClientTraits traits() {
    return traits;
  }

  /** The settings that hold for a document. */
  Settings settings(String uri) {
    return configuration.of(folders.spelledOf(libraries.key(uri)));
  }

  LanguageClient client() {
    return client.get();
  }

  Pages pages() {
    return connection.pages();
  }

  DiagnosticPull pull() {
    return connection.pull();
  }

  Works works() {
    return works;
  }

  void close() {
    connection.pages().close();
  }

  /** Tells the log of the client. */
  private void log(String message) {
    client.get().logMessage(new MessageParams(MessageType.Warning, message));
  }

  /** Tells the writer what cannot wait until somebody reads a log. */
  private void warn(String message) {
    client.get().showMessage(new MessageParams(MessageType.Warning, message));
  }

  void publishAll() {
    libraries.all().forEach(connection.announcer()::changed);
  }

  void addFolder(WorkspaceFolder folder) {
    folders.add(folder);
    openFolders();
    Uris.path(folder.getUri()).flatMap(libraries::known).ifPresent(connection.announcer()::changed);
  }

  void removeFolder(WorkspaceFolder folder) {
    folders.remove(folder);
  }

  void open(TextDocumentItem item) {
    openFolders();
    String key = libraries.key(item.getUri());
    LiveLibrary library = libraries.of(key);
    library.open(key, new Moment.OpenBuffer(item.getUri(), item.getVersion()), item.getText());
    connection.announcer().changed(library);
  }

  void change(
      VersionedTextDocumentIdentifier identifier, List<TextDocumentContentChangeEvent> changes) {
    String key = libraries.key(identifier.getUri());
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
    connection.announcer().changed(library);
  }

  void close(TextDocumentIdentifier identifier) {
    String key = libraries.key(identifier.getUri());
    LiveLibrary library = libraries.of(key);
    library.close(key);
    connection.announcer().changed(library);
  }

  /** Files and folders that appeared, changed or went. */
  void onDisk(List<FileEvent> events) {
    for (FileEvent event : events) {
      Optional<Path> path = Uris.path(event.getUri());
      path.flatMap(libraries::known).ifPresent(library -> {
        if (takeOver(library, path.orElseThrow(), event)) {
          connection.announcer().changed(library);
        }
      });
    }
  }

  /** Says whether the library may be another now. */
  private boolean takeOver(LiveLibrary library, Path path, FileEvent event) {
    boolean deleted = event.getType() == FileChangeType.Deleted;
    if (!KettleFolder.isFormulaFile(path)) {
      return deleted
          ? library.deletedBelow(Uris.key(path) + "/")
          : takeOverAll(library, KettleFolder.below(path, (unreadable, failure) -> {}));
    }
    String key = libraries.key(event.getUri());
    Optional<String> text = deleted ? Optional.empty() : libraries.read(path);
    text.ifPresentOrElse(
        present -> library.changedOnDisk(key, present), () -> library.deletedOnDisk(key));
    return true;
  }

  private boolean takeOverAll(LiveLibrary library, List<Path> files) {
    files.forEach(file ->
        libraries.read(file).ifPresent(text -> library.changedOnDisk(Uris.key(file), text)));
    return !files.isEmpty();
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

  /** What a client asks about, on the day on which it asks; empty for a document that no library holds. */
  Optional<Scene> scene(String uri) {
    String key = libraries.key(uri);
    LiveLibrary library = libraries.of(key);
    if (library.turnDay()) {
      connection.announcer().changed(library);
    }
    Moment moment = library.moment();
    return moment.document(key).map(document -> new Scene(moment, document, traits));
  }

  /** The library's spelling of a document. */
  String key(String uri) {
    return libraries.key(uri);
  }

  /** What the library of a document holds on disk, whatever editors have not saved. */
  Library saved(String uri) {
    return libraries.of(libraries.key(uri)).saved(key -> Uris.path(key).flatMap(ServerState::read));
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
}
