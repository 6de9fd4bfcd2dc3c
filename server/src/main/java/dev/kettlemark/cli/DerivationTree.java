package dev.kettlemark.cli;

import dev.kettlemark.features.DerivationText;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.List;

/** How a figure came about, as an indented tree. */
final class DerivationTree {

  private final Paint paint;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private DerivationTree(Paint paint, int width) {
    this.paint = paint;
    this.width = width;
  }

  static List<String> lines(Derivation derivation, Paint paint, int width, int indent) {
    DerivationTree tree = new DerivationTree(paint, width);
    tree.add(derivation, " ".repeat(indent), " ".repeat(indent));
    return tree.lines;
  }

  private void add(Derivation node, String first, String rest) {
    boolean given = node.equation().isEmpty();
    String figure = node.title() + ": " + node.value();
    String trust = given ? "" : ", " + DerivationText.trust(node.confidence());
    String origin = given && !node.source().isEmpty() ? " (" + node.source() + ")" : "";
    addWrapped(first, rest + "  ", figure + trust + origin, false);
    String below = rest + (node.inputs().isEmpty() ? "    " : "│   ");
    if (!given) {
      addWrapped(below, below + "  ", node.equation(), true);
      addWrapped(below, below + "  ", node.source(), true);
    }
    for (int i = 0; i < node.inputs().size(); i++) {
      boolean last = i + 1 == node.inputs().size();
      add(node.inputs().get(i), rest + (last ? "└ " : "├ "), rest + (last ? "  " : "│ "));
    }
  }

  private void addWrapped(String first, String rest, String text, boolean aside) {
    String head = first;
    int room = Math.max(20, width - Math.max(Cells.of(first), Cells.of(rest)));
    for (String line : Cells.wrapped(Visible.of(text), room)) {
      lines.add(paint.faint(head) + (aside ? paint.faint(line) : line));
      head = rest;
    }
  }
}
