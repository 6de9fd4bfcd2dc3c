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
 * line of time. {@link TimeRows} breaks them into rows.
 */
final class TimePicture {

  private static final double MARGIN = TimeRows.MARGIN;
  private static final double AXIS = TimeRows.AXIS;
  private static final double LINE = TimeRows.LINE;
  private static final double GAP = TimeRows.GAP;
  private static final double NARROWEST = 420;
  private static final double INSET = 3;

  private static final String WIDTHS =
      "A step that takes longer is drawn a little wider, not in proportion; a zigzag is a time that is"
          + " not said. Within a step only both ends are known, and the lines between are straight.";

  /** From the foot of a line of text to the line its letters stand on. */
  private static final double BASE = 4;

  /** A row as high as it is drawn. */
  private record Strip(List<TimeChunk> chunks, double headLines, double height) {

    static Strip of(List<TimeChunk> chunks) {
      double head = chunks.stream().mapToInt(chunk -> chunk.head().size()).max().orElse(0);
      double rest = chunks.stream().mapToDouble(Strip::below).max().orElse(0);
      return new Strip(chunks, head, head * LINE + rest + GAP);
    }

    private static double below(TimeChunk chunk) {
      double steps = chunk.columns().isEmpty() ? LINE : PLOT;
      return steps + chunk.notes().size() * LINE;
    }
  }

  /** From the foot of the head of a chunk to that of its steps. */
  private static final double PLOT = 2 * BASE + TimeScale.height() + 4 * LINE + BASE;

  private final ComputedFormula computed;
  private final TimeScale scale;
  private final Svg svg;
  private final double width;
  private double y = MARGIN;

  private TimePicture(ComputedFormula computed, Svg svg, double width) {
    this.computed = computed;
    this.svg = svg;
    this.width = width;
    List<TimeColumn> all = computed.process().stages().stream()
        .flatMap(stage -> TimeRows.columns(stage).stream())
        .toList();
    this.scale = TimeScale.of(all.stream().flatMap(TimeColumn::temperatures).toList());
  }

  static Picture of(ComputedFormula computed) {
    return within(computed, Double.MAX_VALUE).get(0);
  }

  /** The same in parts, none of them higher than that many pixels unless one row is. */
  static List<Picture> within(ComputedFormula computed, double highest) {
    String name = computed.formula().name().value();
    List<Strip> all = TimeRows.of(computed).stream().map(Strip::of).toList();
    double width = all.stream()
        .flatMap(strip -> strip.chunks().stream())
        .mapToDouble(chunk -> chunk.x() + chunk.width() + MARGIN)
        .reduce(NARROWEST, Math::max);
    List<Picture> pictures = new ArrayList<>();
    List<List<Strip>> parts = parts(all, highest - foot(width));
    for (int i = 0; i < parts.size(); i++) {
      String own = i == 0 ? name : name + "-" + (i + 1);
      TimePicture picture = new TimePicture(computed, new Svg(PictureKind.TIME, own), width);
      boolean isLast = i == parts.size() - 1;
      pictures.add(picture.drawn(
          "Heat and time of " + computed.formula().title().orElse(name), parts.get(i), isLast));
    }
    return List.copyOf(pictures);
  }

  private static double foot(double width) {
    return 2 * MARGIN + GAP + LINE * words(width).size();
  }

  private static List<String> words(double width) {
    return TextWidth.wrapped(WIDTHS, TextWidth.SMALL, width - 2 * MARGIN);
  }

  private static List<List<Strip>> parts(List<Strip> strips, double room) {
    List<List<Strip>> parts = new ArrayList<>();
    List<Strip> part = new ArrayList<>();
    double height = 0;
    for (Strip strip : strips) {
      if (height + strip.height() > room && !part.isEmpty()) {
        parts.add(List.copyOf(part));
        part.clear();
        height = 0;
      }
      part.add(strip);
      height += strip.height();
    }
    parts.add(List.copyOf(part));
    return parts;
  }

  private Picture drawn(String title, List<Strip> strips, boolean isLast) {
    List<StageResult> stages = computed.process().stages();
    List<Integer> shown = strips.stream()
        .flatMap(strip -> strip.chunks().stream())
        .map(TimeChunk::stage)
        .distinct()
        .toList();
    for (int stage : shown) {
      svg.open("stage", "stage-" + stage);
      double top = MARGIN;
      for (Strip strip : strips) {
        for (TimeChunk chunk : strip.chunks()) {
          if (chunk.stage() == stage) {
            y = top;
            chunk(chunk, strip);
          }
        }
        top += strip.height();
      }
      svg.close();
    }
    y = MARGIN + strips.stream().mapToDouble(Strip::height).sum();
    if (isLast) {
      write("small", MARGIN, words(width));
      y += GAP;
    }
    String words =
        shown.stream().map(stage -> words(stages.get(stage))).collect(Collectors.joining(" "));
    return svg.picture(title, words, width, y);
  }

  private String words(StageResult stage) {
    List<TimeColumn> columns = TimeRows.columns(stage);
    String steps = columns.isEmpty()
        ? "no step warms, cools or waits"
        : columns.stream()
            .map(step -> (step.verb() + " " + step.objects()).strip() + ", " + step.timeWords()
                + ", " + step.afterWords())
            .collect(Collectors.joining("; "));
    return Stream.concat(
            Stream.of(StageNames.titleAndVessel(stage) + ": " + steps + "."),
            TimeRows.notes(computed, stage).stream().map(note -> note + "."))
        .collect(Collectors.joining(" "));
  }

  private void chunk(TimeChunk chunk, Strip strip) {
    write("head", chunk.x(), chunk.head());
    y += (strip.headLines() - chunk.head().size()) * LINE;
    if (chunk.columns().isEmpty()) {
      write("small", chunk.x(), List.of("no step warms, cools or waits"));
    } else {
      y += 2 * BASE;
      double x = chunk.x() + AXIS;
      axis(x, chunk.across());
      marks(chunk, x);
      for (TimeColumn column : chunk.columns()) {
        column(column, x);
        x += column.width();
      }
      y += TimeScale.height() + 4 * LINE + BASE;
    }
    write("small", chunk.x(), chunk.notes());
  }

  private void write(String style, double x, List<String> lines) {
    for (String line : lines) {
      y += LINE;
      svg.text(style, x, y - BASE, line);
    }
  }

  private void axis(double x, double across) {
    for (int mark : scale.marks()) {
      double at = y + scale.down(Temperature.ofCelsius(mark));
      svg.line("fine", List.of(new Point(x, at), new Point(x + across, at)));
      svg.textTo("small", x - BASE, at + BASE, mark + " °C");
    }
  }

  /** Where the syrup is when the whisk must start: a line across, at what it passes. */
  private void marks(TimeChunk chunk, double x) {
    StageResult stage = computed.process().stages().get(chunk.stage());
    for (Outcome<WhiskStart> start : WhiskStart.of(computed, stage)) {
      start.ifKnown(known -> {
        double at = y + scale.down(known.passes());
        svg.line("line dotted thick", List.of(new Point(x, at), new Point(x + chunk.across(), at)));
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
