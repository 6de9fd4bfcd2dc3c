package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Edits of a document, laid out.
 *
 * <p>Where the changed sections had the formatter's layout before, they have it afterwards; elsewhere
 * only the changed lines are laid out, so that nobody's own layout is lost.
 *
 * @param after the document afterwards
 * @param edits what to change, whole lines, in order
 */
record Rewriting(Document after, List<TextEdit> edits) {

  Rewriting {
    edits = List.copyOf(edits);
  }

  /** Lays out the result of edits that do not overlap; all in the document's offsets. */
  static Rewriting of(Document document, List<TextEdit> raw) {
    List<TextEdit> sorted = new ArrayList<>(raw);
    sorted.sort(Comparator.comparingInt(edit -> edit.span().start()));
    Document changed = document.with(sorted);
    boolean laidOut = isLaidOut(document, sorted);
    BitSet touched = touched(changed.text().source(), sorted);
    Set<Section> kept = new HashSet<>();
    document.entries().forEach(entry -> kept.add(entry.section()));
    Source source = changed.text().source();
    List<TextEdit> layout = new ArrayList<>();
    for (PlacedSection placed : changed.text().sections()) {
      if (laidOut && !kept.contains(placed.section())) {
        layout.addAll(layout(changed, placed));
      } else if (!laidOut && holdsAny(touched, source, placed)) {
        layout(changed, placed).stream()
            .filter(edit -> touched.get(source.lineAt(edit.span().start())))
            .forEach(layout::add);
      }
    }
    Document after = changed.with(layout);
    return new Rewriting(
        after,
        LineChanges.between(
            document.text().source().text(), after.text().source().text()));
  }

  private static boolean isLaidOut(Document document, List<TextEdit> raw) {
    Set<PlacedSection> sections = new HashSet<>();
    raw.forEach(edit -> {
      sections.add(document.text().sectionAt(edit.span().start()));
      sections.add(document.text().sectionAt(Math.max(0, edit.span().start() - 1)));
      sections.add(document.text().sectionAt(edit.span().end()));
    });
    return sections.stream().allMatch(placed -> layout(document, placed).isEmpty());
  }

  /** What the layout changes in one section. */
  private static List<TextEdit> layout(Document document, PlacedSection placed) {
    return Formatter.edits(document.text(), placed.span()).stream()
        .filter(edit -> document.text().sectionAt(edit.span().start()).equals(placed))
        .toList();
  }

  private static boolean holdsAny(BitSet lines, Source source, PlacedSection placed) {
    int line = lines.nextSetBit(source.lineAt(placed.offset()));
    return line >= 0 && line <= source.lineAt(placed.end());
  }

  private static BitSet touched(Source after, List<TextEdit> sorted) {
    BitSet lines = new BitSet();
    int growth = 0;
    for (TextEdit edit : sorted) {
      int start = edit.span().start() + growth;
      lines.set(after.lineAt(start), after.lineAt(start + edit.replacement().length()) + 1);
      growth += edit.growth();
    }
    return lines;
  }
}
