package dev.kettlemark.labelling;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Reason;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gathers what the ingredients say of allergens. */
final class AllergenComputation {

  private AllergenComputation() {}

  static Allergens of(Makeup makeup, Facts own, Optional<House> house) {
    Map<String, List<IngredientUse>> contained = byWord(makeup, "allergen");
    Map<String, List<IngredientUse>> traces = byWord(makeup, "may-contain");
    Set<String> known = Vocabulary.words("allergen");
    own.wordsOf("may-contain").stream()
        .map(Located::value)
        .filter(known::contains)
        .forEach(word -> traces.putIfAbsent(word, List.of()));
    traces.keySet().removeAll(contained.keySet());
    List<String> onSite = house.stream()
        .flatMap(h -> h.facts().wordsOf("allergens-on-site").stream())
        .map(Located::value)
        .filter(known::contains)
        .filter(word -> !contained.containsKey(word) && !traces.containsKey(word))
        .distinct()
        .toList();
    return new Allergens(
        contained,
        traces,
        onSite,
        makeup.uses().stream().filter(use -> !use.isDescribed()).toList(),
        sulphite(contained.getOrDefault(Allergens.SULPHITE, List.of())));
  }

  /** In the order of the vocabulary; from a word that it does not know nothing follows. */
  private static Map<String, List<IngredientUse>> byWord(Makeup makeup, String fact) {
    Map<String, List<IngredientUse>> byWord = new LinkedHashMap<>();
    Vocabulary.of("allergen").forEach(term -> byWord.put(term.word(), new ArrayList<>()));
    for (IngredientUse use : makeup.uses()) {
      use.words(fact).stream()
          .distinct()
          .filter(byWord::containsKey)
          .forEach(
              word -> byWord.computeIfAbsent(word, key -> new ArrayList<>()).add(use));
    }
    byWord.values().removeIf(List::isEmpty);
    return byWord;
  }

  /** Each ingredient's own figure times how much of it there is. */
  private static Outcome<Ratio> sulphite(List<IngredientUse> sources) {
    Outcome<Ratio> sum = Outcome.known(Ratio.ZERO);
    for (IngredientUse use : sources) {
      Outcome<Ratio> stated = stated(use)
          .map(Outcome::known)
          .orElseGet(() -> Outcome.unknown(
              Reason.MISSING_FIGURE,
              "`%s` does not say how much sulphur dioxide it holds",
              use.name()));
      sum = Outcome.both(sum, Outcome.both(stated, use.share(), Ratio::times), Ratio::plus);
    }
    return sum;
  }

  /** {@code allergen sulphite at 2000 ppm}. */
  private static Optional<Ratio> stated(IngredientUse use) {
    List<Statement> lines = new ArrayList<>();
    use.ingredient().ifPresent(i -> i.facts().all("allergen").forEach(lines::add));
    return lines.stream()
        .filter(line ->
            line.objectNames().stream().anyMatch(word -> word.value().equals(Allergens.SULPHITE)))
        .flatMap(line -> line.figure(Connective.AT, Unit.Dimension.SHARE).stream())
        .map(figure -> Ratio.ofFraction(figure.value().highInBase().doubleValue()))
        .findFirst();
  }
}
