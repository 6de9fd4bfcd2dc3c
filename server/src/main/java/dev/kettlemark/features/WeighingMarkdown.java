package dev.kettlemark.features;

import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.WeighingLine;
import java.util.List;

/** A scaling as a list to weigh by, in Markdown. */
public final class WeighingMarkdown {

  /** A figure and its unit stay together however narrow the page. */
  private static final String UNIT = "\u00a0g";

  private WeighingMarkdown() {}

  /**
   * The list.
   *
   * @param cautions what the formula warns of, to stand before the weights
   */
  public static String of(Scaling scaling, List<String> cautions) {
    StringBuilder text = new StringBuilder();
    text.append("# ").append(scaling.formula()).append(", ").append(scaling.batchText());
    text.append("\n\nCharge ").append(Display.mass(scaling.charge().mass()));
    text.append(" → cooked ").append(Display.mass(scaling.cooked().mass()));
    text.append(" → finished ").append(Display.mass(scaling.finished().mass())).append(".\n\n");
    if (!cautions.isEmpty()) {
      text.append("**Cautions:** ").append(String.join(", ", cautions)).append(".\n\n");
    }
    text.append("| stage | ingredient | exact | weigh | scale | off by |\n");
    text.append("|---|---|--:|--:|---|--:|\n");
    String stage = "";
    for (WeighingLine line : scaling.weighing().lines()) {
      row(text, line, line.stage().equals(stage) ? "" : line.stage());
      stage = line.stage();
    }
    text.append("\nSum of the readings: ");
    text.append(Display.mass(Mass.ofGrams(scaling.weighing().total().doubleValue())))
        .append(".\n");
    List<String> notes = scaling.notes();
    if (!notes.isEmpty()) {
      text.append('\n');
      notes.forEach(note -> text.append("- ").append(note).append('\n'));
    }
    return text.toString();
  }

  private static void row(StringBuilder text, WeighingLine line, String stage) {
    text.append("| ").append(stage);
    text.append(" | ").append(line.ingredient());
    text.append(" | ").append(exact(line.grams().doubleValue())).append(UNIT);
    text.append(" | ").append(Display.trimmed(line.reading().doubleValue(), 3)).append(UNIT);
    text.append(" | ")
        .append(line.scale().map(House.Scale::name).map(n -> n.value()).orElse("any"));
    text.append(" | ").append(off(line.roundingError())).append(" |\n");
  }

  /** At least as fine as any scale reads. */
  private static String exact(double grams) {
    return Display.fixed(grams, grams < 1 ? 3 : 2);
  }

  /** A rounding error, signed; nothing where it cannot be seen. */
  private static String off(Ratio error) {
    String shown = Display.fixed(error.percent(), 1);
    return shown.equals("0.0") ? "" : (error.fraction() > 0 ? "+" : "") + shown + "\u00a0%";
  }
}
