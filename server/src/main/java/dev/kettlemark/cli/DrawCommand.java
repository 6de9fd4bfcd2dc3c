package dev.kettlemark.cli;

import dev.kettlemark.files.TextFile;
import dev.kettlemark.pictures.Picture;
import dev.kettlemark.pictures.PictureKind;
import dev.kettlemark.pictures.Pictures;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark draw}: a picture of a formula. */
@Command(
    name = "draw",
    header = "Draw a formula: what feeds what, how warm it is, or what it is made of.",
    sortOptions = false,
    description = {
      "",
      "The picture is SVG and stands in any page. It takes the colour of the text around it, does"
          + " without colour in print, and tells the same in words to those who cannot see it."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 drawn, 2 there is no such formula or it cannot be read or written.",
      "",
      "Examples:",
      "  kettlemark draw egg-honey-nougat --in samples/gannet-slip > flow.svg",
      "  kettlemark draw orchard-bar -s time -o time.svg --in samples/gannet-slip"
    })
final class DrawCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(paramLabel = "FORMULA", description = "The name of a formula or variant.")
  private String formula = "";

  @Mixin
  private LibraryOption library = new LibraryOption();

  @Option(
      names = {"-s", "--show"},
      paramLabel = "WHAT",
      description =
          "flow, what feeds what; time, how warm each stage is; or shares, what it is made of."
              + " flow if not given.")
  private PictureKind kind = PictureKind.FLOW;

  @Option(
      names = {"-o", "--out"},
      paramLabel = "FILE",
      description = "Where the picture is written; here if not given.")
  private Optional<Path> out = Optional.empty();

  DrawCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    NamedEntry named = NamedEntry.formula(library.read(terminal), formula);
    Picture picture = Pictures.of(named.folder().snapshot(), named.entry(), kind)
        .orElseThrow(() -> new UsageMistake(
            "`" + Visible.of(formula) + "` cannot be worked out; run check to see why"));
    if (out.isPresent()) {
      write(picture, out.get());
    } else {
      terminal.out().print(picture.svg());
    }
    return ExitCode.DONE;
  }

  private static void write(Picture picture, Path file) {
    try {
      Files.writeString(file, picture.svg(), StandardCharsets.UTF_8);
    } catch (IOException problem) {
      throw new UsageMistake(
          "cannot write " + Visible.of(file.toString()) + ": " + TextFile.why(problem));
    }
  }
}
