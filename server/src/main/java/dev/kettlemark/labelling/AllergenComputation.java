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
import java.util.stream.Stream;

/** Gathers what the ingredients say of allergens. */
final class AllergenComputation {

  private AllergenComputation() {}

  static Allergens of(Makeup makeup, Facts own, Optional<House> house) {
    Map<String, List<IngredientUse>> contained = byWord(makeup, "allergen");
    Map<String, List<IngredientUse>> traces = byWord(makeup, "may-contain");
    own.wordsOf("may-contain").forEach(word -> traces.putIfAbsent(word.value(), List.of()));
    traces.keySet().removeAll(contained.keySet());
    List<String> onSite = house.stream()
        .flatMap(h -> h.facts().wordsOf("allergens-on-site").stream())
        .map(Located::value)
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

  /** In the order of the vocabulary; words that it does not know come behind. */
  private static Map<String, List<IngredientUse>> byWord(Makeup makeup, String fact) {
    Map<String, List<IngredientUse>> byWord = new LinkedHashMap<>();
    Stream<String> known = Vocabulary.of("allergen").stream().map(Vocabulary.Term::word);
    Stream<String> stated = makeup.uses().stream().flatMap(use -> use.words(fact).stream());
    Stream.concat(known, stated).distinct().forEach(word -> {
      List<IngredientUse> sources =
          makeup.uses().stream().filter(use -> use.says(fact, word)).toList();
      if (!sources.isEmpty()) {
        byWord.put(word, sources);
      }
    });
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
              "`" + use.name() + "` does not say how much sulphur dioxide it holds"));
      sum = Outcome.both(sum, Outcome.both(stated, use.share(), Ratio::times), Ratio::plus);
    }
    return sum;
  }

  /** {@code allergen sulphite at 2000 ppm}. */
  private static Optional<Ratio> stated(IngredientUse use) {
    List<Statement> lines = new ArrayList<>();
    use.ingredient().ifPresent(i -> i.facts().all("allergen").forEach(lines::add));
    return lines.stream()
        .filter(line -> line.objectNames().stream()
            .anyMatch(word -> word.value().equals(Allergens.SULPHITE)))
        .flatMap(line -> line.figure(Connective.AT, Unit.Dimension.SHARE).stream())
        .map(figure -> Ratio.ofFraction(figure.value().highInBase().doubleValue()))
        .findFirst();
  }
}
