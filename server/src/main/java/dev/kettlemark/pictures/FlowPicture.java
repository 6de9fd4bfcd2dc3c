package dev.kettlemark.pictures;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.scaling.ComputedProduct;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The flow of a formula: its stages as boxes, and what each takes of the others as arrows. */
final class FlowPicture {

  private static final double HEAD_LONG = 8;
  private static final double HEAD_WIDE = 4;

  /** From the foot of a line of text to the line its letters stand on. */
  private static final double BASE = 4;

  private final FlowLayout layout;
  private final Svg svg;

  private FlowPicture(FlowLayout layout, Svg svg) {
    this.layout = layout;
    this.svg = svg;
  }

  static Picture of(ComputedFormula computed, List<ComputedProduct> products) {
    FlowGraph graph = FormulaFlow.of(computed, products);
    String name = computed.formula().name().value();
    FlowPicture picture = new FlowPicture(FlowLayout.of(graph), new Svg(PictureKind.FLOW, name));
    return picture.drawn(
        "Flow of " + computed.formula().title().orElse(name), words(computed, graph));
  }

  private Picture drawn(String title, String words) {
    for (int i = 0; i < layout.arrows().size(); i++) {
      arrow(layout.arrows().get(i), i);
    }
    layout.boxes().forEach(this::box);
    return svg.picture(title, words, layout.width(), layout.height());
  }

  private static String words(ComputedFormula computed, FlowGraph graph) {
    Map<String, String> heads =
        graph.nodes().stream().collect(Collectors.toMap(FlowNode::id, FlowNode::title));
    Function<String, String> head = id -> heads.getOrDefault(id, id);
    Stream<String> nominal = computed.isNominal()
        ? Stream.of("The formula gives no weight; these are the weights of a charge of 1000 g.")
        : Stream.empty();
    Stream<String> arrows = graph.arrows().stream()
        .map(arrow -> head.apply(arrow.from()) + " goes into " + head.apply(arrow.to()) + ": "
            + String.join(", ", arrow.label()) + ".");
    return Stream.of(nominal, graph.nodes().stream().map(FlowNode::words), arrows)
        .flatMap(sentences -> sentences)
        .collect(Collectors.joining(" "));
  }

  private void box(FlowLayout.Box box) {
    FlowNode node = box.node();
    svg.open(node.kind().word(), node.id());
    svg.rect(
        ("box " + node.kind().border()).strip(), box.x(), box.y(), node.width(), node.height(), 4);
    double y = box.y() + FlowNode.padding();
    for (BoxLine line : node.lines()) {
      double middle = y + line.look().height() / 2;
      if (line.look() == BoxLine.Look.RULE) {
        svg.line(
            line.look().style(),
            List.of(new Point(box.x(), middle), new Point(box.x() + node.width(), middle)));
      } else {
        svg.text(line.look().style(), box.x() + FlowNode.padding(), middle + BASE, line.text());
      }
      y += line.look().height();
    }
    svg.close();
  }

  private void arrow(FlowLayout.Arrow placed, int index) {
    svg.open("arrow", "arrow-" + index);
    List<Point> line = placed.line();
    svg.line("line", line);
    Point end = line.get(line.size() - 1);
    svg.area(
        "ink",
        List.of(
            end,
            new Point(end.x() - HEAD_WIDE, end.y() - HEAD_LONG),
            new Point(end.x() + HEAD_WIDE, end.y() - HEAD_LONG)));
    double y = placed.label().y() + FlowArrow.margin() / 2;
    for (String text : placed.arrow().label()) {
      y += FlowArrow.lineHeight();
      svg.text("small", placed.label().x() + FlowArrow.margin(), y - BASE, text);
    }
    svg.close();
  }
}
