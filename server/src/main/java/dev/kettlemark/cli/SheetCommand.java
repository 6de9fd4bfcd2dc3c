package dev.kettlemark.cli;

import dev.kettlemark.files.TextFile;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.reading.Suggestions;
import dev.kettlemark.sheets.SheetContent;
import dev.kettlemark.sheets.SheetCsv;
import dev.kettlemark.sheets.SheetHtml;
import dev.kettlemark.sheets.SheetJson;
import dev.kettlemark.sheets.SheetMarkdown;
import dev.kettlemark.sheets.SheetReader;
import dev.kettlemark.sheets.SheetRequest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.hipparchus.fraction.BigFraction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark sheet}: a sheet for one reader. */
@Command(
    name = "sheet",
    header = "Write the sheet of a formula or product for a chef, a home cook or a line.",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "NAME is a sheet of the library, or a formula or product together with --for. All sheets of one"
          + " formula are made of the same figures; what is not known is said to be unknown, and what is"
          + " estimated carries its band. It is a draft: check it against current local law."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 written, 2 there is no such sheet or it cannot be worked out.",
      "",
      "Examples, in samples/gannet-slip:",
      "  kettlemark sheet heather-bench --format html --out heather.html",
      "  kettlemark sheet heather-nougat --for production --batch 50kg",
      "  kettlemark sheet caramel-dome --for home --language en-US --pieces 12",
      "  kettlemark sheet orchard-line --format pdf --out orchard.pdf"
    })
final class SheetCommand implements Callable<Integer> {

  /** How the sheet is written. */
  enum Format {
    HTML,
    MARKDOWN,
    CSV,
    JSON,
    PDF
  }

  /** What a PDF is printed on. */
  enum Paper {
    A4,
    LETTER;

    /** As CSS Paged Media names it. */
    String size() {
      return this == A4 ? "A4" : "letter";
    }
  }

  private final Terminal terminal;

  @Parameters(paramLabel = "NAME", description = "The name of a sheet, a formula or a product.")
  private String name = "";

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = "--for",
      paramLabel = "READER",
      description = "chef, home, production or bench; what the sheet says if not given.")
  private Optional<SheetReader> reader = Optional.empty();

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "en-GB, en-US, de-DE or fr-FR; what the sheet says if not given.")
  private Optional<String> language = Optional.empty();

  @Option(names = "--pieces", paramLabel = "COUNT", description = "For so many pieces.")
  private Optional<String> pieces = Optional.empty();

  @Option(
      names = "--batch",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "For so much weighed in, as 5kg; for a formula.")
  private Optional<String> batch = Optional.empty();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description =
          "html, markdown or pdf for the sheet, csv or json for its figures; html if not given."
              + " A pdf is printed by the Chromium or Chrome of this machine, without a network.")
  private Format format = Format.HTML;

  @Option(
      names = "--paper",
      paramLabel = "SIZE",
      description =
          "a4 or letter, for a pdf; letter for American sheets and a4 for others if not given.")
  private Optional<Paper> paper = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write to a file; to the terminal if not given.")
  private Optional<Path> out = Optional.empty();

  SheetCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    LibraryFolder folder = library.read(terminal);
    SheetContent sheet = SheetContent.of(folder.snapshot(), request(folder))
        .fold(known -> known, unknown -> {
          throw new UsageMistake(
              "there is no sheet of `" + Visible.of(name) + "`: " + Visible.of(unknown.because()));
        });
    if (format == Format.PDF) {
      print(sheet);
    } else {
      write(text(sheet));
    }
    return ExitCode.DONE;
  }

  private String text(SheetContent sheet) {
    return switch (format) {
      case HTML, PDF -> SheetHtml.of(sheet);
      case MARKDOWN -> SheetMarkdown.of(sheet);
      case CSV -> SheetCsv.of(sheet);
      case JSON -> SheetJson.of(sheet);
    };
  }

  private void print(SheetContent sheet) {
    Path file = out.orElseThrow(
        () -> new UsageMistake("a pdf goes into a file; name it with --out, as --out sheet.pdf"));
    Locale locale = sheet.head().request().locale();
    Paper size = paper.orElse(locale.getCountry().equals("US") ? Paper.LETTER : Paper.A4);
    PrintingBrowser.found().print(SheetHtml.onPaper(sheet, size.size()), file);
  }

  private void write(String text) {
    if (out.isEmpty()) {
      terminal.out().print(text);
      return;
    }
    try {
      if (!Files.exists(out.get())) {
        Files.createFile(out.get());
      }
      TextFile.write(out.get(), text);
    } catch (IOException failure) {
      throw new UsageMistake(KettleFiles.cannot("write", out.get(), failure));
    }
  }

  private SheetRequest request(LibraryFolder folder) {
    SheetRequest request = declared(folder.snapshot()).orElseGet(() -> undeclared(folder));
    request = reader.map(request::forReader).orElse(request);
    request = locale().map(request::in).orElse(request);
    return size().map(request::making).orElse(request);
  }

  private Optional<SheetRequest> declared(Snapshot snapshot) {
    Optional<Sheet> sheet = snapshot
        .library()
        .find(Kind.SHEET, name)
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof Sheet found ? Optional.of(found) : Optional.empty());
    return sheet.map(found -> SheetRequest.of(found)
        .orElseThrow(() -> new UsageMistake("`" + Visible.of(name)
            + "` does not say what it shows and for whom; run check to see why")));
  }

  private SheetRequest undeclared(LibraryFolder folder) {
    boolean isKnown = NamedEntry.isFormulaOrProduct(folder, name);
    if (isKnown && reader.isPresent()) {
      return SheetRequest.of(name, reader.get(), Locale.UK);
    }
    if (isKnown) {
      throw new UsageMistake("`" + Visible.of(name)
          + "` is no sheet; say for whom it is made, with --for chef, home, production or bench");
    }
    List<String> names = new ArrayList<>(folder.snapshot().library().names(Kind.SHEET));
    names.addAll(NamedEntry.formulaNames(folder));
    names.addAll(folder.snapshot().library().names(Kind.PRODUCT));
    throw new UsageMistake("no sheet, formula or product is named `" + Visible.of(name) + "`"
        + Suggestions.sentence(name, names));
  }

  private Optional<Locale> locale() {
    return language.map(tag -> {
      Locale locale = Locale.forLanguageTag(tag);
      if (locale.getLanguage().isEmpty()) {
        throw new UsageMistake("`" + Visible.of(tag) + "` is not a language, such as en-GB");
      }
      return locale;
    });
  }

  private Optional<SheetRequest.Size> size() {
    if (pieces.isPresent() && batch.isPresent()) {
      throw new UsageMistake("say only one of --pieces, --batch");
    }
    return pieces
        .map(AmountPhrase::count)
        .<SheetRequest.Size>map(SheetRequest.Size.Pieces::new)
        .or(() -> batch.map(text -> grams(text)));
  }

  private static SheetRequest.Size grams(String text) {
    BigFraction grams = AmountPhrase.grams(text);
    return new SheetRequest.Size.Charge(grams);
  }
}
