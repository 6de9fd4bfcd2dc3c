package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Place;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Every name of a library and what it speaks of.
 *
 * <p>Names in quotes and comments are no names, and a word that means nothing known is left out.
 */
public final class Symbols {

  private static final Task<List<Occurrence>> OCCURRENCES =
      (entry, scope) -> new SectionNames(entry, scope).occurrences();

  private Symbols() {}

  /** A name with the section that holds it. */
  public record Found(Entry entry, Occurrence occurrence) {

    public Symbol symbol() {
      return occurrence.symbol();
    }

    public Place place() {
      return entry.place(occurrence.span());
    }
  }

  /** The names of a section, in order of place. */
  public static List<Occurrence> of(Snapshot snapshot, Entry entry) {
    return snapshot.result(OCCURRENCES, entry);
  }

  /** The name that a cursor touches. */
  public static Optional<Found> at(Snapshot snapshot, Document document, int offset) {
    Entry entry = document.entryAt(offset);
    return at(snapshot, entry, offset - entry.placed().offset());
  }

  /** The name in a section that an offset within it touches. */
  static Optional<Found> at(Snapshot snapshot, Entry entry, int offset) {
    return of(snapshot, entry).stream()
        .filter(occurrence -> occurrence.span().touches(offset))
        .map(occurrence -> new Found(entry, occurrence))
        .findFirst();
  }

  /** Every name of a document, in order. */
  public static Stream<Found> in(Snapshot snapshot, Document document) {
    return document.entries().stream()
        .flatMap(entry -> of(snapshot, entry).stream().map(name -> new Found(entry, name)));
  }

  /** Every name of the library and the pantry. */
  public static Stream<Found> everywhere(Snapshot snapshot) {
    return snapshot.library().documents().stream().flatMap(document -> in(snapshot, document));
  }

  /** Where a document speaks of something. */
  static List<Span> spans(Snapshot snapshot, Document document, Symbol symbol) {
    return in(snapshot, document)
        .filter(found -> found.symbol().equals(symbol))
        .map(found -> found.place().span())
        .toList();
  }
}
