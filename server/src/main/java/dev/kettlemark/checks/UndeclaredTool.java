package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.model.ClauseWords;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Verb;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.reading.Suggestions;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reports a tool that the house does not list.
 *
 * <p>A misspelt tool is told anywhere, for its figures are then missing from the model; any other only where
 * the formula is released, since a bench makes do with what is there. A house that lists no tool is not
 * asked.
 */
public final class UndeclaredTool implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("undeclared-tool", "a tool is not among those of the house");

  /** Steps whose {@code into} and {@code in} name what is filled. */
  private static final Set<String> FILLING =
      Set.of(Verb.DEPOSIT.word(), Verb.PIPE.word(), Verb.SPREAD.word());

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().stream()
        .flatMap(formula -> formula.kitchen().house().stream()
            .filter(house -> !tools(house).isEmpty())
            .flatMap(house -> check(subject, formula, house)))
        .toList();
  }

  private static Stream<Finding> check(Subject subject, ComputedFormula computed, House house) {
    Formula formula = computed.formula();
    Set<String> tools = tools(house);
    Set<String> known = new HashSet<>(tools);
    known.addAll(UnweighedObject.NOT_WEIGHED);
    formula.stages().forEach(stage -> known.add(stage.name().value()));
    formula.amounts().forEach(line -> known.add(line.ingredient().value()));
    formula.bases().forEach(basis -> known.add(basis.name().value()));
    boolean isReleased = formula.facts().says("status", "released");
    return formula.stages().stream()
        .flatMap(UndeclaredTool::named)
        .filter(name -> subject.isWrittenHere(name.span()))
        .filter(name -> !known.contains(name.value()))
        .filter(name -> subject.material(name.value()).isEmpty())
        .flatMap(name -> finding(subject, house, tools, isReleased, name).stream());
  }

  private static Set<String> tools(House house) {
    return Stream.of(
            house.vessels().stream().map(House.Vessel::name),
            house.moulds().stream().map(House.Mould::name),
            house.frames().stream().map(House.Frame::name),
            house.facts().wordsOf("tool").stream())
        .flatMap(names -> names)
        .map(Located::value)
        .collect(Collectors.toSet());
  }

  private static Stream<Located<String>> named(Stage stage) {
    return Stream.concat(stage.vessel().stream(), stage.steps().stream().flatMap(step -> in(step)));
  }

  private static Stream<Located<String>> in(Statement step) {
    Stream<Located<String>> on = step.names(Connective.ON).stream()
        .filter(name -> ClauseWords.behind(Connective.ON).stream()
            .map(Vocabulary.Term::word)
            .noneMatch(name.value()::equals));
    return FILLING.contains(step.word().value())
        ? Stream.of(step.names(Connective.INTO), step.names(Connective.IN), on.toList())
            .flatMap(List::stream)
        : on;
  }

  private static Optional<Finding> finding(
      Subject subject, House house, Set<String> tools, boolean isReleased, Located<String> name) {
    List<String> near = Suggestions.near(name.value(), tools);
    if (near.isEmpty() && !isReleased) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
            name.span(), "`%s` lists no `%s` among its tools", house.name().value(), name.value())
        .because(
            near.isEmpty()
                ? "the reader misses it with the hot mass in hand; add `tool " + name.value()
                    + "` to the house"
                : "what the house says of the tool then counts for nothing");
    for (String other : near) {
      finding = finding.withFix(Fix.replace("Write `" + other + "`", name.span(), other));
    }
    return Optional.of(OtherPlace.house(finding, subject));
  }
}
