package dev.kettlemark.library;

import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Mentions;
import dev.kettlemark.model.Sheet;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Variant;
import dev.kettlemark.syntax.Section;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * By what a library finds a section, and what it is listed with; known without keeping what it declares.
 *
 * @param kind the name space of its name
 * @param name what it declares
 * @param title its display name
 * @param isIngredient whether it declares an ingredient
 * @param code its code number
 * @param reference what a trial has tried, a sheet shows, a variant is made from
 * @param used the materials that it weighs in, a name for each line
 * @param mentioned every word by which it speaks of a material
 */
public record Sign(
    Kind kind,
    String name,
    Optional<String> title,
    boolean isIngredient,
    Optional<String> code,
    Optional<Reference> reference,
    List<String> used,
    Set<String> mentioned) {

  /** How a section refers to another. */
  public enum Way {
    TRIES,
    SHOWS,
    VARIES
  }

  /** A name in another section, and what it stands there for. */
  public record Reference(Way way, String name) {}

  /** The sign of a section that declares something. */
  static Sign of(Section section, Declaration declaration) {
    return new Sign(
        Kind.of(section.keyword().orElseThrow()),
        declaration.name().value(),
        declaration.title(),
        declaration instanceof Ingredient,
        Facts.of(declaration).flatMap(facts -> facts.wordOf("code")).map(Located::value),
        reference(declaration),
        Mentions.used(declaration).stream().map(Located::value).toList(),
        Mentions.of(declaration));
  }

  /** The sign of a section of the pantry, which declares ingredients and is known by its headings alone. */
  static Optional<Sign> ofPantry(Section section) {
    return Pantry.ingredient(section.text())
        .map(name -> new Sign(
            Kind.MATERIAL,
            name,
            Optional.empty(),
            true,
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Set.of()));
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
