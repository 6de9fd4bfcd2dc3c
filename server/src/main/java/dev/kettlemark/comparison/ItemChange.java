package dev.kettlemark.comparison;

import java.util.List;

/**
 * A section of which something else follows in the later state.
 *
 * @param word {@code formula}, {@code variant}, {@code product} and so on
 * @param how whether it is in both states
 * @param causes names of the sections whose change it depends on, its own among them; empty where only what
 *     stands beside it changed
 * @param figures what differs of it; none where it is new or gone
 * @param found findings that are new
 * @param mended findings that are gone
 */
public record ItemChange(
    String word,
    String name,
    How how,
    List<String> causes,
    List<FigureChange> figures,
    List<Told> found,
    List<Told> mended) {

  /** In which of the two states it is. */
  public enum How {
    NEW,
    GONE,
    CHANGED
  }

  public ItemChange {
    causes = List.copyOf(causes);
    figures = List.copyOf(figures);
    found = List.copyOf(found);
    mended = List.copyOf(mended);
  }

  /** Whether anything is to be told of it. */
  boolean isNews() {
    return how != How.CHANGED || !figures.isEmpty() || !found.isEmpty() || !mended.isEmpty();
  }

  ItemChange by(List<String> names) {
    return new ItemChange(word, name, how, names, figures, found, mended);
  }

  /** What differs of one kind. */
  public List<FigureChange> figures(FigureChange.Group group) {
    return figures.stream().filter(change -> change.figure().group() == group).toList();
  }
}
