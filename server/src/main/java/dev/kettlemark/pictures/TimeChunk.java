package dev.kettlemark.pictures;

import java.util.List;

/**
 * As much of a stage as stands side by side.
 *
 * @param stage the number of the stage
 * @param head its name, in lines; that it goes on, where it does
 * @param columns its steps; none where no step of the stage warms, cools or waits
 * @param notes what is told below the last chunk of a stage, in lines
 * @param x where it begins
 * @param width of all of it
 */
record TimeChunk(
    int stage,
    List<String> head,
    List<TimeColumn> columns,
    List<String> notes,
    double x,
    double width) {

  TimeChunk {
    head = List.copyOf(head);
    columns = List.copyOf(columns);
    notes = List.copyOf(notes);
  }

  TimeChunk at(double other) {
    return new TimeChunk(stage, head, columns, notes, other, width);
  }

  /** How wide its steps are together. */
  double across() {
    return columns.stream().mapToDouble(TimeColumn::width).sum();
  }
}
