package dev.kettlemark.checks;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.Composition;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reports two ingredients that look like one thing under two spellings.
 *
 * <p>Each then has figures of its own, and where-used finds half of the formulas.
 */
public final class SimilarIngredients implements Rule {

  private static final RuleInfo INFO = RuleInfo.information(
      "similar-ingredients", "two ingredients look like one thing under two names");

  /** Shorter names differ by a letter and are different things. */
  private static final int SHORTEST = 6;

  /** Names differ in length by no more than a few hyphens and one letter. */
  private static final int MOST_HYPHENS = 4;

  /** So much of the mass, summed over all components, may lie otherwise in one and the same thing; an own estimate. */
  private static final double MOST_DIFFERENCE = 0.20;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject).stream()
        .flatMap(own -> subject.materialNames().stream()
            .filter(name -> isSpelledAlike(own.name().value(), name))
            .sorted()
            .flatMap(name -> subject.ingredient(name).stream())
            .filter(other -> isAlike(own, other))
            .flatMap(other -> finding(subject, own, other).stream()))
        .toList();
  }

  private static Optional<Finding> finding(Subject subject, Ingredient own, Ingredient other) {
    Optional<Entry> entry = subject.ask(Lookup.of(Kind.MATERIAL, other.name().value()));
    return entry.map(found -> INFO.at(
            own.name().span(),
            "`%s` and `%s` look like one thing",
            own.name().value(),
            other.name().value())
        .because("figures of the one are not those of the other, and where-used finds half")
        .withRelated(found.origin(other.name().span()), "the other one"));
  }

  /**
   * The same letters but for hyphens, capitals and one letter too many; a letter that differs, or a
   * figure, makes another thing: {@code pectin-hm} is no {@code pectin-lm}.
   */
  static boolean isSpelledAlike(String one, String other) {
    if (one.equals(other) || !canBeAlike(one, other)) {
      return false;
    }
    String a = letters(one);
    String b = letters(other);
    String shorter = a.length() <= b.length() ? a : b;
    String longer = a.length() <= b.length() ? b : a;
    return shorter.length() >= SHORTEST
        && digits(one).equals(digits(other))
        && (shorter.equals(longer)
            || (longer.length() == shorter.length() + 1 && hasOneMore(longer, shorter)));
  }

  /** Most names are told apart without a closer look: a library has hundreds, and each meets each. */
  private static boolean canBeAlike(String one, String other) {
    return Math.abs(one.length() - other.length()) <= MOST_HYPHENS
        && Character.toLowerCase(one.charAt(0)) == Character.toLowerCase(other.charAt(0));
  }

  private static boolean hasOneMore(String longer, String shorter) {
    int same = 0;
    while (same < shorter.length() && longer.charAt(same) == shorter.charAt(same)) {
      same++;
    }
    return longer.substring(same + 1).equals(shorter.substring(same));
  }

  private static String letters(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[-_'’]", "");
  }

  private static String digits(String name) {
    return name.replaceAll("\\D+", " ").strip();
  }

  private static boolean isAlike(Ingredient one, Ingredient other) {
    boolean sharesRole = one.roles().isEmpty()
        || other.roles().isEmpty()
        || one.roles().stream().anyMatch(other::hasRole);
    return sharesRole
        && Outcome.both(one.composition(), other.composition(), SimilarIngredients::isClose)
            .orElse(true);
  }

  private static boolean isClose(Composition one, Composition other) {
    return Arrays.stream(Component.values())
            .mapToDouble(component -> Math.abs(one.fraction(component) - other.fraction(component)))
            .sum()
        <= MOST_DIFFERENCE;
  }
}
