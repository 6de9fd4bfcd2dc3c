package dev.kettlemark.pictures;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.elk.alg.layered.LayeredLayoutProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeLabelPlacement;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.util.NullElkProgressMonitor;
import org.eclipse.elk.graph.ElkBendPoint;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;

/**
 * The flow of a formula with a place for each box, arrow and label.
 *
 * <p>Boxes lie in layers from top to bottom, in the order of the text where that leaves a choice.
 *
 * @param boxes in the order of the graph
 * @param arrows in the order of the graph
 */
record FlowLayout(List<Box> boxes, List<Arrow> arrows, double width, double height) {

  private static final double MARGIN = 8;
  private static final double BESIDE = 28;
  private static final double BELOW = 24;
  private static final double LABEL = 4;

  FlowLayout {
    boxes = List.copyOf(boxes);
    arrows = List.copyOf(arrows);
  }

  /** A box and its upper left corner. */
  record Box(FlowNode node, double x, double y) {}

  /**
   * An arrow with its line.
   *
   * @param line from the box that feeds to the box that is fed
   * @param label the upper left corner of its label
   */
  record Arrow(FlowArrow arrow, List<Point> line, Point label) {

    Arrow {
      line = List.copyOf(line);
    }
  }

  static FlowLayout of(FlowGraph graph) {
    // It tells the library what its own options are; without it they cannot be copied.
    LayoutMetaDataService.getInstance();
    ElkNode root = ElkGraphUtil.createGraph();
    settings(root);
    Map<String, ElkNode> placed = new HashMap<>();
    for (FlowNode node : graph.nodes()) {
      ElkNode box = ElkGraphUtil.createNode(root);
      box.setDimensions(node.width(), node.height());
      placed.put(node.id(), box);
    }
    List<ElkEdge> edges = new ArrayList<>();
    for (FlowArrow arrow : graph.arrows()) {
      edges.add(edge(arrow, placed));
    }
    new LayeredLayoutProvider().layout(root, new NullElkProgressMonitor());
    return new FlowLayout(
        graph.nodes().stream().map(node -> box(node, placed)).toList(),
        arrows(graph.arrows(), edges),
        root.getWidth(),
        root.getHeight());
  }

  private static void settings(ElkNode root) {
    root.setProperty(CoreOptions.DIRECTION, Direction.DOWN);
    root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
    root.setProperty(CoreOptions.RANDOM_SEED, 1);
    root.setProperty(CoreOptions.PADDING, new ElkPadding(MARGIN));
    root.setProperty(CoreOptions.SPACING_NODE_NODE, BESIDE);
    root.setProperty(CoreOptions.SPACING_EDGE_LABEL, LABEL);
    root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, BELOW);
    root.setProperty(
        LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.NODES_AND_EDGES);
  }

  private static ElkEdge edge(FlowArrow arrow, Map<String, ElkNode> placed) {
    ElkEdge edge =
        ElkGraphUtil.createSimpleEdge(box(arrow.from(), placed), box(arrow.to(), placed));
    ElkLabel label = ElkGraphUtil.createLabel(String.join(" ", arrow.label()), edge);
    label.setDimensions(arrow.labelWidth(), arrow.labelHeight());
    label.setProperty(CoreOptions.EDGE_LABELS_PLACEMENT, EdgeLabelPlacement.CENTER);
    return edge;
  }

  private static ElkNode box(String id, Map<String, ElkNode> placed) {
    ElkNode box = placed.get(id);
    if (box == null) {
      throw new IllegalArgumentException("no box of the flow is named `" + id + "`");
    }
    return box;
  }

  private static Box box(FlowNode node, Map<String, ElkNode> placed) {
    ElkNode box = box(node.id(), placed);
    return new Box(node, box.getX(), box.getY());
  }

  private static List<Arrow> arrows(List<FlowArrow> arrows, List<ElkEdge> edges) {
    List<Arrow> placed = new ArrayList<>();
    for (int i = 0; i < arrows.size(); i++) {
      ElkLabel label = edges.get(i).getLabels().get(0);
      placed.add(
          new Arrow(arrows.get(i), line(edges.get(i)), new Point(label.getX(), label.getY())));
    }
    return placed;
  }

  private static List<Point> line(ElkEdge edge) {
    ElkEdgeSection section = edge.getSections().get(0);
    List<Point> line = new ArrayList<>();
    line.add(new Point(section.getStartX(), section.getStartY()));
    for (ElkBendPoint bend : section.getBendPoints()) {
      line.add(new Point(bend.getX(), bend.getY()));
    }
    line.add(new Point(section.getEndX(), section.getEndY()));
    return line;
  }
}
