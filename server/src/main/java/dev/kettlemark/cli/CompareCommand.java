package dev.kettlemark.cli;

import com.google.gson.JsonObject;
import dev.kettlemark.cards.ComparisonPage;
import dev.kettlemark.cards.ProductSide;
import dev.kettlemark.cards.ProductsPage;
import dev.kettlemark.cards.ProductsSideBySide;
import dev.kettlemark.cards.Side;
import dev.kettlemark.cards.SideBySide;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.LeafHtml;
import dev.kettlemark.sheets.LeafMarkdown;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark compare}: two formulas side by side. */
@Command(
    name = "compare",
    header = "Compare two formulas or products: what stands for what, and what it moves.",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Both are followed through their stages with the batch of the first. Each figure carries its"
          + " band; a difference inside both bands is told to be none. For each duty of the formula the"
          + " page tells whether it is kept, whether it moves, or that it is not known.",
      "",
      "Two products are held side by side piece by piece: weight, coat, cost, allergens, nutrition,"
          + " and how wet their parts are.",
      "",
      "NAME@REVISION is the formula or product as git keeps it at that revision of the library."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 compared, 2 there is no such formula or product, or it cannot be worked out.",
      "",
      "Examples, in samples/gannet-slip:",
      "  kettlemark compare heather-nougat-plant",
      "  kettlemark compare heather-nougat egg-honey-nougat --format html --out two.html",
      "  kettlemark compare heather-nougat@HEAD~1 heather-nougat",
      "  kettlemark compare orchard-bar-42 caramel-dome"
    })
final class CompareCommand implements Callable<Integer> {

  /** How the comparison is written. */
  enum Format {
    TEXT,
    HTML,
    MARKDOWN,
    JSON
  }

  private final Terminal terminal;
  private final Supplier<Paint> paint;
  private final Map<String, Snapshot> states = new HashMap<>();

  @Parameters(index = "0", paramLabel = "NAME", description = "A formula, variant or product.")
  private String first = "";

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "OTHER",
      description = "The other; if not given, NAME is a variant and is compared with its parent.")
  private Optional<String> second = Optional.empty();

  @Option(
      names = "--in",
      paramLabel = "FOLDER",
      description = "The library; the current folder if not given.")
  private Optional<Path> folder = Optional.empty();

  @Option(
      names = "--batch",
      paramLabel = "WEIGHT",
      parameterConsumer = AmountPhrase.AmountWords.class,
      description = "The batch of both, as 5kg; that of the first if not given.")
  private Optional<String> batch = Optional.empty();

  @Option(
      names = "--language",
      paramLabel = "TAG",
      description = "en-GB, en-US, de-DE or fr-FR; en-GB if not given.")
  private String language = "en-GB";

  @Option(
      names = {"-f", "--format"},
      paramLabel = "FORMAT",
      description = "text, html, markdown or json; text if not given.")
  private Format format = Format.TEXT;

  @Mixin
  private OutOption out = new OutOption();

  CompareCommand(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  @Override
  public Integer call() {
    Optional<ProductSide> product = product(first);
    if (product.isPresent()) {
      ProductsSideBySide both = ProductsSideBySide.of(product.get(), otherProduct());
      Leaf page = worded(ProductsPage.of(both, Locale.forLanguageTag(language)));
      write(page, () -> CompareJson.of(both));
    } else {
      SideBySide both = both();
      Leaf page = worded(ComparisonPage.of(both, Locale.forLanguageTag(language)));
      write(page, () -> CompareJson.of(both, page));
    }
    return ExitCode.DONE;
  }

  private Leaf worded(Optional<Leaf> page) {
    return page.orElseThrow(() -> new UsageMistake(
        "there are no words in `" + Visible.of(language) + "`; there are in en, de and fr"));
  }

  private void write(Leaf page, Supplier<JsonObject> json) {
    if (format == Format.JSON) {
      out.write(Json.text(json.get()), terminal);
    } else {
      out.write(
          switch (format) {
            case HTML -> LeafHtml.of(page);
            case MARKDOWN -> LeafMarkdown.of(page);
            default -> LeafText.of(page, paint.get(), terminal.width());
          },
          terminal);
    }
  }

  /** The product of a name; a formula where both have it. */
  private Optional<ProductSide> product(String typed) {
    Typed name = Typed.of(typed);
    Snapshot snapshot = state(name);
    return Side.of(snapshot, name.name(), name.revision(), Optional.empty()).isKnown()
        ? Optional.empty()
        : ProductSide.of(snapshot, name.name(), name.revision()).toOptional();
  }

  private ProductSide otherProduct() {
    String other = second.orElseThrow(() -> new UsageMistake("`" + Visible.of(first)
        + "` is a product; name the product that it is to be compared with"));
    return product(other)
        .orElseThrow(() -> new UsageMistake("`" + Visible.of(other)
            + "` is no product, and a product is compared with a product only"));
  }

  /** A name with the revision that it is asked for at. */
  private record Typed(String name, Optional<String> revision) {

    static Typed of(String typed) {
      int at = typed.lastIndexOf('@');
      return at > 0
          ? new Typed(typed.substring(0, at), Optional.of(typed.substring(at + 1)))
          : new Typed(typed, Optional.empty());
    }
  }

  private Snapshot state(Typed name) {
    return states.computeIfAbsent(name.revision().orElse(""), key -> state(name.revision()));
  }

  private SideBySide both() {
    Optional<Mass> wanted =
        batch.map(text -> Mass.ofGrams(AmountPhrase.grams(text).doubleValue()));
    return second
        .map(other -> SideBySide.of(side(first, wanted), side(other, wanted)))
        .orElseGet(() -> SideBySide.of(side(parent(), wanted), side(first, wanted)));
  }

  private Side side(String typed, Optional<Mass> wanted) {
    Typed name = Typed.of(typed);
    return Side.of(state(name), name.name(), name.revision(), wanted)
        .fold(known -> known, unknown -> {
          throw name.revision().isPresent()
              ? new UsageMistake(Visible.of(unknown.because()))
              : unworkable(name.name(), unknown.because());
        });
  }

  private UsageMistake unworkable(String name, String because) {
    NamedEntry.formula(NamedEntry.library(folder, terminal), name);
    return new UsageMistake(Visible.of(because) + "; run check to see why");
  }

  private Snapshot state(Optional<String> revision) {
    Path library = folder.orElse(Path.of("."));
    return revision
        .map(
            at -> LibraryState.of(LibraryState.REVISION + at, library, terminal).snapshot())
        .orElseGet(() -> NamedEntry.library(folder, terminal).snapshot());
  }

  /** What a variant is a variant of, in the same state of the library. */
  private String parent() {
    Typed name = Typed.of(first);
    String suffix = name.revision().map(at -> "@" + at).orElse("");
    Side side = side(first, Optional.empty());
    return side.entry()
        .declaration()
        .flatMap(d -> d instanceof Variant variant ? variant.parent() : Optional.empty())
        .map(parent -> parent.value() + suffix)
        .orElseThrow(() -> new UsageMistake("`" + Visible.of(name.name())
            + "` is no variant; name what it is to be compared with"));
  }
}
