package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;

/**
 * A part of a formula: what is weighed in, what is taken over, and what is done with it.
 *
 * @param name by which later stages speak of the mass it leaves
 * @param title the display name
 * @param names the display name in other languages
 * @param vessel the tool it happens in
 * @param span the line that opens it
 */
public record Stage(
    Located<String> name,
    Optional<String> title,
    OtherNames names,
    Optional<Located<String>> vessel,
    List<AmountLine> amounts,
    List<TakeLine> takes,
    List<Statement> steps,
    Span span) {

  public Stage {
    amounts = List.copyOf(amounts);
    takes = List.copyOf(takes);
    steps = List.copyOf(steps);
  }

  public Stage withAmounts(List<AmountLine> other) {
    return new Stage(name, title, names, vessel, other, takes, steps, span);
  }

  public Stage withSteps(List<Statement> other) {
    return new Stage(name, title, names, vessel, amounts, takes, other, span);
  }

  Stage relocated(Span place) {
    return new Stage(
        name.at(place),
        title,
        names,
        vessel.map(v -> v.at(place)),
        amounts.stream().map(line -> line.relocated(place)).toList(),
        takes.stream().map(line -> line.relocated(place)).toList(),
        steps.stream().map(step -> step.relocated(place)).toList(),
        place);
  }
}
