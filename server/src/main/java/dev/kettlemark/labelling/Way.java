package dev.kettlemark.labelling;

import dev.kettlemark.library.Origin;
import java.util.ArrayList;
import java.util.List;

/**
 * How an ingredient gets into what is made.
 *
 * @param steps from the section's own line down to the line that names the ingredient; never empty
 */
public record Way(List<Step> steps) {

  public Way {
    steps = List.copyOf(steps);
  }

  /**
   * One line on the way.
   *
   * @param name what the line weighs in
   * @param place where the line names it
   */
  public record Step(String name, Origin place) {}

  static Way of(Step step) {
    return new Way(List.of(step));
  }

  /** The place in the section itself. */
  public Origin here() {
    return steps.get(0).place();
  }

  /** Whether the section itself names the ingredient. */
  public boolean isDirect() {
    return steps.size() == 1;
  }

  /** The same way, seen from a section that weighs in the whole. */
  Way under(Step step) {
    List<Step> longer = new ArrayList<>();
    longer.add(step);
    longer.addAll(steps);
    return new Way(longer);
  }

  /** {@code three-nut-mix > roasted-almond}. */
  public String words() {
    return String.join(" > ", steps.stream().map(Step::name).toList());
  }
}
