package dev.kettlemark.cards;

import dev.kettlemark.labelling.Allergens;
import dev.kettlemark.labelling.ClaimAnswer;
import dev.kettlemark.labelling.Diet;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Standing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * A word of the labels of two formulas, and how each stands to it.
 *
 * @param word {@code milk}, {@code vegan} or {@code hot-sugar}
 * @param first how the first stands to it; a key of the words of sheets
 */
public record LabelWord(Kind kind, String word, String first, String second) {

  /** What sort of word it is. */
  public enum Kind {
    ALLERGEN,
    CLAIM,
    CAUTION
  }

  static final String CONTAINS = "allergy.contains";
  static final String NOT_STATED = "allergy.not-stated";

  /** Whether both stand to it alike. */
  public boolean isSame() {
    return first.equals(second);
  }

  LabelWord mirrored() {
    return new LabelWord(kind, word, /* first= */ second, /* second= */ first);
  }

  private record Key(Kind kind, String word) {}

  /** Every word of either, allergens first. */
  static List<LabelWord> between(Optional<Label> first, Optional<Label> second) {
    Map<Key, String> here = of(first);
    Map<Key, String> there = of(second);
    Set<Key> keys = new LinkedHashSet<>();
    for (Kind kind : Kind.values()) {
      // Sorted, so that neither side comes first.
      Set<String> words = new TreeSet<>();
      for (Map<Key, String> side : List.of(here, there)) {
        side.keySet().stream().filter(key -> key.kind() == kind).forEach(k -> words.add(k.word()));
      }
      words.forEach(word -> keys.add(new Key(kind, word)));
    }
    List<LabelWord> words = new ArrayList<>();
    for (Key key : keys) {
      words.add(new LabelWord(
          key.kind(),
          key.word(),
          here.getOrDefault(key, absent(key.kind())),
          there.getOrDefault(key, absent(key.kind()))));
    }
    return words;
  }

  /** An allergen that nobody states is not said to be absent, and a claim that is not made is not broken. */
  private static String absent(Kind kind) {
    return switch (kind) {
      case ALLERGEN -> NOT_STATED;
      case CLAIM -> "standing.not-made";
      case CAUTION -> "warning.none";
    };
  }

  private static Map<Key, String> of(Optional<Label> said) {
    Map<Key, String> words = new LinkedHashMap<>();
    said.ifPresent(label -> {
      allergens(label.allergens(), words);
      claims(label, words);
      label
          .cautions()
          .forEach(need -> words.put(
              new Key(Kind.CAUTION, need.caution()),
              need.isStated() ? "warning.stated" : "warning.asked"));
    });
    return words;
  }

  /** Of its three standings the gravest. */
  private static void allergens(Allergens allergens, Map<Key, String> words) {
    allergens.onSite().forEach(word -> words.put(new Key(Kind.ALLERGEN, word), "allergy.site"));
    allergens
        .mayContain()
        .keySet()
        .forEach(word -> words.put(new Key(Kind.ALLERGEN, word), "allergy.may"));
    allergens
        .contained()
        .keySet()
        .forEach(word -> words.put(new Key(Kind.ALLERGEN, word), CONTAINS));
  }

  private static void claims(Label label, Map<Key, String> words) {
    for (Diet.Answer diet : label.diets()) {
      words.put(new Key(Kind.CLAIM, diet.diet().word()), key(diet.standing()));
    }
    for (ClaimAnswer claim : label.claims()) {
      Key key = new Key(Kind.CLAIM, claim.claim());
      words.merge(key, key(claim.standing()), LabelWord::graver);
    }
  }

  /** Of two markets the stricter one. */
  private static String graver(String one, String other) {
    List<String> order = List.of(key(Standing.BROKEN), key(Standing.UNKNOWN), key(Standing.HOLDS));
    return order.indexOf(one) <= order.indexOf(other) ? one : other;
  }

  private static String key(Standing standing) {
    return "standing." + standing.name().toLowerCase(Locale.ROOT);
  }
}
