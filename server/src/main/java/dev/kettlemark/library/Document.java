package dev.kettlemark.library;

import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One text of a library with what its sections declare.
 *
 * @param uri the spelling by which its editor or the terminal knows it
 * @param builtIn whether it belongs to the built-in pantry, which any other text overrides
 */
public record Document(String uri, boolean builtIn, ParsedText text, List<Entry> entries) {

  public Document {
    entries = List.copyOf(entries);
  }

  public static Document of(String uri, String text) {
    return read(uri, false, ParsedText.of(text), Map.of());
  }

  public static Document builtIn(String uri, String text) {
    return read(uri, true, ParsedText.of(text), Map.of());
  }

  /** The same, with all read by which a library finds its sections; on whatever thread asks for it. */
  public Document learnt() {
    entries.forEach(Entry::sign);
    return this;
  }

  /** Lets go of its trees and of what they declare, until somebody asks again. */
  public void letGo() {
    entries.forEach(Entry::letGo);
  }

  /** Whether it is too long to be computed and checked at every key; names count all the same. */
  public boolean isTooLong() {
    return text.isHeadingsOnly();
  }

  /** The document after an edit; sections that the edit did not touch are not read again. */
  public Document with(TextEdit edit) {
    return with(text.with(edit));
  }

  /** The document after edits that do not overlap; sections that they did not touch are not read again. */
  public Document with(List<TextEdit> edits) {
    List<TextEdit> sorted = new ArrayList<>(edits);
    sorted.sort(Comparator.comparingInt(edit -> edit.span().start()));
    Document changed = this;
    // From the last to the first, so that each finds its place.
    for (int i = sorted.size() - 1; i >= 0; i--) {
      changed = changed.with(sorted.get(i));
    }
    return changed;
  }

  /** The document with another text; sections that both share are not read again. */
  public Document with(ParsedText other) {
    Map<Section, Entry.Content> known = new HashMap<>();
    entries.forEach(entry -> known.put(entry.section(), entry.content()));
    return read(uri, builtIn, other, known);
  }

  /** The entry whose section holds the offset. */
  public Entry entryAt(int offset) {
    PlacedSection placed = text.sectionAt(offset);
    return entries.get(text.sections().indexOf(placed));
  }

  /** The entry of a section, if this document holds it. */
  public Optional<Entry> entryOf(Section section) {
    return entries.stream().filter(entry -> entry.section().equals(section)).findFirst();
  }

  private static Document read(
      String uri, boolean builtIn, ParsedText text, Map<Section, Entry.Content> known) {
    List<Entry> entries = new ArrayList<>(text.sections().size());
    for (PlacedSection placed : text.sections()) {
      Section section = placed.section();
      Entry.Content content = known.get(section);
      entries.add(
          new Entry(uri, placed, content == null ? Entry.Content.of(section, builtIn) : content));
    }
    return new Document(uri, builtIn, text, entries);
  }
}
