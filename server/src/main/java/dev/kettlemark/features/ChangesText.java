package dev.kettlemark.features;

import static dev.kettlemark.features.TextTable.Align.LEFT;
import static dev.kettlemark.features.TextTable.Align.RIGHT;

import dev.kettlemark.comparison.FigureChange;
import dev.kettlemark.comparison.ItemChange;
import dev.kettlemark.comparison.KeptDose;
import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.comparison.LineChange;
import dev.kettlemark.comparison.SectionEdit;
import dev.kettlemark.comparison.Told;
import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.List;

/** A {@link LibraryComparison} as plain text. */
public final class ChangesText {

  private final int width;
  private final List<String> lines = new ArrayList<>();

  private ChangesText(int width) {
    this.width = width;
  }

  /**
   * The comparison as lines.
   *
   * @param from the earlier state, as it is named
   * @param to the later state
   * @param width in cells
   */
  public static List<String> lines(
      String from, String to, LibraryComparison comparison, int width) {
    ChangesText text = new ChangesText(width);
    text.hanging("", "  ", "from " + from + " to " + to);
    text.lines.add("");
    text.write(comparison);
    return text.lines;
  }

  private void write(LibraryComparison comparison) {
    if (comparison.isEmpty()) {
      hanging("", "", ChangesWords.NOTHING);
      return;
    }
    if (!comparison.edits().isEmpty()) {
      lines.add("changed in the texts");
      comparison.edits().forEach(this::edit);
    }
    if (comparison.items().isEmpty()) {
      lines.add("");
      hanging("", "", ChangesWords.NO_FOLLOWS);
    }
    comparison.items().forEach(this::item);
    doses(comparison.doses());
  }

  private void edit(SectionEdit edit) {
    hanging("  ", "    ", ChangesWords.heading(edit));
    for (LineChange change : edit.lines()) {
      hanging("    " + (change.added() ? "+ " : "- "), "      ", change.line());
    }
  }

  private void item(ItemChange item) {
    lines.add("");
    hanging("", "  ", ChangesWords.heading(item));
    hanging("  ", "    ", ChangesWords.causes(item));
    if (!item.figures().isEmpty()) {
      TextTable table = new TextTable(2, LEFT, RIGHT, RIGHT);
      table.row("", "before", "after");
      for (FigureChange.Group group : FigureChange.Group.values()) {
        for (FigureChange change : item.figures(group)) {
          table.row(
              change.figure().name(), change.before().text(), change.after().text());
        }
      }
      lines.addAll(table.lines(width));
    }
    ChangesWords.reasons(item).forEach(reason -> hanging("  ", "    ", reason));
    item.found().forEach(told -> finding("new   ", told));
    item.mended().forEach(told -> finding("gone  ", told));
  }

  private void finding(String how, Told told) {
    hanging("  " + how, " ".repeat(8), ChangesWords.finding(told));
  }

  private void doses(List<KeptDose> doses) {
    if (doses.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("doses that hold as much of what whips or gels as before");
    doses.stream()
        .map(ChangesWords::stated)
        .distinct()
        .forEach(stated -> hanging("  ", "    ", stated));
    TextTable table = new TextTable(2, LEFT, RIGHT, RIGHT, LEFT);
    table.row("", "before", "now", "to keep it, of the charge");
    for (KeptDose dose : doses) {
      table.row(
          dose.formula() + ", " + dose.stage() + ": " + dose.ingredient(),
          ChangesWords.dose(dose.before()),
          ChangesWords.dose(dose.now()),
          ChangesWords.kept(dose));
    }
    lines.addAll(table.lines(width));
    hanging("  ", "  ", ChangesWords.TRY);
  }

  private void hanging(String first, String rest, String text) {
    String head = first;
    for (String line : Cells.wrapped(text, width - Cells.of(rest))) {
      lines.add(head + line);
      head = rest;
    }
  }
}
