package dev.kettlemark.library;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import dev.kettlemark.syntax.Section;
import java.util.Optional;
import java.util.Set;

/**
 * By what a library finds a section.
 *
 * @param kind the name space of its name
 * @param name what it declares
 * @param code its code number
 * @param reference what a trial has tried, a sheet shows, a variant is made from
 * @param mentioned every word by which it speaks of a material
 */
record Sign(
    Kind kind,
    String name,
    Optional<String> code,
    Optional<Reference> reference,
    Set<String> mentioned) {

  /** How a section refers to another. */
  enum Way {
    TRIES,
    SHOWS,
    VARIES
  }

  /** A name in another section, and what it stands there for. */
  record Reference(Way way, String name) {}

  /** The sign of a section that declares something. */
  static Sign of(Section section, Declaration declaration) {
    return new Sign(
        Kind.of(section.keyword().orElseThrow()),
        declaration.name().value(),
        Facts.of(declaration).flatMap(facts -> facts.wordOf("code")).map(Located::value),
        reference(declaration),
        Mentions.of(declaration));
  }

  /** The sign of a section of the pantry, which declares ingredients and is known by its headings alone. */
  static Optional<Sign> ofPantry(Section section) {
    return Pantry.ingredient(section.text())
        .map(name -> new Sign(Kind.MATERIAL, name, Optional.empty(), Optional.empty(), Set.of()));
  }

  private static Optional<Reference> reference(Declaration declaration) {
    if (declaration instanceof Trial trial) {
      return trial.formula().map(formula -> new Reference(Way.TRIES, formula.value()));
    }
    if (declaration instanceof Sheet sheet) {
      return sheet.subject().map(subject -> new Reference(Way.SHOWS, subject.value()));
    }
    if (declaration instanceof Variant variant) {
      return variant.parent().map(parent -> new Reference(Way.VARIES, parent.value()));
    }
    return Optional.empty();
  }
}
