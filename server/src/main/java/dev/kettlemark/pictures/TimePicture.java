package dev.kettlemark.pictures;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How warm each stage is while it is worked on, step by step.
 *
 * <p>Steps stand side by side in their order. A step whose time is not said is drawn with broken lines and a break on the
 * line of time.
 */
final class TimePicture {

  private static final double MARGIN = 8;
  private static final double AXIS = 56;
  private static final double LINE = 15;
  private static final double GAP = 18;
  private static final double NARROWEST = 420;
  private static final double INSET = 3;

  private static final String WIDTHS =
      "A step that takes longer is drawn a little wider, not in proportion; a zigzag is a time that is"
          + " not said. Within a step only both ends are known, and the lines between are straight.";

  /** From the foot of a line of text to the line its letters stand on. */
  private static final double BASE = 4;

  private final ComputedFormula computed;
  private final TimeScale scale;
  private final Svg svg;
  private final double width;
  private double y = MARGIN;

  private TimePicture(ComputedFormula computed, Svg svg) {
    this.computed = computed;
    this.svg = svg;
    List<TimeColumn> all =
        stages(computed).flatMap(stage -> columns(stage).stream()).toList();
    this.scale = TimeScale.of(all.stream().flatMap(TimeColumn::temperatures).toList());
    this.width = stages(computed)
        .mapToDouble(
            stage -> columns(stage).stream().mapToDouble(TimeColumn::width).sum())
        .reduce(NARROWEST, Math::max);
  }

  static Picture of(ComputedFormula computed) {
    String name = computed.formula().name().value();
    TimePicture picture = new TimePicture(computed, new Svg(PictureKind.TIME, name));
    return picture.drawn("Heat and time of " + computed.formula().title().orElse(name));
  }

  private Picture drawn(String title) {
    List<StageResult> stages = stages(computed).toList();
    for (int i = 0; i < stages.size(); i++) {
      svg.open("stage", "stage-" + i);
      stage(stages.get(i));
      svg.close();
    }
    write("small", TextWidth.SMALL, WIDTHS);
    y += GAP;
    String words = stages.stream().map(this::words).collect(Collectors.joining(" "));
    return svg.picture(title, words, AXIS + width + MARGIN, y);
  }

  private static Stream<StageResult> stages(ComputedFormula computed) {
    return computed.process().stages().stream();
  }

  private static List<TimeColumn> columns(StageResult stage) {
    return stage.steps().stream().flatMap(step -> TimeColumn.of(step).stream()).toList();
  }

  private List<String> notes(StageResult stage) {
    return WhiskStart.of(computed, stage).stream()
        .map(start -> start.fold(WhiskStart::words, Outcome.Unknown::because))
        .toList();
  }

  private String words(StageResult stage) {
    List<TimeColumn> columns = columns(stage);
    String steps = columns.isEmpty()
        ? "no step warms, cools or waits"
        : columns.stream()
            .map(step -> (step.verb() + " " + step.objects()).strip() + ", " + step.timeWords()
                + ", " + step.afterWords())
            .collect(Collectors.joining("; "));
    return Stream.concat(
            Stream.of(StageNames.titleAndVessel(stage) + ": " + steps + "."),
            notes(stage).stream().map(note -> note + "."))
        .collect(Collectors.joining(" "));
  }

  private void stage(StageResult stage) {
    List<TimeColumn> columns = columns(stage);
    write("head", TextWidth.HEAD, StageNames.titleAndVessel(stage));
    if (columns.isEmpty()) {
      write("small", TextWidth.SMALL, "no step warms, cools or waits");
    } else {
      y += 2 * BASE;
      double across = columns.stream().mapToDouble(TimeColumn::width).sum();
      axis(across);
      marks(stage, across);
      double x = AXIS;
      for (TimeColumn column : columns) {
        column(column, x);
        x += column.width();
      }
      y += TimeScale.height() + 4 * LINE + BASE;
    }
    notes(stage).forEach(note -> write("small", TextWidth.SMALL, note));
    y += GAP;
  }

  private void write(String style, double size, String text) {
    for (String line : TextWidth.wrapped(text, size, AXIS + width - MARGIN)) {
      y += LINE;
      svg.text(style, MARGIN, y - BASE, line);
    }
  }

  private void axis(double across) {
    for (int mark : scale.marks()) {
      double at = y + scale.down(Temperature.ofCelsius(mark));
      svg.line("fine", List.of(new Point(AXIS, at), new Point(AXIS + across, at)));
      svg.textTo("small", AXIS - BASE, at + BASE, mark + " °C");
    }
  }

  /** Where the syrup is when the whisk must start: a line across, at what it passes. */
  private void marks(StageResult stage, double across) {
    for (Outcome<WhiskStart> start : WhiskStart.of(computed, stage)) {
      start.ifKnown(known -> {
        double at = y + scale.down(known.passes());
        svg.line("line dotted thick", List.of(new Point(AXIS, at), new Point(AXIS + across, at)));
      });
    }
  }

  private void column(TimeColumn column, double x) {
    double end = x + column.width();
    double foot = y + TimeScale.height();
    boolean said = column.time().isPresent();
    for (TimeColumn.Course course : column.courses()) {
      course(course, x, end, said ? "band" : "band dashed");
    }
    svg.line("fine", List.of(new Point(end, y), new Point(end, foot + 4 * LINE)));
    timeLine(x, end, foot, said);
    double room = column.width() - 2 * INSET;
    List<String> lines =
        List.of(column.verb(), column.objects(), column.timeWords(), column.afterWords());
    for (int i = 0; i < lines.size(); i++) {
      svg.text(
          "small",
          x + INSET,
          foot + (i + 1) * LINE - BASE / 2,
          TextWidth.fit(lines.get(i), TextWidth.SMALL, room));
    }
  }

  private void course(TimeColumn.Course course, double x, double end, String style) {
    svg.area(
        style,
        List.of(
            new Point(x, y + scale.down(course.from().high())),
            new Point(end, y + scale.down(course.to().high())),
            new Point(end, y + scale.down(course.to().low())),
            new Point(x, y + scale.down(course.from().low()))));
  }

  /** The line of time; broken where nobody says how long. */
  private void timeLine(double x, double end, double foot, boolean said) {
    List<Point> line = new ArrayList<>(List.of(new Point(x, foot)));
    if (!said) {
      double middle = (x + end) / 2;
      line.add(new Point(middle - 2 * INSET, foot));
      line.add(new Point(middle - INSET, foot - 2 * INSET));
      line.add(new Point(middle + INSET, foot + 2 * INSET));
      line.add(new Point(middle + 2 * INSET, foot));
    }
    line.add(new Point(end, foot));
    svg.line(said ? "line thick" : "line", line);
  }
}
