package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Change;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.answers.SugarExchange;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * The sugar of a line for another one at equal solids: a tenth of it where the other stands beside it,
 * since the steps name both; all of it where the other is new.
 */
final class SugarRefactoring {

  private static final BigFraction TENTH = new BigFraction(1, 10);

  /** So much more sucrose in all its sugars makes it another kind. */
  private static final double ALIKE = 0.2;

  /** More than these crowd a menu. */
  private static final int MOST = 3;

  /** What a pastry chef reaches for first; common practice, no source. */
  private static final List<String> USUAL =
      List.of("glucose-syrup-42", "invert-syrup", "dextrose", "white-sugar");

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final int index;

  private SugarRefactoring(RefactoringSite site, int index) {
    this.site = site;
    this.computed = site.computed();
    this.index = index;
  }

  static List<Refactoring> at(RefactoringSite site) {
    return site.amount()
        .filter(index -> site.computed()
            .material(site.line(index).ingredient().value())
            .filter(SugarExchange::isSugar)
            .isPresent())
        .map(index -> new SugarRefactoring(site, index).all())
        .orElse(List.of());
  }

  private List<Refactoring> all() {
    Shelf shelf = new Shelf(site.snapshot());
    LineAmount line = site.lineAmount(index);
    String own = line.line().ingredient().value();
    List<Material> beside = computed.amounts().lines().stream()
        .filter(other -> other.stage() == line.stage())
        .map(other -> other.line().ingredient().value())
        .distinct()
        .filter(name -> !name.equals(own))
        .flatMap(name -> computed.material(name).stream())
        .filter(SugarExchange::isSugar)
        .toList();
    List<Refactoring> found = new ArrayList<>();
    beside.forEach(other -> written(other, TENTH).ifPresent(found::add));
    Stream<Material> usual = USUAL.stream()
        .filter(name -> !name.equals(own))
        .filter(name -> beside.stream().noneMatch(other -> other.name().equals(name)))
        .flatMap(name -> shelf.material(name).stream());
    usual.forEach(other -> {
      if (isOnlyLine(own) && isAlike(own, other)) {
        written(other, BigFraction.ONE).ifPresent(found::add);
      }
    });
    return found.stream().limit(MOST).toList();
  }

  /** All of a sugar that keeps grain away for one that does not, or the other way, is another product. */
  private boolean isAlike(String own, Material other) {
    return computed
        .material(own)
        .flatMap(material -> material.composition().toOptional())
        .flatMap(one -> other
            .composition()
            .toOptional()
            .filter(two -> Math.abs(sucrose(one) - sucrose(two)) < ALIKE))
        .isPresent();
  }

  private static double sucrose(Composition composition) {
    return composition.fraction(Component.SUCROSE) / composition.saccharides().fraction();
  }

  /** Where the name stands on other lines too, a step would no longer know which is meant. */
  private boolean isOnlyLine(String name) {
    return computed.formula().amounts().stream()
            .filter(line -> line.ingredient().value().equals(name))
            .count()
        == 1;
  }

  private Optional<Refactoring> written(Material other, BigFraction part) {
    return SugarExchange.of(computed, index, other, part).toOptional().flatMap(this::written);
  }

  private Optional<Refactoring> written(Answer answer) {
    return new AnswerEdits(site.snapshot(), site.entry(), computed)
        .of(answer.changes())
        .filter(edits -> answer.changes().stream().noneMatch(Change.Add.class::isInstance))
        .filter(edits -> !edits.isEmpty())
        .map(edits -> Rewriting.of(site.document(), edits))
        .filter(site::keepsTotalsOfVariants)
        .map(rewriting -> Refactoring.of(
            ActionTitle.of(answer.instruction()),
            Refactoring.Kind.REWRITE,
            site.document().uri(),
            rewriting.edits()));
  }
}
