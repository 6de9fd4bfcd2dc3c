package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.BasisDefinition;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Verb;
import dev.kettlemark.reading.Suggestions;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports what a step works on although nobody weighed it.
 *
 * <p>Only objects of steps that merge, heat or whip count: behind a connective stand tools and papers
 * as well, and what is cut, packed or checked need not be a weighed thing.
 */
public final class UnweighedObject implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("unweighed-object", "a step uses something that is not weighed");

  private static final Set<Verb.Effect> WORKING = Set.of(
      Verb.Effect.MERGE, Verb.Effect.COOK, Verb.Effect.BOIL, Verb.Effect.HEAT, Verb.Effect.AERATE);

  /** Words for all there is and for what stands about in every kitchen. */
  static final Set<String> NOT_WEIGHED =
      Set.of("all", "bowl", "pan", "pot", "whisk", "mould", "moulds", "frame", "tray");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula ->
            formula.formula().stages().stream().flatMap(stage -> check(subject, formula, stage)))
        .toList();
  }

  private static Stream<Finding> check(Subject subject, ComputedFormula formula, Stage stage) {
    List<String> weighed = weighed(stage);
    List<Located<String>> others = new ArrayList<>();
    for (Statement step : stage.steps()) {
      if (works(step)) {
        for (Located<String> object : step.objectNames()) {
          if (!weighed.contains(object.value())) {
            others.add(object);
          }
        }
      }
    }
    if (others.isEmpty()) {
      return Stream.empty();
    }
    Set<String> known = known(formula, stage);
    return others.stream()
        .filter(object -> !known.contains(object.value()))
        .map(object -> finding(subject, formula, stage, object));
  }

  private static boolean works(Statement step) {
    return Verb.of(step.word().value())
        .filter(verb -> WORKING.contains(verb.effect()))
        .isPresent();
  }

  private static Set<String> known(ComputedFormula computed, Stage stage) {
    Formula formula = computed.formula();
    Set<String> known = new HashSet<>(NOT_WEIGHED);
    known.addAll(weighed(stage));
    known.add(stage.name().value());
    int index = formula.stages().indexOf(stage);
    formula
        .stages()
        .subList(0, Math.max(0, index))
        .forEach(s -> known.add(s.name().value()));
    formula.bases().stream().map(BasisDefinition::name).map(Located::value).forEach(known::add);
    stage.vessel().map(Located::value).ifPresent(known::add);
    computed.kitchen().house().ifPresent(house -> addTools(known, house));
    return known;
  }

  private static void addTools(Set<String> known, House house) {
    house.vessels().forEach(vessel -> known.add(vessel.name().value()));
    house.moulds().forEach(mould -> known.add(mould.name().value()));
    house.frames().forEach(frame -> known.add(frame.name().value()));
  }

  private static List<String> weighed(Stage stage) {
    List<String> weighed = new ArrayList<>();
    stage.amounts().forEach(line -> weighed.add(line.ingredient().value()));
    stage.takes().forEach(take -> weighed.add(take.stage().value()));
    return weighed;
  }

  /** What is called much alike, or else the only amount that no step speaks of. */
  private static List<String> meant(Stage stage, String name) {
    List<String> near = Suggestions.near(name, weighed(stage));
    List<String> forgotten = stage.amounts().stream()
        .map(line -> line.ingredient().value())
        .filter(amount -> stage.steps().stream().noneMatch(step -> speaksOf(step, amount)))
        .toList();
    return near.isEmpty() && forgotten.size() == 1 ? forgotten : near;
  }

  private static boolean speaksOf(Statement step, String amount) {
    return step.names().stream().anyMatch(name -> name.value().equals(amount));
  }

  private static Finding finding(
      Subject subject, ComputedFormula formula, Stage stage, Located<String> object) {
    String name = object.value();
    Finding finding = INFO.at(
            object.span(),
            "`%s` is neither weighed in `%s` nor taken from an earlier stage",
            name,
            stage.name().value())
        .because("nobody knows how much of it goes in");
    if (subject.isWrittenHere(object.span())) {
      for (String meant : meant(stage, name)) {
        finding = finding.withFix(Fix.replace("Write `" + meant + "`", object.span(), meant));
      }
    }
    for (Stage other : formula.formula().stages()) {
      for (AmountLine line : other.amounts()) {
        if (line.ingredient().value().equals(name)) {
          finding = finding.withRelated(
              subject.entry().origin(line.ingredient().span()),
              "weighed in `" + other.name().value() + "`");
        }
      }
    }
    return subject.material(name).isPresent()
        ? finding.withFixes(weighIn(subject, formula.formula(), stage, name))
        : finding;
  }

  /** The figure is the writer's to fill in: nothing stands for "not decided yet". */
  private static List<Fix> weighIn(Subject subject, Formula formula, Stage stage, String name) {
    String nothing = formula.isByWeight() ? "0 g" : "0.00 %";
    return WrittenLines.of(subject)
        .behindAmounts(stage, WrittenLines.amount(nothing, name))
        .map(edit -> new Fix("Weigh in `" + name + "`, its amount to be filled in", List.of(edit)))
        .stream()
        .toList();
  }
}
