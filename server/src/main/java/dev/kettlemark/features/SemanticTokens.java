package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.text.Position;
import dev.kettlemark.text.PositionEncoding;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * What every word of a text means, for its colour.
 *
 * <p>The words of a section are kept with the section, counted from its own start, so that a key costs the
 * one section in which it is typed.
 */
public final class SemanticTokens {

  /** Line, column, length, type, modifiers. */
  private static final int CELLS = 5;

  private static final Task<List<Mark>> MARKS =
      (entry, scope) -> new SectionMarks(entry, scope).marks();

  private SemanticTokens() {}

  /**
   * A word and what it means.
   *
   * @param span counted from the start of the section
   */
  public record Mark(Span span, TokenType type, Set<TokenModifier> modifiers) {

    public Mark {
      modifiers = Set.copyOf(modifiers);
    }

    int modifierBits() {
      return modifiers.stream()
          .mapToInt(modifier -> 1 << TokenModifier.LEGEND.indexOf(modifier))
          .sum();
    }
  }

  /** The words of a section in order; a name that means nothing known has no mark. */
  public static List<Mark> of(Snapshot snapshot, Entry entry) {
    return snapshot.result(MARKS, entry);
  }

  /** The words of a document as the protocol counts them: each from the one before it. */
  public static int[] encoded(Snapshot snapshot, Document document, PositionEncoding encoding) {
    return encoded(
        snapshot, document, encoding, new Span(0, document.text().source().length()));
  }

  /** The words on the lines that a range touches, as the protocol counts them. */
  public static int[] encoded(
      Snapshot snapshot, Document document, PositionEncoding encoding, Span range) {
    Source source = document.text().source();
    int first = source.lineAt(range.start());
    int last = source.lineAt(range.end());
    List<int[]> sections = new ArrayList<>();
    List<Integer> starts = new ArrayList<>();
    int total = 0;
    Rows rows = new Rows(encoding);
    for (Entry entry : document.entries()) {
      if (entry.placed().span().meets(range) || entry.placed().span().touches(range.start())) {
        int[] section = snapshot.result(rows, entry);
        sections.add(section);
        starts.add(source.lineAt(entry.placed().offset()));
        total += section.length;
      }
    }
    int[] data = new int[total];
    int written = 0;
    int line = 0;
    int column = 0;
    for (int i = 0; i < sections.size(); i++) {
      int[] section = sections.get(i);
      for (int row = 0; row < section.length; row += CELLS) {
        int at = starts.get(i) + section[row];
        if (at < first || at > last) {
          continue;
        }
        data[written] = at - line;
        data[written + 1] = at == line ? section[row + 1] - column : section[row + 1];
        System.arraycopy(section, row + 2, data, written + 2, CELLS - 2);
        line = at;
        column = section[row + 1];
        written += CELLS;
      }
    }
    return Arrays.copyOf(data, written);
  }

  /** The marks of a section as lines, columns and lengths of one way to count, from the section's start. */
  private record Rows(PositionEncoding encoding) implements Task<int[]> {

    @Override
    public int[] compute(Entry entry, Scope scope) {
      Source source = Source.of(entry.section().text());
      List<Mark> marks = new SectionMarks(entry, scope).marks();
      int[] rows = new int[marks.size() * CELLS];
      int written = 0;
      for (Mark mark : marks) {
        Position start = source.position(mark.span().start(), encoding);
        Position end = source.position(mark.span().end(), encoding);
        rows[written] = start.line();
        rows[written + 1] = start.column();
        rows[written + 2] = end.column() - start.column();
        rows[written + 3] = TokenType.LEGEND.indexOf(mark.type());
        rows[written + 4] = mark.modifierBits();
        written += CELLS;
      }
      return rows;
    }
  }
}
