package dev.kettlemark.comparison;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A figure that looks different in the two states.
 *
 * @param figure what it is a figure of
 * @param before {@link Shown#NONE} where the earlier state has no such figure
 * @param after {@link Shown#NONE} where the later state has no such figure
 */
public record FigureChange(Figure figure, Shown before, Shown after) {

  /** What kind of thing differs. */
  public enum Group {
    AMOUNT,
    MASS,
    ALLERGEN,
    LABEL
  }

  /**
   * Something that can be told of an item.
   *
   * @param name {@code foam: egg-white-powder}, {@code moisture}, {@code contains milk}
   */
  public record Figure(Group group, String name) {}

  /** What differs between two states of one item, in the order in which the later one tells it. */
  static List<FigureChange> between(Map<Figure, Shown> before, Map<Figure, Shown> after) {
    Set<Figure> figures = new LinkedHashSet<>();
    for (Group group : Group.values()) {
      figures.addAll(of(group, after));
      figures.addAll(of(group, before));
    }
    List<FigureChange> changes = new ArrayList<>();
    for (Figure figure : figures) {
      Shown old = before.getOrDefault(figure, absent(figure));
      Shown now = after.getOrDefault(figure, absent(figure));
      if (!old.looksLike(now)) {
        changes.add(new FigureChange(figure, old, now));
      }
    }
    return changes;
  }

  private static Set<Figure> of(Group group, Map<Figure, Shown> figures) {
    Set<Figure> own = new LinkedHashSet<>(figures.keySet());
    own.removeIf(figure -> figure.group() != group);
    return own;
  }

  /** An allergen that nobody states is not said to be absent. */
  private static Shown absent(Figure figure) {
    return figure.group() == Group.ALLERGEN ? Shown.word("not stated") : Shown.NONE;
  }
}
