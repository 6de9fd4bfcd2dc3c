package dev.kettlemark.features;

import dev.kettlemark.quantity.Confidence;
import dev.kettlemark.quantity.Derivation;
import java.util.ArrayList;
import java.util.List;

/** Tells where a number comes from as an indented list that reads well as plain text and as Markdown. */
public final class DerivationText {

  private static final String STEP = "  ";

  private DerivationText() {}

  /** One line for each number, inputs below what was made of them. */
  public static String of(Derivation derivation) {
    List<String> lines = new ArrayList<>();
    add(derivation, "", lines);
    return String.join("\n", lines);
  }

  private static void add(Derivation node, String indent, List<String> lines) {
    lines.add(indent + "- " + node.title() + ": " + node.value() + origin(node));
    if (!node.equation().isEmpty()) {
      lines.add(indent + STEP + "- by " + node.equation());
    }
    node.inputs().forEach(input -> add(input, indent + STEP, lines));
  }

  private static String origin(Derivation node) {
    String trust = trust(node.confidence());
    if (node.source().isEmpty()) {
      return trust.isEmpty() ? "" : " (" + trust + ")";
    }
    return " (" + (trust.isEmpty() ? "" : trust + "; ") + node.source() + ")";
  }

  /** How far a figure may be trusted, in a word or two; nothing for what the user gave. */
  public static String trust(Confidence confidence) {
    return switch (confidence) {
      case EXACT -> "exact";
      case STANDARD -> "standard";
      case MODEL -> "model";
      case RULE_OF_THUMB -> "rule of thumb";
      case GIVEN -> "";
    };
  }
}
