package dev.kettlemark.pictures;

import java.util.List;

/** The flow of a formula before it has a place: what feeds what. */
record FlowGraph(List<FlowNode> nodes, List<FlowArrow> arrows) {

  FlowGraph {
    nodes = List.copyOf(nodes);
    arrows = List.copyOf(arrows);
  }
}
