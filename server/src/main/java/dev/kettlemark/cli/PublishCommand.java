package dev.kettlemark.cli;

import dev.kettlemark.files.SiteFolder;
import dev.kettlemark.files.TextFile;
import dev.kettlemark.publishing.Manifest;
import dev.kettlemark.publishing.Publication;
import dev.kettlemark.publishing.Wanted;
import dev.kettlemark.sheets.SheetReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark publish}: a library as pages that need no program. */
@Command(
    name = "publish",
    header = "Write a library as pages: a list, sheets, comparisons and changes.",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "The pages stand alone: no network, no server, no other file; the list can be searched where"
          + " scripts run and is whole where they do not. Only what has changed is written, and only"
          + " what an earlier publication wrote is ever taken away.",
      "",
      "A released formula with an error is refused, and nothing is written then. A draft, and anything"
          + " else with an error, is marked as a draft on every page."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 published, 1 a released formula has errors, 2 the site cannot be written.",
      "",
      "Example:",
      "  kettlemark publish samples/gannet-slip --out site --for chef,production"
    })
final class PublishCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FOLDER", description = "The library.")
  private Path library = Path.of(".");

  @Option(
      names = "--out",
      required = true,
      paramLabel = "SITE",
      description = "The folder of the pages; made if it is not there.")
  private Path site = Path.of(".");

  @Option(
      names = "--for",
      split = ",",
      paramLabel = "READER",
      description = "chef, home, production or bench, or several; chef if not given.")
  private List<SheetReader> readers = List.of(SheetReader.CHEF);

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "en-GB, en-US, de-DE or fr-FR; en-GB if not given.")
  private String language = "en-GB";

  @Option(
      names = "--status",
      split = ",",
      paramLabel = "STATUS",
      description = "Only what has that status, such as released; all that is neither withdrawn nor"
          + " discontinued if not given.")
  private List<String> statuses = List.of();

  @Option(
      names = "--force",
      description = "Write every page anew, also over files that are not ours.")
  private boolean force;

  @Option(names = "--quiet", description = "Tell only what went wrong.")
  private boolean quiet;

  PublishCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Wanted wanted = new Wanted(
        readers.stream().distinct().toList(),
        Locale.forLanguageTag(language),
        Set.copyOf(statuses));
    // One day for all that follows, whatever becomes of the clock meanwhile.
    LocalDate today = terminal.today();
    SiteMemory memory = SiteMemory.of(library, wanted, today, site);
    if (!force && isAsItWas(memory)) {
      return ExitCode.DONE;
    }
    LibraryFolder folder = LibraryFolder.of(library, today);
    folder.problems().forEach(problem -> KettlemarkCommand.complain(terminal.err(), problem));
    Publication publication = Publication.of(folder.snapshot(), wanted)
        .orElseThrow(() -> new UsageMistake(
            "there are no words in `" + Visible.of(language) + "`; there are in en, de and fr"));
    publication
        .leftOut()
        .forEach(
            told -> KettlemarkCommand.complain(terminal.err(), "left out " + Visible.of(told)));
    if (!publication.refused().isEmpty()) {
      return refuse(publication);
    }
    try {
      SiteFolder pages = SiteFolder.open(site, library);
      tell(new SiteRun(pages, publication, terminal, today, force, quiet).publish());
      // A text that was saved meanwhile may be in the pages or not.
      boolean isStill = memory.isAs(SiteMemory.of(library, wanted, today, site));
      if (publication.leftOut().isEmpty() && isStill) {
        memory.remember(pages);
      }
    } catch (IOException failure) {
      throw new UsageMistake(
          "cannot publish to " + KettleFiles.shown(site) + ": " + TextFile.why(failure));
    }
    return ExitCode.DONE;
  }

  /** Whether the site was made from the very same and is untouched; then that is all there is to tell. */
  private boolean isAsItWas(SiteMemory memory) {
    if (!Files.isDirectory(site)) {
      return false;
    }
    try {
      Optional<Manifest> held = memory.holding(SiteFolder.open(site, library));
      held.ifPresent(manifest ->
          tell(SiteRun.told(manifest.items().size(), manifest.pages().size(), 0, 0)));
      return held.isPresent();
    } catch (IOException unreadable) {
      // What stands in the way is told by the run that writes.
      return false;
    }
  }

  private void tell(String told) {
    if (!quiet) {
      terminal.out().println(told);
    }
  }

  private Integer refuse(Publication publication) {
    KettlemarkCommand.complain(
        terminal.err(), "nothing was published, since these are released and have errors:");
    publication.refused().forEach(told -> terminal.err().println("  " + Visible.of(told)));
    return ExitCode.FOUND;
  }
}
