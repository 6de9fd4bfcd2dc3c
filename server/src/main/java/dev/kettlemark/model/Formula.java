package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * A formula as written, or as a variant makes it out of its parent.
 *
 * @param name by which other sections use it
 * @param facts all facts, the typed ones among them
 * @param percent what a bare percentage is of; empty where the formula does not say
 * @param batch the charge in grams, exact; empty where the formula does not say
 * @param bases the bases it declares
 * @param stages in the order written
 * @param parent the formula that this is a variant of
 */
public record Formula(
    Located<String> name,
    Optional<String> title,
    Facts facts,
    Optional<Located<Basis>> percent,
    Optional<Located<BigFraction>> batch,
    List<BasisDefinition> bases,
    List<Stage> stages,
    Optional<Located<String>> parent)
    implements Declaration {

  public Formula {
    bases = List.copyOf(bases);
    stages = List.copyOf(stages);
  }

  /** All amount lines of all stages, in order. */
  public List<AmountLine> amounts() {
    List<AmountLine> amounts = new ArrayList<>();
    for (Stage stage : stages) {
      amounts.addAll(stage.amounts());
    }
    return Collections.unmodifiableList(amounts);
  }

  public Optional<Stage> stage(String stageName) {
    for (Stage stage : stages) {
      if (stage.name().value().equals(stageName)) {
        return Optional.of(stage);
      }
    }
    return Optional.empty();
  }

  public Optional<BasisDefinition> basis(String basisName) {
    for (BasisDefinition basis : bases) {
      if (basis.name().value().equals(basisName)) {
        return Optional.of(basis);
      }
    }
    return Optional.empty();
  }

  /** What a share is of: its own basis, else the formula's, else the charge. */
  public Basis basisOf(Measure.Share share) {
    return share.basis().or(() -> percent.map(Located::value)).orElseGet(Basis.Charge::new);
  }

  /** Whether a place stands for something that this variant takes over from its parent. */
  public boolean inherits(Span place) {
    return parent.filter(name -> name.span().equals(place)).isPresent();
  }

  /** All steps of all stages, in order. */
  public Stream<Statement> steps() {
    List<Statement> steps = new ArrayList<>();
    for (Stage stage : stages) {
      steps.addAll(stage.steps());
    }
    return steps.stream();
  }

  /** Whether every amount is a weight or a count, so that percentages follow from the amounts. */
  public boolean isByWeight() {
    List<AmountLine> amounts = amounts();
    return !amounts.isEmpty()
        && amounts.stream()
            .noneMatch(line -> line.measure().value() instanceof Measure.Share
                || line.measure().value() instanceof Measure.Sufficient);
  }

  /** The same formula with other stages. */
  public Formula withStages(List<Stage> other) {
    return new Formula(name, title, facts, percent, batch, bases, other, parent);
  }

  /** The same formula with other bases. */
  public Formula withBases(List<BasisDefinition> other) {
    return new Formula(name, title, facts, percent, batch, other, stages, parent);
  }

  /** The same formula with every place moved to one span, for what a variant inherits. */
  public Formula relocated(Span place) {
    return new Formula(
        name.at(place),
        title,
        new Facts(facts.statements().stream().map(fact -> fact.relocated(place)).toList()),
        percent.map(p -> p.at(place)),
        batch.map(b -> b.at(place)),
        bases.stream().map(basis -> basis.relocated(place)).toList(),
        stages.stream().map(stage -> stage.relocated(place)).toList(),
        parent.map(p -> p.at(place)));
  }
}
