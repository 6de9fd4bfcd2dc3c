package dev.kettlemark.library;

import dev.kettlemark.syntax.Section;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** The questions about names, houses and the day. */
public final class Lookup {

  private Lookup() {}

  /** What a name means. */
  public static Question<Optional<Entry>> of(Kind kind, String name) {
    return new Named(kind, name);
  }

  /** Every entry of a name. */
  public static Question<List<Entry>> all(Kind kind, String name) {
    return new AllNamed(kind, name);
  }

  /** Every name of a kind; changes with each new name, so ask it only where a name is unknown. */
  public static Question<Set<String>> names(Kind kind) {
    return new Names(kind);
  }

  /** The formulas, variants and products that bear a code. */
  public static Question<List<Entry>> withCode(String code) {
    return new WithCode(code);
  }

  /** The trials of a formula or variant. */
  public static Question<List<Entry>> trialsOf(String formula) {
    return new TrialsOf(formula);
  }

  /** The sheets of a formula, variant or product. */
  public static Question<List<Entry>> sheetsOf(String shown) {
    return new SheetsOf(shown);
  }

  /** The house that holds for a document. */
  public static Question<Optional<Entry>> houseFor(String uri) {
    return new HouseOf(uri);
  }

  /** The number of characters of a document that is too long to be checked; empty for all others. */
  public static Question<OptionalInt> excessOf(String uri) {
    return new ExcessOf(uri);
  }

  /** Whether any section of the user's speaks of a material, its own section apart. */
  public static Question<Boolean> mentioned(String material) {
    return new Mentioned(material);
  }

  /** Whether the user's texts hold a formula. */
  public static Question<Boolean> anyFormula() {
    return new AnyFormula();
  }

  /** Whether a section is the first of its document. */
  public static Question<Boolean> opens(Entry entry) {
    return new Opens(entry.uri(), entry.section());
  }

  /** The day at which a library is looked at. */
  public static Question<LocalDate> today() {
    return new Today();
  }

  private static final class ExcessOf extends LookedUp<String, OptionalInt> {

    ExcessOf(String uri) {
      super(uri);
    }

    @Override
    public OptionalInt ask(Snapshot snapshot) {
      return snapshot
          .reading(Part.length(key()))
          .document(key())
          .filter(Document::isTooLong)
          .stream()
          .mapToInt(document -> document.text().source().text().length())
          .findFirst();
    }
  }

  private static final class Opens extends LookedUp<Section, Boolean> {

    private final String uri;

    Opens(String uri, Section section) {
      super(section);
      this.uri = uri;
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // Two sections of one text may say the same.
    public Boolean ask(Snapshot snapshot) {
      return snapshot
          .reading(Part.opening(uri))
          .document(uri)
          .filter(document -> document.entries().get(0).section().equals(key()))
          .isPresent();
    }
  }

  private static final class Mentioned extends LookedUp<String, Boolean> {

    Mentioned(String material) {
      super(material);
    }

    @Override
    public Boolean ask(Snapshot snapshot) {
      return snapshot.reading(Part.mention(key())).ownDocuments().stream()
          .flatMap(document -> document.entries().stream())
          .anyMatch(entry ->
              entry.sign().filter(sign -> sign.mentioned().contains(key())).isPresent());
    }
  }

  private static final class AnyFormula extends LookedUp<String, Boolean> {

    AnyFormula() {
      super("");
    }

    @Override
    public Boolean ask(Snapshot snapshot) {
      return snapshot.reading(Part.formulas()).ownDocuments().stream()
          .flatMap(document -> document.entries().stream())
          .anyMatch(Entry::isFormula);
    }
  }

  private static final class Today extends LookedUp<String, LocalDate> {

    Today() {
      super("");
    }

    @Override
    public LocalDate ask(Snapshot snapshot) {
      return snapshot.today();
    }
  }

  private record Named(Kind kind, String name) implements Question<Optional<Entry>> {

    @Override
    public Optional<Entry> ask(Snapshot snapshot) {
      return snapshot.find(kind, name);
    }
  }

  private static final class AllNamed extends LookedUp<String, List<Entry>> {

    private final Kind kind;
    private final String name;

    AllNamed(Kind kind, String name) {
      super(kind.name() + " " + name);
      this.kind = kind;
      this.name = name;
    }

    @Override
    public List<Entry> ask(Snapshot snapshot) {
      return snapshot.reading(Part.named(kind, name)).all(kind, name);
    }
  }

  private static final class Names extends LookedUp<Kind, Set<String>> {

    Names(Kind kind) {
      super(kind);
    }

    @Override
    public Set<String> ask(Snapshot snapshot) {
      return snapshot.reading(Part.names(key())).names(key());
    }
  }

  private static final class WithCode extends LookedUp<String, List<Entry>> {

    WithCode(String code) {
      super(code);
    }

    @Override
    public List<Entry> ask(Snapshot snapshot) {
      return snapshot.reading(Part.code(key())).withCode(key());
    }
  }

  private static final class TrialsOf extends LookedUp<String, List<Entry>> {

    TrialsOf(String formula) {
      super(formula);
    }

    @Override
    public List<Entry> ask(Snapshot snapshot) {
      return snapshot.reading(Part.trials(key())).trialsOf(key());
    }
  }

  private static final class SheetsOf extends LookedUp<String, List<Entry>> {

    SheetsOf(String shown) {
      super(shown);
    }

    @Override
    public List<Entry> ask(Snapshot snapshot) {
      return snapshot.reading(Part.sheets(key())).sheetsOf(key());
    }
  }

  private static final class HouseOf extends LookedUp<String, Optional<Entry>> {

    HouseOf(String uri) {
      super(uri);
    }

    @Override
    public Optional<Entry> ask(Snapshot snapshot) {
      return snapshot.houseFor(key());
    }
  }
}
