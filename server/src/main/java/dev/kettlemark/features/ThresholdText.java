package dev.kettlemark.features;

import dev.kettlemark.library.Thresholds;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import org.hipparchus.fraction.BigFraction;

/** What is to be said of a threshold. */
public final class ThresholdText {

  private ThresholdText() {}

  /** What it is a limit of, its usual value, the reason, the source and the day. */
  static String markdown(Threshold<?> threshold) {
    return told("**" + threshold.word() + "** — " + Markdown.plain(threshold.meaning()), threshold);
  }

  /** The same as a page of its own, in Markdown. */
  public static String page(Threshold<?> threshold) {
    return told("# " + threshold.word() + "\n\nIt is " + threshold.meaning() + ".", threshold);
  }

  private static String told(String opening, Threshold<?> threshold) {
    House.Setting usual = Thresholds.usual(threshold);
    return new Markdown()
        .paragraph(opening)
        .paragraph("Usual is " + value(usual)
            + usual.reason().map(why -> ": " + Markdown.plain(why)).orElse("") + ".")
        .paragraph("Source: " + Markdown.plain(usual.source().orElse("none given"))
            + usual.on().map(day -> "; looked at on " + day).orElse("") + ".")
        .text();
  }

  /** The value as written, such as {@code 100–180 °C}. */
  public static String value(House.Setting setting) {
    Quantity figure = setting.value().value();
    String low = figure(figure, figure.low());
    String high = figure.isRange() ? "–" + figure(figure, figure.high()) : "";
    return low + high + figure.unit().map(Unit::symbol).map(unit -> " " + unit).orElse("");
  }

  private static String figure(Quantity written, BigFraction value) {
    return Display.fixed(value, written.decimals());
  }
}
