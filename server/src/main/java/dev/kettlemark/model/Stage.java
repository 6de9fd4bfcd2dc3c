package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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

  /** Looked for among its neighbours at each key; a record's own comparison takes several times as long. */
  @Override
  public boolean equals(@Nullable Object other) {
    return this == other
        || (other instanceof Stage that
            && span.equals(that.span)
            && name.value().equals(that.name.value())
            && title.equals(that.title)
            && names.equals(that.names)
            && vessel.equals(that.vessel)
            && amounts.equals(that.amounts)
            && takes.equals(that.takes)
            && steps.equals(that.steps));
  }

  @Override
  public int hashCode() {
    return 31 * name.value().hashCode() + span.hashCode();
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
