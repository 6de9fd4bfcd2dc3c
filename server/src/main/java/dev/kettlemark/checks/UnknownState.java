package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Verb;
import dev.kettlemark.reading.Suggestions;
import dev.kettlemark.science.SugarStage;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports a step that ends when something is reached that no two cooks see alike.
 *
 * <p>A step may also last until another begins, as in {@code keep whisking until deposit}.
 */
public final class UnknownState implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("unknown-state", "a step ends at a state that nobody can tell");

  /** What steps of a kind mostly end at. */
  private static final Map<Verb.Effect, List<State>> USUAL = Map.of(
      Verb.Effect.AERATE, List.of(State.SOFT_PEAK, State.FIRM_PEAK, State.STIFF_PEAK),
      Verb.Effect.BOIL, List.of(State.DISSOLVED),
      Verb.Effect.COOK, List.of(State.FIRM_BALL, State.SOFT_CRACK, State.HARD_CRACK),
      Verb.Effect.MERGE, List.of(State.LUMP_FREE, State.HYDRATED),
      Verb.Effect.WAIT, List.of(State.SET, State.SKINNED, State.DRY));

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return subject.formula().map(computed -> computed.formula()).stream()
        .flatMap(formula -> formula
            .steps()
            .flatMap(step -> step.names(Connective.UNTIL).stream()
                .filter(word -> subject.isWrittenHere(word.span()))
                .filter(word -> !isKnown(word.value(), formula))
                .map(word -> finding(step, word))))
        .toList();
  }

  private static boolean isKnown(String word, Formula formula) {
    return State.of(word).isPresent()
        || SugarStage.ofWord(word).isPresent()
        || Verb.of(word).isPresent()
        || formula.stages().stream()
            .map(Stage::name)
            .anyMatch(name -> name.value().equals(word));
  }

  private static Finding finding(Statement step, Located<String> word) {
    Finding finding = INFO.at(word.span(), "`%s` is no state", word.value())
        .because("no two cooks end this step at the same moment");
    for (String state : proposals(step, word.value())) {
      finding = finding.withFix(Fix.replace("Write `" + state + "`", word.span(), state));
    }
    return finding;
  }

  private static Set<String> proposals(Statement step, String word) {
    Set<String> proposals = new LinkedHashSet<>(Suggestions.near(
        word,
        Stream.concat(
                Arrays.stream(State.values()).map(State::word),
                Arrays.stream(SugarStage.values()).map(SugarStage::word))
            .toList()));
    Verb.of(step.word().value())
        .map(verb -> USUAL.getOrDefault(verb.effect(), List.of()))
        .orElse(List.of())
        .forEach(state -> proposals.add(state.word()));
    return proposals;
  }
}
