package dev.kettlemark.library;

import dev.kettlemark.text.Lazy;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * An immutable set of documents whose names are global.
 *
 * <p>Where a name stands more than once, a document of the user wins over the built-in pantry, and
 * among equals the first in order of URI and offset.
 */
public final class Library {

  private final NavigableMap<String, Document> documents;

  /** Put together when it is first asked for: of the keys of a burst only the last one is. */
  private final Lazy<Index> own;

  /** That of the pantry stays from key to key. */
  private final Index builtIn;

  /** Found when they are first asked for, and once: a page of each formula asks for them. */
  private final Map<Kind, Lazy<List<Entry>>> entries = new EnumMap<>(Kind.class);

  /** The sections of some documents, by what they are found by. */
  private static final class Index {

    private final Map<Kind, Map<String, List<Entry>>> names = new EnumMap<>(Kind.class);
    private final Map<String, List<Entry>> codes = new HashMap<>();
    private final Map<Sign.Way, Map<String, List<Entry>>> references =
        new EnumMap<>(Sign.Way.class);
    private final NavigableMap<String, Entry> houses = new TreeMap<>();

    static Index of(Collection<Document> documents, boolean builtIn) {
      Index index = new Index();
      for (Document document : documents) {
        if (document.builtIn() == builtIn) {
          for (Entry entry : document.entries()) {
            entry.sign().ifPresent(sign -> index.add(entry, sign));
          }
        }
      }
      return index;
    }

    private void add(Entry entry, Sign sign) {
      add(names.computeIfAbsent(sign.kind(), key -> new HashMap<>()), sign.name(), entry);
      sign.code().ifPresent(code -> add(codes, code, entry));
      sign.reference()
          .ifPresent(to ->
              add(references.computeIfAbsent(to.way(), key -> new HashMap<>()), to.name(), entry));
      if (sign.kind() == Kind.HOUSE) {
        houses.putIfAbsent(entry.uri(), entry);
      }
    }

    private static void add(Map<String, List<Entry>> index, String name, Entry entry) {
      index.computeIfAbsent(name, key -> new ArrayList<>(1)).add(entry);
    }

    List<Entry> named(Kind kind, String name) {
      return names(kind).getOrDefault(name, List.of());
    }

    Map<String, List<Entry>> names(Kind kind) {
      return names.getOrDefault(kind, Map.of());
    }

    List<Entry> withCode(String code) {
      return codes.getOrDefault(code, List.of());
    }

    List<Entry> referring(Sign.Way way, String name) {
      return references.getOrDefault(way, Map.of()).getOrDefault(name, List.of());
    }

    Optional<Entry> house(String uri) {
      return Optional.ofNullable(houses.get(uri));
    }

    Optional<Entry> firstHouse() {
      return Optional.ofNullable(houses.firstEntry()).map(Map.Entry::getValue);
    }
  }

  private Library(NavigableMap<String, Document> documents, Index builtIn) {
    this.documents = documents;
    this.own = Lazy.of(() -> Index.of(documents.values(), false));
    this.builtIn = builtIn;
    for (Kind kind : Kind.values()) {
      entries.put(kind, Lazy.of(() -> winning(kind)));
    }
  }

  public static Library of(Collection<Document> documents) {
    NavigableMap<String, Document> byUri = new TreeMap<>();
    documents.forEach(document -> byUri.put(document.uri(), document));
    return new Library(byUri, Index.of(byUri.values(), true));
  }

  /** The library with a document added or replaced. */
  public Library with(Document document) {
    NavigableMap<String, Document> changed = new TreeMap<>(documents);
    Document replaced = changed.put(document.uri(), document);
    return changed(changed, document.builtIn() || (replaced != null && replaced.builtIn()));
  }

  /** The library without a document. */
  public Library without(String uri) {
    NavigableMap<String, Document> changed = new TreeMap<>(documents);
    Document gone = changed.remove(uri);
    return changed(changed, gone != null && gone.builtIn());
  }

  private Library changed(NavigableMap<String, Document> changed, boolean isPantryChanged) {
    return new Library(changed, isPantryChanged ? Index.of(changed.values(), true) : builtIn);
  }

  public Optional<Document> document(String uri) {
    return Optional.ofNullable(documents.get(uri));
  }

  /** All documents, the built-in pantry among them, in order of URI. */
  public Collection<Document> documents() {
    return documents.values();
  }

  /** The user's documents, in order of URI. */
  public List<Document> ownDocuments() {
    return documents.values().stream().filter(document -> !document.builtIn()).toList();
  }

  /** Every entry of a name, the winning one first. */
  public List<Entry> all(Kind kind, String name) {
    return both(own.get().named(kind, name), builtIn.named(kind, name));
  }

  /** The entry that a name means. */
  public Optional<Entry> find(Kind kind, String name) {
    List<Entry> found = all(kind, name);
    return found.isEmpty() ? Optional.empty() : Optional.of(found.get(0));
  }

  /** Every formula, variant and product with that code, in order of URI and offset. */
  public List<Entry> withCode(String code) {
    return both(own.get().withCode(code), builtIn.withCode(code));
  }

  /** Every trial of a formula or variant, in order of URI and offset. */
  public List<Entry> trialsOf(String formula) {
    return referring(Sign.Way.TRIES, formula);
  }

  /** Every sheet of a formula, variant or product, in order of URI and offset. */
  public List<Entry> sheetsOf(String shown) {
    return referring(Sign.Way.SHOWS, shown);
  }

  /** Every name of a kind. */
  public Set<String> names(Kind kind) {
    Set<String> all = new HashSet<>(own.get().names(kind).keySet());
    all.addAll(builtIn.names(kind).keySet());
    return all;
  }

  /** The winning entries of a kind, in order of URI and offset. */
  public List<Entry> entries(Kind kind) {
    return Objects.requireNonNull(entries.get(kind)).get();
  }

  /** The variants of a formula that their names mean, in order of URI and offset. */
  public List<Entry> variantsOf(String parent) {
    return referring(Sign.Way.VARIES, parent).stream()
        .filter(entry -> entry
            .sign()
            .flatMap(sign -> find(Kind.MATERIAL, sign.name()))
            .filter(entry::equals)
            .isPresent())
        .toList();
  }

  private List<Entry> referring(Sign.Way way, String name) {
    return both(own.get().referring(way, name), builtIn.referring(way, name));
  }

  private static List<Entry> both(List<Entry> own, List<Entry> builtIn) {
    if (builtIn.isEmpty()) {
      return own;
    }
    return own.isEmpty()
        ? builtIn
        : Stream.of(own, builtIn).flatMap(List::stream).toList();
  }

  private List<Entry> winning(Kind kind) {
    return documents.values().stream()
        .flatMap(document -> document.entries().stream())
        .filter(entry -> entry
            .sign()
            .filter(sign -> sign.kind() == kind)
            .flatMap(sign -> find(kind, sign.name()))
            .filter(entry::equals)
            .isPresent())
        .toList();
  }

  /** The house that holds for a document: its own, or the library's first. */
  public Optional<Entry> houseFor(String uri) {
    return own.get().house(uri).or(own.get()::firstHouse).or(builtIn::firstHouse);
  }

  /** Where a stretch of a section stands now; empty where the section is gone. */
  public Optional<Place> place(Origin origin) {
    return document(origin.uri())
        .flatMap(document -> document.entryOf(origin.section()))
        .map(entry -> entry.place(origin.span()));
  }
}
