package dev.kettlemark.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the clauses of a step introduce, and the words that usually stand in them. */
public final class ClauseWords {

  private static final List<Vocabulary.Term> SPEEDS = List.of(
      new Vocabulary.Term("low", "speed"),
      new Vocabulary.Term("medium", "speed"),
      new Vocabulary.Term("high", "speed"));

  private static final List<Vocabulary.Term> HEATS = List.of(
      new Vocabulary.Term("water-bath", "heated by water that does not boil over 100 °C"),
      new Vocabulary.Term("direct-heat", "heated by the fire or the plate itself"));

  private static final Map<Connective, List<Vocabulary.Term>> CIRCUMSTANCES = Map.of(
      Connective.ON,
      Stream.concat(SPEEDS.stream(), HEATS.stream()).toList(),
      Connective.AT,
      List.of(
          new Vocabulary.Term(
              "sea-level", "the temperature holds for sea level; the kitchen's own is worked out"),
          new Vocabulary.Term("altitude", "the temperature holds for this kitchen")),
      Connective.WHILE,
      List.of(
          new Vocabulary.Term("whisking", "the whisk runs"),
          new Vocabulary.Term("stirring", "it is stirred")),
      Connective.UNDER,
      List.of(
          new Vocabulary.Term("lid", "no water leaves, and steam washes crystals off the wall")));

  private static final Map<Connective, String> CONNECTIVES = Map.ofEntries(
      Map.entry(Connective.UNTIL, "a state: until dissolved"),
      Map.entry(Connective.TO, "a target: to 118 °C"),
      Map.entry(Connective.FOR, "a time: for 30 min"),
      Map.entry(Connective.OVER, "the time of an addition: over 90 s"),
      Map.entry(Connective.INTO, "what it goes into: into foam"),
      Map.entry(Connective.IN, "where: in water"),
      Map.entry(Connective.WITH, "what goes with it: with icing-sugar"),
      Map.entry(Connective.WHILE, "what goes on meanwhile: while whisking"),
      Map.entry(Connective.ON, "a speed: on medium"),
      Map.entry(Connective.AT, "a temperature: at 18-20 °C"),
      Map.entry(Connective.ABOVE, "a least temperature: above 65 °C"),
      Map.entry(Connective.BELOW, "a limit: below 50 %RH"),
      Map.entry(Connective.WITHIN, "a time limit: within 10 min"),
      Map.entry(Connective.UNDER, "a cover: under lid"),
      Map.entry(Connective.BETWEEN, "what lies on both sides: between wafer-paper"));

  private ClauseWords() {}

  /** The words behind a connective of a step. */
  public static List<Vocabulary.Term> behind(Connective connective) {
    return CIRCUMSTANCES.getOrDefault(connective, List.of());
  }

  /**
   * The words behind a connective of a step that usually has this behind it.
   *
   * @param form what stands there in the form of the verb, such as {@code SPEED}
   */
  public static List<Vocabulary.Term> behind(Connective connective, Optional<String> form) {
    return switch (form.orElse("")) {
      case "SPEED" -> SPEEDS;
      case "HEAT" -> HEATS;
      default -> behind(connective);
    };
  }

  /** What a connective introduces in a step; empty for those that steps do not use. */
  public static String meaning(Connective connective) {
    return CONNECTIVES.getOrDefault(connective, "");
  }
}
