package dev.kettlemark.pictures;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import java.util.Set;
import java.util.function.Predicate;

/** What a bar tells apart, each with a pattern that grey print keeps apart. */
enum ShareKind {
  WATER("water", is(Component.WATER), 8, ""),
  SUCROSE("sucrose", is(Component.SUCROSE), 6, line("M0 6L6 0M-1 1L1 -1M5 7L7 5")),
  GLUCOSE("glucose", is(Component.GLUCOSE), 6, line("M0 0L6 6M5 -1L7 1M-1 5L1 7")),
  FRUCTOSE("fructose", is(Component.FRUCTOSE), 5, line("M0 2.5H5")),
  OTHER_SUGARS(
      "other sugars",
      of(Component.Family.SUGAR)
          .and(is(Component.SUCROSE, Component.GLUCOSE, Component.FRUCTOSE).negate()),
      5,
      line("M2.5 0V5")),
  LONGER_SACCHARIDES(
      "longer saccharides", of(Component.Family.OLIGOSACCHARIDE), 6, line("M0 0L6 6M0 6L6 0")),
  POLYOLS("polyols", of(Component.Family.POLYOL), 6, line("M0 3H6M3 0V6")),
  FAT("fat", of(Component.Family.FAT), 6, dot(3, 3, "1.6")),
  PROTEIN("protein", of(Component.Family.PROTEIN), 4, tint("0.75")),
  STARCH_AND_FIBRE(
      "starch and fibre",
      of(Component.Family.STARCH, Component.Family.FIBRE),
      4,
      dot(1, 1, "0.7") + dot(3, 3, "0.7")),
  REST(
      "acid, minerals and the rest",
      of(
          Component.Family.ACID,
          Component.Family.MINERAL,
          Component.Family.ETHANOL,
          Component.Family.OTHER),
      4,
      tint("0.35"));

  private final String word;

  @SuppressWarnings(
      "ImmutableEnumChecker") // The predicates hold nothing, but their type cannot say so.
  private final Predicate<Component> members;

  private final int size;
  private final String tile;

  ShareKind(String word, Predicate<Component> members, int size, String tile) {
    this.word = word;
    this.members = members;
    this.size = size;
    this.tile = tile;
  }

  String word() {
    return word;
  }

  /** How long the side of its tile is. */
  int size() {
    return size;
  }

  /** What is drawn on its tile; empty for bare paper. */
  String tile() {
    return tile;
  }

  /** Its share of a mass, as a fraction of one. */
  double of(Composition composition) {
    return composition.weighted(component -> members.test(component) ? 1 : 0);
  }

  private static Predicate<Component> is(Component... components) {
    Set<Component> all = Set.of(components);
    return all::contains;
  }

  private static Predicate<Component> of(Component.Family... families) {
    Set<Component.Family> all = Set.of(families);
    return component -> all.contains(component.family());
  }

  private static String line(String path) {
    return "<path class=\"line\" d=\"" + path + "\"/>";
  }

  private static String dot(int x, int y, String radius) {
    return "<circle class=\"ink\" cx=\"" + x + "\" cy=\"" + y + "\" r=\"" + radius + "\"/>";
  }

  private static String tint(String opacity) {
    return "<rect class=\"ink\" width=\"4\" height=\"4\" fill-opacity=\"" + opacity + "\"/>";
  }
}
