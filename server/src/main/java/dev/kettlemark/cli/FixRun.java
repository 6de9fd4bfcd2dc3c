package dev.kettlemark.cli;

import dev.kettlemark.checks.SafeFixes;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.library.Document;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Mends files where nothing else can be meant, and says what it does. */
final class FixRun {

  private final PrintWriter out;
  private final Paint paint;
  private final boolean dry;
  private final Cores cores;
  private final List<String> problems = new ArrayList<>();
  private int changed;

  /** A document with something to mend. */
  private record Mending(LibraryFolder folder, Document document, SafeFixes fixes) {

    static Optional<Mending> of(LibraryFolder folder, Document document) {
      return Optional.of(SafeFixes.of(folder.snapshot(), document))
          .filter(fixes -> !fixes.applied().isEmpty())
          .map(fixes -> new Mending(folder, document, fixes));
    }
  }

  /**
   * Prepares a run.
   *
   * @param dry whether to show what would change, and to write nothing
   * @param cores look for what to mend
   */
  FixRun(PrintWriter out, Paint paint, boolean dry, Cores cores) {
    this.out = out;
    this.paint = paint;
    this.dry = dry;
    this.cores = cores;
  }

  void mend(List<LibraryFolder> folders) {
    for (LibraryFolder folder : folders) {
      problems.addAll(folder.problems());
      cores.map(folder.documents(), document -> Mending.of(folder, document)).stream()
          .flatMap(Optional::stream)
          .forEach(this::mend);
    }
    out.println(changed == 0 ? "Nothing to fix." : summary());
  }

  /** What could not be read or written, in plain words. */
  List<String> problems() {
    return List.copyOf(problems);
  }

  /** How many files were changed, or would be. */
  int changed() {
    return changed;
  }

  private void mend(Mending mending) {
    LibraryFolder folder = mending.folder();
    Document document = mending.document();
    SafeFixes fixes = mending.fixes();
    String before = document.text().source().text();
    String after = fixes.document().text().source().text();
    if (dry) {
      LayoutDiff.of(folder.shown(document.uri()), before, after).forEach(this::printDiff);
      changed++;
      return;
    }
    Path file = folder.paths().get(document.uri());
    if (file == null) {
      return;
    }
    try {
      TextFile.write(file, after);
      changed++;
      fixes.applied().forEach(fix -> tell(folder, document, fix));
    } catch (IOException failure) {
      problems.add(KettleFiles.cannot("write", file, failure));
    }
  }

  /** Fixes of a later round stand in a text that the terminal never saw, so they name only the file. */
  private void tell(LibraryFolder folder, Document document, SafeFixes.Applied fix) {
    String path = folder.shown(document.uri());
    String address = fix.round() == 0
        ? PlacedFinding.address(path, document.text().source(), fix.span().start())
        : path;
    out.println(paint.bold(address) + "  " + paint.good("fixed") + "  "
        + paint.faint(fix.finding().rule().id()) + "  " + Visible.of(fix.fix().title()));
  }

  private void printDiff(String line) {
    String shown = Visible.of(line);
    out.println(
        line.startsWith("+") ? paint.good(shown) : line.startsWith("-") ? paint.bad(shown) : shown);
  }

  private String summary() {
    String files = changed + (changed == 1 ? " file" : " files");
    return files + (dry ? " would change." : " changed.");
  }
}
