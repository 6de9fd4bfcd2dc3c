package dev.kettlemark.cli;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import com.google.gson.JsonPrimitive;
import dev.kettlemark.features.Usage;
import dev.kettlemark.features.WhereUsed;
import dev.kettlemark.features.WhereUsedText;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Origin;
import dev.kettlemark.library.Place;
import dev.kettlemark.model.Formula;
import dev.kettlemark.reading.Suggestions;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark used}: where an ingredient, a formula or a stage is used. */
@Command(
    name = "used",
    header = "Tell where an ingredient, formula or stage is used, and how much of it.",
    sortOptions = false,
    description = {
      "",
      "Each section that names it is followed by those that it gets into through that one: by"
          + " sub-formulas, variants and the parts of products. The share is of the charge; of a"
          + " product, of a finished piece. The weight is what its batch, or all its pieces, need."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 shown, 2 there is no such name or the folder cannot be read.",
      "",
      "Example:",
      "  kettlemark used heather-honey --in samples/gannet-slip"
    })
final class UsedCommand implements Callable<Integer> {

  /** How the uses are written. */
  enum Format {
    TEXT,
    JSON
  }

  private final Terminal terminal;

  @Parameters(paramLabel = "NAME", description = "An ingredient, formula, variant or stage.")
  private String name = "";

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text or json; text if not given.")
  private Format format = Format.TEXT;

  UsedCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    LibraryFolder folder = library.read(terminal);
    WhereUsed used = WhereUsed.of(folder.snapshot(), name);
    if (used.uses().isEmpty() && used.taken().isEmpty()) {
      refuseUnknown(folder.snapshot().library());
    }
    if (format == Format.JSON) {
      Json.write(json(used, folder), terminal.out());
    } else {
      WhereUsedText.lines(used, origin -> address(folder, origin), terminal.width())
          .forEach(line -> terminal.out().println(Visible.of(line)));
    }
    return ExitCode.DONE;
  }

  private void refuseUnknown(Library texts) {
    TreeSet<String> names = new TreeSet<>(texts.names(Kind.MATERIAL));
    texts.ownDocuments().stream()
        .flatMap(document -> document.entries().stream())
        .map(Entry::declaration)
        .flatMap(Optional::stream)
        .flatMap(d -> d instanceof Formula formula ? formula.stages().stream() : Stream.empty())
        .forEach(stage -> names.add(stage.name().value()));
    if (!names.contains(name)) {
      throw new UsageMistake("no ingredient, formula or stage is named `" + Visible.of(name) + "`"
          + Suggestions.sentence(name, names));
    }
  }

  /** {@code samples/gannet-slip/heather-nougat.kettle:22}. */
  private static String address(LibraryFolder folder, Origin origin) {
    return folder.shown(origin.uri())
        + line(folder, origin).map(line -> ":" + line).orElse("");
  }

  private static Optional<Integer> line(LibraryFolder folder, Origin origin) {
    Library texts = folder.snapshot().library();
    Optional<Place> place = texts.place(origin);
    return place.flatMap(p -> texts
        .document(p.uri())
        .map(document -> document.text().source().lineAt(p.span().start()) + 1));
  }

  private static JsonObject json(WhereUsed used, LibraryFolder folder) {
    JsonObject json = new JsonObject();
    json.addProperty("name", used.name());
    json.add("uses", json(used.uses(), folder));
    json.add("asStage", json(used.taken(), folder));
    return json;
  }

  private static JsonArray json(List<Usage> uses, LibraryFolder folder) {
    JsonArray array = new JsonArray();
    for (Usage use : uses) {
      JsonObject json = new JsonObject();
      json.addProperty("kind", use.user().name().toLowerCase(Locale.ROOT));
      json.addProperty("name", use.name());
      json.addProperty("released", use.released());
      json.addProperty("part", use.part());
      JsonArray path = new JsonArray();
      use.path().forEach(step -> path.add(new JsonPrimitive(step)));
      json.add("path", path);
      json.addProperty("file", folder.shown(use.place().uri()));
      line(folder, use.place()).ifPresent(line -> json.addProperty("line", line));
      use.share().ifKnown(share -> json.addProperty("percent", share.percent()));
      use.grams().ifKnown(mass -> json.addProperty("grams", mass.grams()));
      array.add(json);
    }
    return array;
  }
}
