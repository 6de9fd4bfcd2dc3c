package dev.kettlemark.cli;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Library;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Variant;
import dev.kettlemark.reading.Suggestions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A section of a library on disk that the user named.
 *
 * @param folder the library
 * @param entry the section that the name means
 */
record NamedEntry(LibraryFolder folder, Entry entry) {

  /** Reads a library, and tells of files that it had to leave out. */
  static LibraryFolder library(Optional<Path> in, Terminal terminal) {
    Path given = in.orElse(Path.of("."));
    Path parent = given.toAbsolutePath().getParent();
    Path folder = Files.isRegularFile(given) && parent != null ? parent : given;
    LibraryFolder library = LibraryFolder.of(folder, terminal.today());
    library.problems().forEach(problem -> KettlemarkCommand.complain(terminal.err(), problem));
    return library;
  }

  /** The formula or variant of a name. */
  static NamedEntry formula(LibraryFolder folder, String name) {
    return find(folder, name, List.of(Kind.MATERIAL), NamedEntry::isFormula, "formula");
  }

  /** The formula, variant or product of a name; a formula where both have it. */
  static NamedEntry formulaOrProduct(LibraryFolder folder, String name) {
    return find(
        folder,
        name,
        List.of(Kind.MATERIAL, Kind.PRODUCT),
        d -> isFormula(d) || d instanceof Product,
        "formula or product");
  }

  /** Whether the library has a formula or variant of that name. */
  static boolean knowsFormula(LibraryFolder folder, String name) {
    return declared(folder.snapshot().library(), Kind.MATERIAL, name)
        .filter(NamedEntry::isFormula)
        .isPresent();
  }

  /** Whether the library has a formula, variant or product of that name. */
  static boolean isFormulaOrProduct(LibraryFolder folder, String name) {
    return knowsFormula(folder, name)
        || declared(folder.snapshot().library(), Kind.PRODUCT, name).isPresent();
  }

  /** Names of formulas and variants. */
  static List<String> formulaNames(LibraryFolder folder) {
    return names(folder.snapshot().library(), List.of(Kind.MATERIAL), NamedEntry::isFormula);
  }

  Declaration declaration() {
    return entry.declaration().orElseThrow();
  }

  Document document() {
    return folder.snapshot().library().document(entry.uri()).orElseThrow();
  }

  /** The formula with all that follows from it. */
  ComputedFormula computed() {
    return Formulas.computed(folder.snapshot(), entry)
        .orElseThrow(() -> new UsageMistake(
            "`" + declaration().name().value() + "` cannot be worked out; run check to see why"));
  }

  private static NamedEntry find(
      LibraryFolder folder,
      String name,
      List<Kind> kinds,
      Predicate<Declaration> wanted,
      String what) {
    Library library = folder.snapshot().library();
    for (Kind kind : kinds) {
      Optional<Entry> entry = library.find(kind, name);
      if (entry.flatMap(Entry::declaration).filter(wanted).isPresent()) {
        return new NamedEntry(folder, entry.get());
      }
    }
    String shown = Visible.of(name);
    for (Kind kind : Kind.values()) {
      Optional<Declaration> other = declared(library, kind, name);
      if (other.isPresent()) {
        throw new UsageMistake("`" + shown + "` is no " + what + " but " + word(other.get()));
      }
    }
    throw new UsageMistake("no " + what + " is named `" + shown + "`"
        + Suggestions.sentence(name, names(library, kinds, wanted)));
  }

  private static List<String> names(
      Library library, List<Kind> kinds, Predicate<Declaration> wanted) {
    return kinds.stream()
        .flatMap(kind -> library.names(kind).stream()
            .filter(name -> declared(library, kind, name).filter(wanted).isPresent()))
        .sorted()
        .toList();
  }

  private static Optional<Declaration> declared(Library library, Kind kind, String name) {
    return library.find(kind, name).flatMap(Entry::declaration);
  }

  private static boolean isFormula(Declaration declaration) {
    return declaration instanceof Formula || declaration instanceof Variant;
  }

  private static String word(Declaration declaration) {
    String word = declaration.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    return (word.startsWith("i") ? "an " : "a ") + word;
  }
}
