package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A sheet beside what it shows.
 *
 * @param name what it shows, as written in its heading
 * @param entry the section of what it shows
 * @param shown what that section declares
 * @param formulas the formula that it shows, or those that the pieces of a product are made of
 */
record ShownSheet(
    Subject subject,
    Sheet sheet,
    Located<String> name,
    Entry entry,
    Declaration shown,
    List<ComputedFormula> formulas) {

  /** The sheet of a section; empty for other sections, and where it shows nothing that is known. */
  static Optional<ShownSheet> of(Subject subject) {
    return subject
        .declaration()
        .flatMap(d -> d instanceof Sheet sheet ? Optional.of(sheet) : Optional.empty())
        .flatMap(sheet -> sheet.subject().flatMap(name -> of(subject, sheet, name)));
  }

  private static Optional<ShownSheet> of(Subject subject, Sheet sheet, Located<String> name) {
    return subject
        .ask(Lookup.of(Kind.MATERIAL, name.value()))
        .or(() -> subject.ask(Lookup.of(Kind.PRODUCT, name.value())))
        .flatMap(entry -> entry
            .declaration()
            .map(shown -> new ShownSheet(
                subject, sheet, name, entry, shown, formulas(subject, shown).toList())));
  }

  /** What is computed of a formula, a variant, or the parts of a product. */
  static Stream<ComputedFormula> formulas(Subject subject, Declaration declaration) {
    Stream<String> names = declaration instanceof Product product
        ? product.parts().stream().flatMap(part -> part.material().map(Located::value).stream())
        : Stream.of(declaration.name().value());
    return names.distinct().flatMap(name -> subject.ask(Formulas.computed(name)).stream());
  }

  /** The facts of what it shows; for a variant, with its parent's. */
  Facts facts() {
    return shown instanceof Product product
        ? product.facts()
        : formulas.stream()
            .findFirst()
            .map(formula -> formula.formula().facts())
            .orElse(new Facts(List.of()));
  }

  boolean isFor(String reader) {
    return sheet.reader().filter(r -> r.value().equals(reader)).isPresent();
  }

  /** Whether its notes are in English, the only language in which they can be looked through. */
  boolean isEnglish() {
    return sheet.language().map(tag -> language(tag.value()).equals("en")).orElse(true);
  }

  /** The language of a tag without its region: {@code en} of {@code en-GB}. */
  static String language(String tag) {
    return tag.toLowerCase(Locale.ROOT).split("-", 2)[0];
  }

  Stream<Located<String>> notes() {
    return sheet.facts().all("note").flatMap(fact -> fact.text().stream());
  }

  /** A fix that writes a note below the sheet's last fact. */
  Fix addNote(String title, String text) {
    TextEdit edit =
        new Columns(subject.section()).addFact(Optional.empty(), "note", "\"" + text + "\"");
    return new Fix(title, List.of(edit));
  }
}
