package dev.kettlemark.library;

import dev.kettlemark.syntax.Section;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;

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

  private static final class ExcessOf extends LookedUp<OptionalInt> {

    private final String uri;

    ExcessOf(String uri) {
      super(uri);
      this.uri = uri;
    }

    @Override
    public OptionalInt ask(Snapshot snapshot) {
      return snapshot.reading(Part.length(uri)).document(uri).filter(Document::isTooLong).stream()
          .mapToInt(document -> document.text().source().text().length())
          .findFirst();
    }
  }

  private static final class Opens extends LookedUp<Boolean> {

    private final String uri;
    private final Section section;

    Opens(String uri, Section section) {
      super(section);
      this.uri = uri;
      this.section = section;
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // Two sections of one text may say the same.
    public Boolean ask(Snapshot snapshot) {
      return snapshot
          .reading(Part.opening(uri))
          .document(uri)
          .filter(document -> document.entries().get(0).section().equals(section))
          .isPresent();
    }
  }

  private static final class Mentioned extends LookedUp<Boolean> {

    private final String material;

    Mentioned(String material) {
      super(material);
      this.material = material;
    }

    @Override
    public Boolean ask(Snapshot snapshot) {
      return snapshot.reading(Part.mention(material)).ownDocuments().stream()
          .flatMap(document -> document.entries().stream())
          .anyMatch(entry ->
              entry.sign().filter(sign -> sign.mentioned().contains(material)).isPresent());
    }
  }

  private static final class AnyFormula extends LookedUp<Boolean> {

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

  private static final class Today extends LookedUp<LocalDate> {

    Today() {
      super("");
    }

    @Override
    public LocalDate ask(Snapshot snapshot) {
      return snapshot.today();
    }
  }

  /** Asked many times at each key; a record's own comparison takes as long as the answer. */
  private record Named(Kind kind, String name) implements Question<Optional<Entry>> {

    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Named that && kind == that.kind && name.equals(that.name);
    }

    @Override
    public int hashCode() {
      return 31 * kind.hashCode() + name.hashCode();
    }

    @Override
    public Optional<Entry> ask(Snapshot snapshot) {
      return snapshot.find(kind, name);
    }
  }

  private static final class AllNamed extends LookedUp<List<Entry>> {

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

  private static final class Names extends LookedUp<Set<String>> {

    private final Kind kind;

    Names(Kind kind) {
      super(kind);
      this.kind = kind;
    }

    @Override
    public Set<String> ask(Snapshot snapshot) {
      return snapshot.reading(Part.names(kind)).names(kind);
    }
  }

  private static final class WithCode extends LookedUp<List<Entry>> {

    private final String code;

    WithCode(String code) {
      super(code);
      this.code = code;
    }

    @Override
    public List<Entry> ask(Snapshot snapshot) {
      return snapshot.reading(Part.code(code)).withCode(code);
    }
  }

  private static final class TrialsOf extends LookedUp<List<Entry>> {

    private final String formula;

    TrialsOf(String formula) {
      super(formula);
      this.formula = formula;
    }

    @Override
    public List<Entry> ask(Snapshot snapshot) {
      return snapshot.reading(Part.trials(formula)).trialsOf(formula);
    }
  }

  private static final class SheetsOf extends LookedUp<List<Entry>> {

    private final String shown;

    SheetsOf(String shown) {
      super(shown);
      this.shown = shown;
    }

    @Override
    public List<Entry> ask(Snapshot snapshot) {
      return snapshot.reading(Part.sheets(shown)).sheetsOf(shown);
    }
  }

  private static final class HouseOf extends LookedUp<Optional<Entry>> {

    private final String uri;

    HouseOf(String uri) {
      super(uri);
      this.uri = uri;
    }

    @Override
    public Optional<Entry> ask(Snapshot snapshot) {
      return snapshot.houseFor(uri);
    }
  }
}
