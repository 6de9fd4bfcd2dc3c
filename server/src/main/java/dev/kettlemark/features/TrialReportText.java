package dev.kettlemark.features;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;

import dev.kettlemark.analysis.Correction;
import dev.kettlemark.analysis.CorrectionQuantity;
import dev.kettlemark.analysis.HouseCorrections;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.quantity.Display;
import java.util.ArrayList;
import java.util.List;

/** A {@link TrialReport} as plain text. */
public final class TrialReportText {

  private TrialReportText() {}

  /**
   * The report as lines.
   *
   * @param width in cells
   */
  public static List<String> lines(TrialReport report, int width) {
    List<String> lines = new ArrayList<>();
    for (TrialReport.Item item : report.trials()) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.addAll(trial(item, width));
    }
    report.houses().forEach(house -> lines.addAll(house(house, width)));
    return lines;
  }

  private static List<String> trial(TrialReport.Item item, int width) {
    TextTable table = new TextTable(2, LEFT, RIGHT, RIGHT, RIGHT, LEFT);
    table.plain(TrialWords.heading(item.trial()));
    if (item.compared().isEmpty()) {
      table.paragraph("No such formula can be worked out, so nothing is predicted.", 2, width);
      return table.lines(width);
    }
    TrialComparison compared = item.compared().get();
    table.paragraph(TrialWords.circumstances(compared), 2, width);
    if (!compared.readings().isEmpty()) {
      table.row("", "measured", "predicted", "difference", "");
    }
    compared.readings().forEach(reading -> row(table, reading));
    for (String note : TrialWords.notes(compared)) {
      table.paragraph(note, 2, width);
    }
    return table.lines(width);
  }

  private static void row(TextTable table, TrialReading reading) {
    table.row(
        reading.measurement().subject(),
        reading.measurement().shown(),
        TrialWords.predicted(reading),
        TrialWords.difference(reading),
        reading.verdict().words());
  }

  private static List<String> house(TrialReport.HouseItem house, int width) {
    TextTable table = new TextTable(2, LEFT, RIGHT, RIGHT, RIGHT, LEFT);
    table.plain("");
    table.plain("house corrections"
        + house.name().map(name -> " of " + name).orElse("")
        + "; shown beside predictions, never applied");
    table.row("", "trials", "mean", "spread", "95 % band of the mean");
    addAll(table, house.kitchen());
    house.formulas().forEach((formula, own) -> {
      if (!own.corrections().isEmpty()) {
        table.plain("  of " + formula);
        addAll(table, own);
      }
    });
    if (house.kitchen().of(CorrectionQuantity.PROBE).isPresent()) {
      table.paragraph(
          "Water left and thermometer are one gap seen from two sides: correct one of them, never"
              + " both. The boiling model itself is off by up to one point of water.",
          2,
          width);
    }
    return hasAny(house) ? table.lines(width) : List.of();
  }

  private static boolean hasAny(TrialReport.HouseItem house) {
    return !house.kitchen().corrections().isEmpty()
        || house.formulas().values().stream().anyMatch(own -> !own.corrections().isEmpty());
  }

  private static void addAll(TextTable table, HouseCorrections corrections) {
    for (Correction correction : corrections.corrections()) {
      table.row(
          correction.quantity().title(),
          Display.fixed(correction.count(), 0),
          correction.quantity().shown(correction.mean()),
          correction.spread().map(correction.quantity()::figure).orElse(""),
          TrialWords.trust(correction));
    }
  }
}
