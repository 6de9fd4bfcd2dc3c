package dev.kettlemark.library;

import dev.kettlemark.text.Lazy;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * An immutable set of documents whose names are global.
 *
 * <p>Where a name stands more than once, a document of the user wins over the built-in pantry, and
 * among equals the first in order of URI and offset.
 */
public final class Library {

  private final NavigableMap<String, Document> documents;
  private final Map<Kind, Map<String, List<Entry>>> names;
  private final Map<String, List<Entry>> codes;
  private final Map<Sign.Way, Map<String, List<Entry>>> references;
  private final NavigableMap<String, Entry> houses;

  /** Found when they are first asked for, and once: a page of each formula asks for them. */
  private final Map<Kind, Lazy<List<Entry>>> entries = new EnumMap<>(Kind.class);

  private Library(NavigableMap<String, Document> documents) {
    this.documents = documents;
    this.names = new EnumMap<>(Kind.class);
    this.codes = new HashMap<>();
    this.references = new EnumMap<>(Sign.Way.class);
    this.houses = new TreeMap<>();
    List<Document> own = ownDocuments();
    own.forEach(this::index);
    documents.values().stream().filter(Document::builtIn).forEach(this::index);
    for (Kind kind : Kind.values()) {
      entries.put(kind, Lazy.of(() -> winning(kind)));
    }
  }

  private void index(Document document) {
    for (Entry entry : document.entries()) {
      entry.sign().ifPresent(sign -> index(entry, sign));
    }
  }

  private void index(Entry entry, Sign sign) {
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

  public static Library of(Collection<Document> documents) {
    NavigableMap<String, Document> byUri = new TreeMap<>();
    documents.forEach(document -> byUri.put(document.uri(), document));
    return new Library(byUri);
  }

  /** The library with a document added or replaced. */
  public Library with(Document document) {
    NavigableMap<String, Document> changed = new TreeMap<>(documents);
    changed.put(document.uri(), document);
    return new Library(changed);
  }

  /** The library without a document. */
  public Library without(String uri) {
    NavigableMap<String, Document> changed = new TreeMap<>(documents);
    changed.remove(uri);
    return new Library(changed);
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
    return names.getOrDefault(kind, Map.of()).getOrDefault(name, List.of());
  }

  /** The entry that a name means. */
  public Optional<Entry> find(Kind kind, String name) {
    return all(kind, name).stream().findFirst();
  }

  /** Every formula, variant and product with that code, in order of URI and offset. */
  public List<Entry> withCode(String code) {
    return codes.getOrDefault(code, List.of());
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
    return names.getOrDefault(kind, Map.of()).keySet();
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
    return references.getOrDefault(way, Map.of()).getOrDefault(name, List.of());
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
    return Optional.ofNullable(houses.get(uri))
        .or(() -> houses.values().stream().findFirst());
  }

  /** Where a stretch of a section stands now; empty where the section is gone. */
  public Optional<Place> place(Origin origin) {
    return document(origin.uri())
        .flatMap(document -> document.entryOf(origin.section()))
        .map(entry -> entry.place(origin.span()));
  }
}
