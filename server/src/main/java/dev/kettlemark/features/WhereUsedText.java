package dev.kettlemark.features;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;

import dev.kettlemark.library.Origin;
import dev.kettlemark.quantity.Display;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** A {@link WhereUsed} as plain text. */
public final class WhereUsedText {

  private final Function<Origin, String> address;
  private final int width;

  private WhereUsedText(Function<Origin, String> address, int width) {
    this.address = address;
    this.width = width;
  }

  /**
   * The uses as lines.
   *
   * @param address how a place is written, such as {@code nougat.kettle:12}
   * @param width in cells
   */
  public static List<String> lines(WhereUsed used, Function<Origin, String> address, int width) {
    return new WhereUsedText(address, width).lines(used);
  }

  private List<String> lines(WhereUsed used) {
    TextTable table = new TextTable(2, LEFT, RIGHT, RIGHT);
    String counted = used.counted();
    if (counted.isEmpty() && used.taken().isEmpty()) {
      return List.of(used.name() + ": nothing of this library uses it");
    }
    if (!counted.isEmpty()) {
      table.paragraph(used.name() + " is in " + counted, 0, width);
      table.row("", "share", "weight");
      used.uses().forEach(use -> add(table, use));
    }
    if (!used.taken().isEmpty()) {
      table.plain(counted.isEmpty() ? used.name() + " is a stage that is taken over" : "");
      if (!counted.isEmpty()) {
        table.plain("as a stage");
      }
      table.row("", "share", "weight");
      used.taken().forEach(use -> add(table, use));
    }
    if (used.uses().stream().anyMatch(use -> !use.isDirect())) {
      table.plain("");
      table.paragraph(
          "What gets in by a sub-formula is counted as weighed in for it, before anything boils away.",
          2,
          width);
    }
    return table.lines(width);
  }

  private void add(TextTable table, Usage use) {
    table.row(
        use.name() + ", " + use.part(),
        use.share().map(Display::percent).orElse("")
            + (use.user() == Usage.User.PRODUCT && use.share().isKnown() ? " of a piece" : ""),
        use.grams().map(Display::mass).orElse(""));
    String what = use.user().name().toLowerCase(Locale.ROOT) + (use.released() ? ", released" : "");
    String by = use.isDirect()
        ? ""
        : ", by " + String.join(" > ", use.path().subList(1, use.path().size() - 1));
    table.paragraph(what + by, 4, width);
    use.share().fold(known -> table, why -> table.paragraph(why.because(), 4, width));
    table.plain("    " + address.apply(use.place()));
  }
}
