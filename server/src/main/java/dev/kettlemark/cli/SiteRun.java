package dev.kettlemark.cli;

import dev.kettlemark.files.SiteFolder;
import dev.kettlemark.publishing.Manifest;
import dev.kettlemark.publishing.Page;
import dev.kettlemark.publishing.Publication;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/** One publication on its way to the disk. */
final class SiteRun {

  private final SiteFolder folder;
  private final Publication publication;
  private final Terminal terminal;
  private final LocalDate today;
  private final boolean force;
  private final ProgressBar progress;
  private final Map<String, Manifest.Written> written = new ConcurrentHashMap<>();
  private final Set<String> changed = ConcurrentHashMap.newKeySet();
  private final Set<String> news = ConcurrentHashMap.newKeySet();

  SiteRun(
      SiteFolder folder,
      Publication publication,
      Terminal terminal,
      LocalDate today,
      boolean force,
      boolean quiet) {
    this.folder = folder;
    this.publication = publication;
    this.terminal = terminal;
    this.today = today;
    this.force = force;
    this.progress = new ProgressBar(terminal, publication.pages().size() + 2, quiet);
  }

  /** Writes what must be written, and tells it in one line. */
  String publish() throws IOException {
    Manifest before = manifest();
    List<Page> pages = publication.pages();
    foreign(pages, before);
    claim(pages, before);
    try {
      pages.parallelStream().forEach(page -> put(page, before));
    } catch (UncheckedIOException failure) {
      throw failure.getCause();
    }
    put(publication.list(), before);
    changes(before);
    int removed = remove(before);
    progress.end();
    Manifest after = new Manifest(written, publication.rows());
    folder.put(Manifest.FILE, after.text(), false);
    return told(publication.count(), written.size(), changed.size(), removed);
  }

  static String told(int items, int pages, int written, int removed) {
    return "%d formulas and products, %d pages: %d written, %d unchanged, %d removed"
        .formatted(items, pages, written, pages - written, removed);
  }

  private Manifest manifest() throws IOException {
    String text = folder.read(Manifest.FILE).orElse("");
    if (text.isEmpty()) {
      return Manifest.NONE;
    }
    return Manifest.of(text)
        .orElseThrow(
            () -> new IOException(Manifest.FILE + " in it is not ours; choose another folder"));
  }

  /** What stands in the place of a page and was not written by us is nobody's to overwrite. */
  private void foreign(List<Page> pages, Manifest before) throws IOException {
    if (force) {
      return;
    }
    List<String> foreign = new ArrayList<>();
    List<String> paths = new ArrayList<>(pages.stream().map(Page::path).toList());
    paths.add(publication.list().path());
    paths.add(Publication.CHANGES);
    for (String path : paths) {
      if (before.page(path).isEmpty() && folder.holds(path)) {
        foreign.add(path);
      }
    }
    if (!foreign.isEmpty()) {
      throw new IOException("it holds files that no publication wrote: "
          + String.join(", ", foreign.stream().limit(5).toList())
          + "; --force writes over them");
    }
  }

  /** Notes down what will be written before it is, so that a run that breaks off leaves nothing foreign. */
  private void claim(List<Page> pages, Manifest before) throws IOException {
    Map<String, Manifest.Written> claimed = new TreeMap<>(before.pages());
    Manifest.Written nothing = new Manifest.Written("", LocalDate.EPOCH);
    boolean isNew = false;
    List<String> paths = new ArrayList<>(pages.stream().map(Page::path).toList());
    paths.add(publication.list().path());
    paths.add(Publication.CHANGES);
    for (String path : paths) {
      isNew |= claimed.putIfAbsent(path, nothing) == null;
    }
    if (isNew) {
      folder.put(Manifest.FILE, new Manifest(claimed, before.items()).text(), false);
    }
  }

  private void put(Page page, Manifest before) {
    try {
      Page.Made made = page.made(before, today);
      written.put(page.path(), made.written());
      if (folder.put(page.path(), made.text(), force)) {
        changed.add(page.path());
      }
      boolean isNews = before.page(page.path()).filter(made.written()::equals).isEmpty();
      if (isNews && !page.item().isEmpty()) {
        news.add(page.item());
      }
      progress.step();
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  /** A publication that changes nothing leaves the page of changes as the last one wrote it. */
  private void changes(Manifest before) throws IOException {
    if (publication.isNews(before, news) || !folder.holds(Publication.CHANGES)) {
      put(publication.changes(before, news), before);
    } else {
      before.page(Publication.CHANGES).ifPresent(old -> written.put(Publication.CHANGES, old));
    }
  }

  /** Takes away what an earlier publication wrote and this one does not, unless somebody has changed it. */
  private int remove(Manifest before) throws IOException {
    int removed = 0;
    for (Map.Entry<String, Manifest.Written> old : before.pages().entrySet()) {
      String path = old.getKey();
      if (written.containsKey(path) || !folder.holds(path)) {
        continue;
      }
      String text = folder.read(path).orElse("");
      if (Manifest.hash(text).equals(old.getValue().hash())) {
        folder.remove(path);
        removed++;
      } else {
        KettlemarkCommand.complain(
            terminal.err(), path + " is published no more, but was changed by hand and stays");
      }
    }
    return removed;
  }
}
