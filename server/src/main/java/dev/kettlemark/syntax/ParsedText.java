package dev.kettlemark.syntax;

import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;

/**
 * A text as a row of sections that together cover it.
 *
 * <p>Reading is a total function of the text. {@link #with(TextEdit)} reads only the sections that
 * the edit touches; all others are the same objects as before.
 */
public final class ParsedText {

  /** Of a longer text the headings are read and nothing else. */
  public static final int MOST_CHARACTERS = 1_000_000;

  /** So many sections are told apart in such a text; the last one holds all that follows. */
  private static final int MOST_HEADINGS = 5_000;

  private final Source source;
  private final List<PlacedSection> sections;

  private ParsedText(Source source, List<PlacedSection> sections) {
    this.source = source;
    this.sections = List.copyOf(sections);
  }

  /** A section and the offset at which it starts in its text. */
  public record PlacedSection(int offset, Section section) {

    public int end() {
      return offset + section.text().length();
    }

    public Span span() {
      return new Span(offset, end());
    }
  }

  public static ParsedText of(String text) {
    return of(Source.of(text));
  }

  private static ParsedText of(Source source) {
    String text = source.text();
    if (text.length() > MOST_CHARACTERS) {
      return headingsOf(source);
    }
    List<PlacedSection> sections = new ArrayList<>();
    int start = 0;
    while (start < text.length() || sections.isEmpty()) {
      int end = sectionEnd(text, start);
      sections.add(read(text, start, end));
      start = end;
    }
    return new ParsedText(source, sections);
  }

  private static ParsedText headingsOf(Source source) {
    String text = source.text();
    List<PlacedSection> sections = new ArrayList<>();
    int start = 0;
    while (start < text.length()) {
      int end = sections.size() + 1 < MOST_HEADINGS ? sectionEnd(text, start) : text.length();
      sections.add(new PlacedSection(start, Section.ofHeading(text.substring(start, end))));
      start = end;
    }
    return new ParsedText(source, sections);
  }

  public Source source() {
    return source;
  }

  /** Whether it is so long that of each section the first line is read and nothing else. */
  public boolean isHeadingsOnly() {
    return source.length() > MOST_CHARACTERS;
  }

  public List<PlacedSection> sections() {
    return sections;
  }

  /** The section that holds the offset; the last one for the end of the text. */
  public PlacedSection sectionAt(int offset) {
    return sections.get(indexAt(offset));
  }

  /** The sections that a range touches, and one on either side. */
  public List<PlacedSection> sectionsAround(Span range) {
    return sections.subList(
        Math.max(0, indexAt(range.start()) - 1),
        Math.min(sections.size(), indexAt(range.end()) + 2));
  }

  /**
   * The text after an edit.
   *
   * <p>Reading starts one section before the edit, since an edit at a section's first word can join
   * it to the one above, and ends at the first section start behind the edit that was one before.
   */
  public ParsedText with(TextEdit edit) {
    Source changed = source.with(edit);
    String text = changed.text();
    if (isHeadingsOnly() || text.length() > MOST_CHARACTERS) {
      return of(changed);
    }
    int first = Math.max(0, indexAt(edit.span().start()) - 1);
    int changedEnd = edit.span().start() + edit.replacement().length();
    List<PlacedSection> result = new ArrayList<>(sections.subList(0, first));
    int start = sections.get(first).offset();
    int kept = first;
    while (start < text.length() || result.isEmpty()) {
      int before = start - edit.growth();
      while (kept < sections.size() && sections.get(kept).offset() < before) {
        kept++;
      }
      if (start >= changedEnd
          && start > 0
          && kept < sections.size()
          && sections.get(kept).offset() == before
          && before >= edit.span().end()) {
        shiftInto(result, kept, edit.growth());
        break;
      }
      int end = sectionEnd(text, start);
      result.add(readOrReuse(text, start, end, sections.get(first), edit));
      start = end;
    }
    return new ParsedText(changed, result);
  }

  private void shiftInto(List<PlacedSection> result, int from, int distance) {
    for (PlacedSection placed : sections.subList(from, sections.size())) {
      result.add(new PlacedSection(placed.offset() + distance, placed.section()));
    }
  }

  /**
   * The section before the edit is looked at again but mostly turns out unchanged.
   *
   * <p>One that the edit reaches is read anew even where it reads the same: behind a copy of itself it
   * is kept as well, and no section stands twice in a text.
   */
  private PlacedSection readOrReuse(
      String text, int start, int end, PlacedSection old, TextEdit edit) {
    if (old.end() <= edit.span().start()
        && old.offset() == start
        && old.end() == end
        && text.startsWith(old.section().text(), start)) {
      return old;
    }
    Section model = sectionAt(Math.min(start, edit.span().start())).section();
    return new PlacedSection(start, model.changedTo(text.substring(start, end)));
  }

  private int indexAt(int offset) {
    int low = 0;
    int high = sections.size() - 1;
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (sections.get(middle).offset() <= offset) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }

  private static int sectionEnd(String text, int start) {
    int secondLine = LineEnds.next(text, start);
    int next = secondLine < 0 ? -1 : SectionBoundaries.next(text, secondLine);
    return next < 0 ? text.length() : next;
  }

  private static PlacedSection read(String text, int start, int end) {
    return new PlacedSection(start, Section.of(text.substring(start, end)));
  }
}
