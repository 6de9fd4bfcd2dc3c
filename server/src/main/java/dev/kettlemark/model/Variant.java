package dev.kettlemark.model;

import java.util.List;
import java.util.Optional;

/**
 * A formula written as the changes it makes to another.
 *
 * @param parent the formula it changes; empty where the text does not say
 * @param facts facts of its own, which win over the parent's
 * @param changes in the order written
 * @param bases bases it declares
 * @param stages {@code stage NAME again}: stages whose steps it writes anew
 */
public record Variant(
    Located<String> name,
    Optional<String> title,
    Optional<Located<String>> parent,
    Facts facts,
    List<VariantChange> changes,
    List<BasisDefinition> bases,
    List<Stage> stages)
    implements Declaration {

  public Variant {
    changes = List.copyOf(changes);
    bases = List.copyOf(bases);
    stages = List.copyOf(stages);
  }
}
