package dev.kettlemark.pictures;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.quantity.Outcome;
import java.util.ArrayList;
import java.util.List;

/**
 * The stages in rows, no wider than the text on a sheet of A4, so that print does not shrink their letters.
 *
 * <p>A stage that is wider goes on in the next row; what is narrow stands side by side.
 */
final class TimeRows {

  /** 180 mm at 96 pixels to the inch; A4 is 210 mm wide (ISO 216) and has margins of 15 mm. */
  static final double WIDEST = 680;

  static final double MARGIN = 8;
  static final double AXIS = 50;
  static final double LINE = 15;
  static final double GAP = 18;

  /** A note beside a narrow stage would have a line for each word. */
  private static final double NOTE = 300;

  private static final double ROOM = WIDEST - 2 * MARGIN;

  private final ComputedFormula computed;
  private final List<List<TimeChunk>> rows = new ArrayList<>();

  private TimeRows(ComputedFormula computed) {
    this.computed = computed;
  }

  static List<List<TimeChunk>> of(ComputedFormula computed) {
    TimeRows rows = new TimeRows(computed);
    List<StageResult> stages = computed.process().stages();
    for (int i = 0; i < stages.size(); i++) {
      rows.stage(i, stages.get(i));
    }
    return List.copyOf(rows.rows);
  }

  static List<TimeColumn> columns(StageResult stage) {
    return stage.steps().stream().flatMap(step -> TimeColumn.of(step).stream()).toList();
  }

  static List<String> notes(ComputedFormula computed, StageResult stage) {
    return WhiskStart.of(computed, stage).stream()
        .map(start -> start.fold(WhiskStart::words, Outcome.Unknown::because))
        .toList();
  }

  private void stage(int index, StageResult stage) {
    List<List<TimeColumn>> parts = parts(columns(stage));
    String name = StageNames.titleAndVessel(stage);
    List<String> notes = notes(computed, stage);
    for (int i = 0; i < parts.size(); i++) {
      boolean isLast = i == parts.size() - 1;
      place(chunk(
          index, i == 0 ? name : name + ", going on", parts.get(i), isLast ? notes : List.of()));
    }
  }

  /** Steps that fit side by side. */
  private static List<List<TimeColumn>> parts(List<TimeColumn> columns) {
    List<List<TimeColumn>> parts = new ArrayList<>();
    List<TimeColumn> part = new ArrayList<>();
    double width = AXIS;
    for (TimeColumn column : columns) {
      if (width + column.width() > ROOM && !part.isEmpty()) {
        parts.add(List.copyOf(part));
        part.clear();
        width = AXIS;
      }
      part.add(column);
      width += column.width();
    }
    parts.add(List.copyOf(part));
    return parts;
  }

  private static TimeChunk chunk(
      int stage, String head, List<TimeColumn> columns, List<String> notes) {
    double steps = AXIS + columns.stream().mapToDouble(TimeColumn::width).sum();
    double least = Math.max(steps, notes.isEmpty() ? 0 : NOTE);
    double width = Math.min(ROOM, Math.max(least, TextWidth.of(head, TextWidth.HEAD)));
    return new TimeChunk(
        stage,
        TextWidth.wrapped(head, TextWidth.HEAD, width),
        columns,
        notes.stream()
            .flatMap(note -> TextWidth.wrapped(note, TextWidth.SMALL, width).stream())
            .toList(),
        MARGIN,
        width);
  }

  private void place(TimeChunk chunk) {
    List<TimeChunk> last = rows.isEmpty() ? List.of() : rows.get(rows.size() - 1);
    double x =
        last.stream().mapToDouble(one -> one.x() + one.width() + GAP).reduce(MARGIN, Math::max);
    if (last.isEmpty() || x + chunk.width() > WIDEST - MARGIN) {
      rows.add(new ArrayList<>(List.of(chunk)));
    } else {
      last.add(chunk.at(x));
    }
  }
}
