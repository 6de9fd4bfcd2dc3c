package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Statement;
import java.util.Optional;
import java.util.function.Predicate;

/** Lines of other sections that a finding rests on, added to it where they are written. */
final class OtherPlace {

  private OtherPlace() {}

  /** The line by which the house declares a scale, a bowl, a pan, a mould or a frame. */
  static Finding tool(Finding finding, Subject subject, String name) {
    return house(
        finding,
        subject,
        line -> line.objectNames().stream().anyMatch(word -> word.value().equals(name)),
        "`" + name + "` in the house");
  }

  /** The last step of a verb that is written in the section. */
  static Finding step(
      Finding finding, Subject subject, ComputedFormula formula, String verb, String what) {
    return formula
        .formula()
        .steps()
        .filter(step -> step.is(verb) && subject.isWrittenHere(step.span()))
        .reduce((one, later) -> later)
        .map(step -> finding.withRelated(subject.entry().origin(step.span()), what))
        .orElse(finding);
  }

  /** The heading of the house. */
  static Finding house(Finding finding, Subject subject) {
    return subject
        .ask(Lookup.houseFor(subject.entry().uri()))
        .map(house -> finding.withRelated(house.heading(), "the house"))
        .orElse(finding);
  }

  /** The line by which the house states a fact. */
  static Finding house(Finding finding, Subject subject, String word) {
    return house(finding, subject, line -> line.is(word), "what the house says");
  }

  private static Finding house(
      Finding finding, Subject subject, Predicate<Statement> which, String what) {
    Optional<Entry> house = subject.ask(Lookup.houseFor(subject.entry().uri()));
    return house
        .flatMap(entry -> entry
            .declaration()
            .flatMap(d -> d instanceof House found ? Optional.of(found.facts()) : Optional.empty())
            .flatMap(facts -> facts.statements().stream().filter(which).findFirst())
            .map(line -> finding.withRelated(entry.origin(line.span()), what)))
        .orElse(finding);
  }

  /** The line by which an ingredient or a formula states a fact. */
  static Finding fact(Finding finding, Subject subject, String material, String word) {
    Optional<Entry> entry = subject.ask(Lookup.of(Kind.MATERIAL, material));
    return entry
        .flatMap(found -> found
            .declaration()
            .flatMap(d -> d instanceof Ingredient i ? Optional.of(i.facts()) : Facts.of(d))
            .flatMap(facts -> facts.first(word))
            .map(line -> finding.withRelated(
                found.origin(line.span()), "what is said of `" + material + "`")))
        .orElse(finding);
  }

  /** The heading of an ingredient or a formula. */
  static Finding heading(Finding finding, Subject subject, String material, String what) {
    return subject
        .ask(Lookup.of(Kind.MATERIAL, material))
        .map(entry -> finding.withRelated(entry.heading(), what))
        .orElse(finding);
  }
}
