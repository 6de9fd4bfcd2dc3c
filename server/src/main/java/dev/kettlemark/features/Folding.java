package dev.kettlemark.features;

import dev.kettlemark.syntax.ParsedText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What an editor may fold away: sections, stages, and comments of several lines. */
public final class Folding {

  private Folding() {}

  /** What is folded. */
  public enum Kind {
    SECTION,
    STAGE,
    COMMENT
  }

  /**
   * A run of lines, at least two.
   *
   * @param firstLine the line that stays visible, from 0
   * @param lastLine the last line that goes away
   */
  public record Fold(int firstLine, int lastLine, Kind kind) {}

  /** The folds of a text by their first line. */
  public static List<Fold> of(ParsedText text) {
    List<Fold> folds = new ArrayList<>();
    for (Block block : Block.of(text)) {
      add(block, folds);
      block.parts().forEach(part -> add(part, folds));
    }
    addComments(WrittenLine.of(text), folds);
    folds.sort(Comparator.comparingInt(Fold::firstLine));
    return List.copyOf(folds);
  }

  private static void add(Block block, List<Fold> folds) {
    int first = block.heading().number();
    int last = block.lastLine().number();
    if (first < last) {
      folds.add(new Fold(first, last, block.isStage() ? Kind.STAGE : Kind.SECTION));
    }
  }

  private static void addComments(List<WrittenLine> lines, List<Fold> folds) {
    int first = 0;
    while (first < lines.size()) {
      int next = first;
      while (next < lines.size() && lines.get(next).isComment()) {
        next++;
      }
      if (next > first + 1) {
        folds.add(new Fold(first, next - 1, Kind.COMMENT));
      }
      first = Math.max(next, first + 1);
    }
  }
}
