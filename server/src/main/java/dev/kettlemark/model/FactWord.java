package dev.kettlemark.model;

import java.util.Set;

/** The fact words of each section: the only list of them. */
public final class FactWord {

  public static final Set<String> HOUSE = Set.of(
      "altitude",
      "scale",
      "thermometer",
      "bowl",
      "pan",
      "mould",
      "frame",
      "market",
      "allergens-on-site",
      "room",
      "threshold",
      "note");

  /** Facts of a house that name a tool. */
  public static final Set<String> TOOL =
      Set.of("scale", "thermometer", "bowl", "pan", "mould", "frame");

  public static final Set<String> INGREDIENT = Set.of(
      "role",
      "form",
      "contains",
      "DE",
      "bloom",
      "density",
      "use",
      "needs",
      "disperses",
      "hydrates",
      "activates",
      "coagulates",
      "sets",
      "melts",
      "tempers",
      "reversible",
      "gels-with",
      "tolerates",
      "allergen",
      "traits",
      "suits",
      "may-contain",
      "gluten",
      "label",
      "names",
      "price",
      "supplier",
      "status",
      "reviewed",
      "stands-in-for",
      "caution",
      "note");

  public static final Set<String> FORMULA = Set.of(
      "code", "version", "status", "percent", "batch", "basis", "texture", "expect", "claim",
      "caution", "note", "accept", "makes");

  /** Facts that may also stand among the steps of a stage. */
  public static final Set<String> STAGE = Set.of("note", "accept");

  public static final Set<String> VARIANT_CHANGE =
      Set.of("replace", "drop", "add", "change", "withdraw");

  public static final Set<String> PRODUCT = Set.of(
      "code",
      "version",
      "status",
      "centre",
      "layer",
      "coat",
      "filling",
      "wafer",
      "make",
      "loss",
      "spare",
      "claim",
      "may-contain",
      "caution",
      "shelf",
      "pack",
      "note",
      "accept");

  public static final Set<String> PRODUCT_PART =
      Set.of("centre", "layer", "coat", "filling", "wafer");

  public static final Set<String> TRIAL = Set.of(
      "version", "batch", "lot", "changed", "measured", "scored", "verdict", "photo", "note");

  public static final Set<String> SHEET = Set.of("show", "makes", "note", "title");

  private FactWord() {}
}
