package dev.kettlemark.library;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
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
import java.util.function.Function;

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
  private final Map<String, List<Entry>> trials;
  private final Map<String, List<Entry>> sheets;
  private final Map<String, List<Entry>> variants;
  private final NavigableMap<String, Entry> houses;

  /** Found when they are first asked for, and once: a page of each formula asks for them. */
  private final Map<Kind, Lazy<List<Entry>>> entries = new EnumMap<>(Kind.class);

  private Library(NavigableMap<String, Document> documents) {
    this.documents = documents;
    this.names = index(documents.values());
    List<Document> own = ownDocuments();
    this.codes = codes(own);
    this.trials = referring(
        own,
        declaration -> declaration instanceof Trial trial ? trial.formula() : Optional.empty());
    this.sheets = referring(
        own,
        declaration -> declaration instanceof Sheet sheet ? sheet.subject() : Optional.empty());
    this.variants = referring(
        own,
        declaration ->
            declaration instanceof Variant variant ? variant.parent() : Optional.empty());
    for (Kind kind : Kind.values()) {
      entries.put(kind, Lazy.of(() -> winning(kind)));
    }
    this.houses = new TreeMap<>();
    for (Document document : own) {
      document.entries().stream()
          .filter(entry -> entry.declaration().filter(House.class::isInstance).isPresent())
          .findFirst()
          .ifPresent(entry -> houses.put(document.uri(), entry));
    }
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
    return trials.getOrDefault(formula, List.of());
  }

  /** Every sheet of a formula, variant or product, in order of URI and offset. */
  public List<Entry> sheetsOf(String shown) {
    return sheets.getOrDefault(shown, List.of());
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
    return variants.getOrDefault(parent, List.of()).stream()
        .filter(entry -> entry
            .declaration()
            .flatMap(declaration -> find(Kind.MATERIAL, declaration.name().value()))
            .filter(entry::equals)
            .isPresent())
        .toList();
  }

  private List<Entry> winning(Kind kind) {
    return documents.values().stream()
        .flatMap(document -> document.entries().stream())
        .filter(entry ->
            entry.section().keyword().map(Kind::of).filter(kind::equals).isPresent())
        .filter(entry -> entry
            .declaration()
            .flatMap(declaration -> find(kind, declaration.name().value()))
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

  /** The pantry is indexed by its headings alone, which hold nothing but ingredients. */
  private static Map<Kind, Map<String, List<Entry>>> index(Collection<Document> documents) {
    Map<Kind, Map<String, List<Entry>>> index = new EnumMap<>(Kind.class);
    for (boolean builtIn : new boolean[] {false, true}) {
      for (Document document : documents) {
        if (document.builtIn() == builtIn) {
          for (Entry entry : document.entries()) {
            Name.of(document, entry).ifPresent(name -> add(index, entry, name));
          }
        }
      }
    }
    return index;
  }

  private static Map<String, List<Entry>> codes(Collection<Document> documents) {
    Map<String, List<Entry>> codes = new HashMap<>();
    for (Document document : documents) {
      for (Entry entry : document.entries()) {
        entry
            .declaration()
            .flatMap(Facts::of)
            .flatMap(facts -> facts.wordOf("code"))
            .ifPresent(code ->
                codes.computeIfAbsent(code.value(), key -> new ArrayList<>(1)).add(entry));
      }
    }
    return codes;
  }

  /** The entries that refer to others, by the name to which they refer. */
  private static Map<String, List<Entry>> referring(
      Collection<Document> documents, Function<Declaration, Optional<Located<String>>> reference) {
    Map<String, List<Entry>> referring = new HashMap<>();
    for (Document document : documents) {
      for (Entry entry : document.entries()) {
        entry
            .declaration()
            .flatMap(reference)
            .ifPresent(name -> referring
                .computeIfAbsent(name.value(), key -> new ArrayList<>(1))
                .add(entry));
      }
    }
    return referring;
  }

  private static void add(Map<Kind, Map<String, List<Entry>>> index, Entry entry, Name name) {
    index
        .computeIfAbsent(name.kind, key -> new HashMap<>())
        .computeIfAbsent(name.name, key -> new ArrayList<>(1))
        .add(entry);
  }

  private record Name(Kind kind, String name) {

    static Optional<Name> of(Document document, Entry entry) {
      return document.builtIn()
          ? Pantry.ingredient(entry.section().text()).map(name -> new Name(Kind.MATERIAL, name))
          : entry
              .declaration()
              .map(declaration -> new Name(
                  Kind.of(entry.section().keyword().orElseThrow()),
                  declaration.name().value()));
    }
  }
}
