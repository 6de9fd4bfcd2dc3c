package dev.kettlemark.cli;

import dev.kettlemark.files.TextFile;
import dev.kettlemark.model.Product;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.scaling.ScaleEdits;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.TextEdit;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.hipparchus.fraction.BigFraction;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark scale}: what to weigh for what is wanted. */
@Command(
    name = "scale",
    header = "Take a formula or a product to a wanted batch.",
    sortOptions = false,
    abbreviateSynopsis = true,
    description = {
      "",
      "Works backwards from what is wanted through loss and cook-off to the charge, and prints what to"
          + " weigh on which scale of the house. Percentages never change; only the batch line of a"
          + " formula, or the make line of a product, does."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 scaled, 2 it cannot be scaled so.",
      "",
      "Examples, in samples/gannet-slip:",
      "  kettlemark scale orchard-bar --pieces 37 --piece-weight 42g --loss 4%%",
      "  kettlemark scale chewy-caramel --moulds 4x dome-24",
      "  kettlemark scale heather-nougat --have \"210 g roasted-cashew\"",
      "  kettlemark scale caramel-dome --pieces 240 --write"
    })
final class ScaleCommand implements Callable<Integer> {

  private final Terminal terminal;
  private final Supplier<Paint> paint;

  @Parameters(
      paramLabel = "FORMULA|PRODUCT",
      description = "The name of a formula, a variant or a product.")
  private String name = "";

  @Mixin
  private LibraryOption library = new LibraryOption();

  @ArgGroup(exclusive = false, heading = "%nWhat is wanted, one of:%n")
  private WantedOptions wanted = new WantedOptions();

  @Option(names = "--write", description = "Change the batch or make line in the file.")
  private boolean write;

  @Option(names = "--explain", description = "Add how the charge came about.")
  private boolean explain;

  ScaleCommand(Terminal terminal, Supplier<Paint> paint) {
    this.terminal = terminal;
    this.paint = paint;
  }

  @Override
  public Integer call() {
    LibraryFolder folder = library.read(terminal);
    NamedEntry entry = NamedEntry.formulaOrProduct(folder, name);
    TextEdit edit =
        entry.declaration() instanceof Product product ? scale(entry, product) : scale(entry);
    finish(entry, edit);
    return ExitCode.DONE;
  }

  private TextEdit scale(NamedEntry entry) {
    Scaling scaling = Scaling.of(entry.computed(), wanted.target())
        .fold(known -> known, unknown -> {
          throw new UsageMistake("`" + name + "` cannot be scaled so: " + unknown.because());
        });
    terminal.out().println(paint.get().bold(title(entry)));
    write(scaling);
    return ScaleEdits.batch(entry.entry(), scaling);
  }

  private TextEdit scale(NamedEntry entry, Product product) {
    BigFraction pieces = wanted.productPieces();
    ComputedProduct scaled = Products.scaled(entry.folder().snapshot(), product, pieces);
    PrintWriter out = terminal.out();
    String each =
        scaled.pieceGrams().fold(Display::mass, unknown -> "unknown: " + unknown.because());
    out.println(paint.get().bold(title(entry)));
    out.println("  " + Display.trimmed(pieces.doubleValue(), 0) + " pieces of " + each);
    for (ComputedProduct.Need need : scaled.needs()) {
      out.println();
      out.println(paint.get().bold(Visible.of(need.role() + " " + need.material())));
      out.println("  on the pieces " + Display.mass(need.onPieces()) + ", with loss and spare "
          + Display.mass(need.withLoss()));
      need.scaling().ifKnown(this::write);
    }
    return ScaleEdits.make(entry.entry(), pieces);
  }

  private void write(Scaling scaling) {
    WeighingText.lines(scaling, terminal.width()).forEach(terminal.out()::println);
    if (explain) {
      terminal.out().println();
      DerivationTree.lines(scaling.derivation(), paint.get(), terminal.width(), 0)
          .forEach(terminal.out()::println);
    }
  }

  /** Shows the one line that changes, and changes it in the file if the user wants that. */
  private void finish(NamedEntry entry, TextEdit edit) {
    Source source = entry.document().text().source();
    String address = PlacedFinding.address(
        entry.folder().shown(entry.entry().uri()), source, edit.span().start());
    if (write) {
      Path path = Optional.ofNullable(entry.folder().paths().get(entry.entry().uri()))
          .orElseThrow(() -> new UsageMistake("the built-in pantry cannot be changed"));
      replace(path, source.with(edit).text());
    }
    PrintWriter out = terminal.out();
    out.println();
    out.println(address + (write ? "  changed to" : "  becomes, with --write"));
    out.println("  " + Visible.of(ScaleEdits.changedLine(entry.document(), edit)));
  }

  private static void replace(Path path, String text) {
    try {
      TextFile.write(path, text);
    } catch (IOException failure) {
      throw new UsageMistake(KettleFiles.cannot("write", path, failure));
    }
  }

  private static String title(NamedEntry entry) {
    return Visible.of(entry.declaration().name().value()
        + entry.declaration().title().map(title -> " \"" + title + "\"").orElse(""));
  }
}
