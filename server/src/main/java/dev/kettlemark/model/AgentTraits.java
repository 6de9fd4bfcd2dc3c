package dev.kettlemark.model;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a gelling, thickening or whipping agent asks for before it works, as its pantry entry says.
 *
 * @param hydrates when it takes up water
 * @param activates from when on it works
 * @param coagulates from when on it sets with heat for good
 * @param sets below which temperature it gels
 * @param melts above which temperature its gel melts
 * @param reversible whether its gel melts and sets again; empty where nothing is said
 * @param needs plain words for what it cannot do without, such as {@code boil}, {@code soak}, {@code calcium}
 * @param dispersal how it goes into a liquid without lumps
 * @param acidity the pH that it stands
 * @param ethanol the share of ethanol from which on it fails
 * @param overWhipping whether it can be whipped too long without harm; empty where nothing is said
 */
public record AgentTraits(
    Optional<Condition> hydrates,
    Optional<Condition> activates,
    Optional<Condition> coagulates,
    Optional<Temperature> sets,
    Optional<Temperature> melts,
    Optional<Boolean> reversible,
    Set<String> needs,
    Optional<Dispersal> dispersal,
    Optional<Band<Double>> acidity,
    Optional<Ratio> ethanol,
    Optional<Boolean> overWhipping) {

  public AgentTraits {
    needs = Set.copyOf(needs);
  }

  /**
   * Heat or cold that must be reached.
   *
   * @param limit the temperature
   * @param above whether the mass must be hotter than the limit, or else colder
   * @param seconds for how long; empty where a moment does
   * @param mostSolids solids of the mass above which it fails; empty where nothing is said
   */
  public record Condition(
      Temperature limit, boolean above, Optional<Double> seconds, Optional<Ratio> mostSolids) {

    /** Whether a mass that lies wholly in this band has the heat or cold that is asked for. */
    public boolean isMetBy(Band<Temperature> band) {
      return above ? band.low().compareTo(limit) >= 0 : band.high().compareTo(limit) <= 0;
    }

    /** Whether some temperature of the band has the heat or cold that is asked for. */
    public boolean mayBeMetBy(Band<Temperature> band) {
      return above ? band.high().compareTo(limit) >= 0 : band.low().compareTo(limit) <= 0;
    }
  }

  /**
   * How an agent goes into a liquid.
   *
   * @param carrier how many times its own weight of sugar it is blended with first; empty where none is asked for
   * @param liquid {@code cold} or {@code hot}; empty where either does
   */
  public record Dispersal(Optional<Double> carrier, Optional<String> liquid) {}

  /** Whether the entry says anything of how the agent is brought to work. */
  public boolean saysHow() {
    return hydrates.isPresent()
        || activates.isPresent()
        || coagulates.isPresent()
        || sets.isPresent()
        || !needs.isEmpty();
  }

  static AgentTraits of(Facts facts) {
    return new AgentTraits(
        condition(facts, "hydrates"),
        condition(facts, "activates"),
        condition(facts, "coagulates"),
        limit(facts, "sets", Connective.BELOW),
        limit(facts, "melts", Connective.ABOVE),
        yesOrNo(facts.all("reversible").toList()),
        facts.wordsOf("needs").stream().map(Located::value).collect(Collectors.toSet()),
        facts.first("disperses").map(AgentTraits::dispersal),
        acidity(facts),
        ethanol(facts),
        yesOrNo(facts
            .all("tolerates")
            .filter(fact -> names(fact).contains("over-whipping"))
            .toList()));
  }

  private static Optional<Condition> condition(Facts facts, String word) {
    return facts.first(word).flatMap(fact -> {
      Optional<Temperature> above = temperature(fact, Connective.ABOVE);
      Optional<Temperature> limit = above.or(() -> temperature(fact, Connective.BELOW));
      return limit.map(found -> new Condition(
          found,
          above.isPresent(),
          fact.figure(Connective.FOR, Unit.Dimension.TIME)
              .map(time -> time.value().middleInBase().doubleValue()),
          fact.figure(Connective.BELOW, Unit.Dimension.SHARE)
              .map(share -> Ratio.ofFraction(share.value().middleInBase().doubleValue()))));
    });
  }

  private static Optional<Temperature> limit(Facts facts, String word, Connective connective) {
    return facts.first(word).flatMap(fact -> temperature(fact, connective));
  }

  private static Optional<Temperature> temperature(Statement fact, Connective connective) {
    return fact.figure(connective, Unit.Dimension.TEMPERATURE)
        .map(figure -> Temperature.ofCelsius(figure.value().middleInBase().doubleValue()));
  }

  private static Dispersal dispersal(Statement fact) {
    Optional<Double> carrier = fact.clauses().stream()
        .filter(clause -> clause.word() == Connective.WITH)
        .flatMap(clause -> clause.operands().stream())
        .flatMap(operand -> operand.value() instanceof Operand.Figure figure
            ? Optional.of(figure.quantity().middle().doubleValue()).stream()
            : Optional.<Double>empty().stream())
        .findFirst();
    Optional<String> liquid = fact.names(Connective.IN).stream()
        .map(Located::value)
        .filter(word -> word.equals("cold") || word.equals("hot"))
        .findFirst();
    return new Dispersal(carrier, liquid);
  }

  private static Optional<Band<Double>> acidity(Facts facts) {
    return facts
        .all("tolerates")
        .flatMap(fact -> fact.objectFigure(Unit.Dimension.ACIDITY).stream())
        .map(figure ->
            new Band<>(figure.value().low().doubleValue(), figure.value().high().doubleValue()))
        .findFirst();
  }

  private static Optional<Ratio> ethanol(Facts facts) {
    return facts
        .all("tolerates")
        .filter(fact -> names(fact).contains("ethanol"))
        .flatMap(fact -> fact.figure(Connective.BELOW, Unit.Dimension.SHARE).stream())
        .map(figure -> Ratio.ofFraction(figure.value().middleInBase().doubleValue()))
        .findFirst();
  }

  private static Optional<Boolean> yesOrNo(List<Statement> facts) {
    return facts.stream()
        .flatMap(fact -> names(fact).stream())
        .filter(word -> word.equals("yes") || word.equals("no"))
        .map("yes"::equals)
        .findFirst();
  }

  private static List<String> names(Statement fact) {
    return fact.objectNames().stream().map(Located::value).toList();
  }
}
