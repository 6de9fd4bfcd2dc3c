package dev.kettlemark.pictures;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.TakeLine;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.scaling.ComputedProduct;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What feeds what in a formula, and in the products that are made of it. */
final class FormulaFlow {

  private final ComputedFormula computed;
  private final Map<String, FlowNode> nodes = new LinkedHashMap<>();
  private final List<FlowArrow> arrows = new ArrayList<>();

  /** What no stage has taken yet of each, as a share; and the last stage of each name so far. */
  private final List<Double> untaken = new ArrayList<>();

  private final Map<String, Integer> latest = new HashMap<>();

  private FormulaFlow(ComputedFormula computed) {
    this.computed = computed;
  }

  static FlowGraph of(ComputedFormula computed, List<ComputedProduct> products) {
    FormulaFlow flow = new FormulaFlow(computed);
    for (int i = 0; i < computed.process().stages().size(); i++) {
      flow.stage(i);
    }
    for (int i = 0; i < products.size(); i++) {
      flow.product(products.get(i), i);
    }
    return new FlowGraph(List.copyOf(flow.nodes.values()), flow.arrows);
  }

  private void stage(int index) {
    StageResult stage = computed.process().stages().get(index);
    FlowNode box = StageBox.of(computed, index);
    for (LineAmount line : computed.amounts().lines()) {
      if (line.stage() == index && StageBox.isMade(computed, line)) {
        made(line, box);
      }
    }
    nodes.put(box.id(), box);
    stage.stage().takes().forEach(take -> take(take, box));
    latest.put(stage.name(), index);
    untaken.add(1.0);
  }

  private void made(LineAmount line, FlowNode to) {
    String name = line.line().ingredient().value();
    FlowNode from = nodes.computeIfAbsent(
        "made-" + name,
        id -> new FlowNode(
            id,
            FlowNode.Kind.MADE,
            name,
            List.of(BoxLine.small("a formula of its own")),
            name + " is a formula of its own."));
    Temperature temperature =
        line.line().at().map(at -> at.value()).orElse(computed.kitchen().room());
    arrow(from.id(), to, StageBox.mass(computed, line), Band.of(temperature));
  }

  private void take(TakeLine take, FlowNode to) {
    Integer source = latest.get(take.stage().value());
    if (source == null) {
      return;
    }
    double share = Math.min(untaken.get(source), take.share().doubleValue());
    untaken.set(source, untaken.get(source) - share);
    StageResult stage = computed.process().stages().get(source);
    arrow(
        "stage-" + source,
        to,
        stage.left().mass().map(mass -> mass.times(share)),
        stage.left().temperature());
  }

  private void arrow(String from, FlowNode to, Outcome<Mass> mass, Band<Temperature> warm) {
    String weight = mass.fold(Display::estimate, unknown -> "weight unknown");
    arrows.add(new FlowArrow(from, to.id(), List.of(weight, "at " + Display.celsius(warm))));
  }

  private void product(ComputedProduct made, int index) {
    Product product = made.product();
    List<String> lines = new ArrayList<>();
    lines.add("one piece " + made.pieceGrams().fold(Display::mass, unknown -> "of unknown weight"));
    product
        .pieces()
        .ifPresent(
            pieces -> lines.add(Display.trimmed(pieces.value().doubleValue(), 1) + " pieces"));
    String title = product.title().orElse(product.name().value());
    FlowNode node = new FlowNode(
        "product-" + index,
        FlowNode.Kind.PRODUCT,
        title,
        lines.stream().map(BoxLine::plain).toList(),
        "Product " + title + ": " + String.join(", ", lines) + ".");
    nodes.put(node.id(), node);
    for (ComputedProduct.PartWeight part : made.parts()) {
      part.part().material().ifPresent(material -> part(made, part, material.value(), node));
    }
  }

  private void part(
      ComputedProduct made, ComputedProduct.PartWeight part, String material, FlowNode to) {
    String each = part.mass().fold(Display::mass, unknown -> "weight unknown") + " a piece";
    Optional<String> all = made.needs().stream()
        .filter(need ->
            need.material().equals(material) && need.role().equals(part.part().role()))
        .findFirst()
        .map(need -> Display.mass(need.withLoss()) + " in all");
    List<String> label = new ArrayList<>(List.of(part.part().role() + ", " + each));
    all.ifPresent(label::add);
    arrows.add(new FlowArrow(source(material), to.id(), label));
  }

  private String source(String material) {
    int last = computed.process().stages().size() - 1;
    if (material.equals(computed.formula().name().value()) && last >= 0) {
      return "stage-" + last;
    }
    return nodes
        .computeIfAbsent(
            "part-" + material,
            id -> new FlowNode(
                id, FlowNode.Kind.PART, material, List.of(), material + " goes onto the piece."))
        .id();
  }
}
