package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * A basis that a formula declares: the sum of its members.
 *
 * @param span the whole line
 */
public record BasisDefinition(Located<String> name, List<Member> members, Span span) {

  public BasisDefinition {
    members = List.copyOf(members);
  }

  /** An ingredient, in one stage or in all. */
  public record Member(Located<String> ingredient, Optional<Located<String>> stage) {}

  BasisDefinition relocated(Span place) {
    return new BasisDefinition(
        name.at(place),
        members.stream()
            .map(m -> new Member(m.ingredient().at(place), m.stage().map(s -> s.at(place))))
            .toList(),
        place);
  }
}
