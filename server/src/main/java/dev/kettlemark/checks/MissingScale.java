package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a temperature without a scale.
 *
 * <p>Bench talk drops the scale; one reader hears °F and another °C, and sugar at 248 °C burns.
 */
public final class MissingScale implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "missing-scale", "a temperature has no scale, so one reader hears °C and another °F");

  /** Verbs of which a figure behind {@code at}, {@code above} or {@code below} is a temperature. */
  private static final Set<Verb> AT_A_TEMPERATURE = EnumSet.of(
      Verb.HYDRATE,
      Verb.SOAK,
      Verb.STAND,
      Verb.BOIL,
      Verb.COOK,
      Verb.WARM,
      Verb.COOL,
      Verb.STREAM,
      Verb.POUR,
      Verb.FOLD,
      Verb.DISPERSE,
      Verb.SPRINKLE,
      Verb.KEEP,
      Verb.DEPOSIT,
      Verb.PIPE,
      Verb.SPREAD,
      Verb.SET,
      Verb.REST,
      Verb.TEMPER,
      Verb.BOTTOM,
      Verb.ENROBE,
      Verb.DIP,
      Verb.DRY);

  /** Verbs of which a figure behind {@code to} is a temperature too. */
  private static final Set<Verb> TO_A_TEMPERATURE =
      EnumSet.of(Verb.BOIL, Verb.COOK, Verb.WARM, Verb.COOL, Verb.TEMPER);

  /** Facts of a house, an ingredient, a product or a trial that speak of temperatures. */
  private static final Set<String> FACTS = Set.of(
      "room", "hydrates", "activates", "coagulates", "sets", "melts", "tempers", "shelf", "kept");

  private static final Set<Connective> PLACES =
      EnumSet.of(Connective.AT, Connective.ABOVE, Connective.BELOW);

  /** Words that stand for a scale but are none. */
  private static final Map<String, Optional<Unit>> LOOSE_WORDS = Map.of(
      "c", Optional.of(Unit.CELSIUS),
      "celsius", Optional.of(Unit.CELSIUS),
      "f", Optional.of(Unit.FAHRENHEIT),
      "fahrenheit", Optional.of(Unit.FAHRENHEIT),
      "°", Optional.empty(),
      "deg", Optional.empty(),
      "degree", Optional.empty(),
      "degrees", Optional.empty());

  /** The hottest that is usual in °C; common practice, no source. A higher figure means °F. */
  private static final double HOTTEST_COOK = 200;

  /** At what water boils in the highest kitchens, in °C. */
  private static final double COOLEST_COOK = 85;

  /** Figures beyond these are no kitchen temperature on either scale, so none is converted. */
  private static final double COLDEST = -100;

  private static final double HOTTEST = 1000;

  private static final double HOTTEST_WARM = 100;
  private static final double HOTTEST_STORE = 60;
  private static final double HOTTEST_MASS = 130;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<Finding> findings = new ArrayList<>();
    for (Line line : subject.section().lines()) {
      for (Clause clause : line.clauses()) {
        for (Group group : clause.groups()) {
          if (isBare(group) && takesTemperature(line, clause.word())) {
            findings.add(finding(group, hottest(line)));
          }
        }
      }
    }
    return findings;
  }

  private static boolean takesTemperature(Line line, Connective word) {
    if (line instanceof Line.AmountLine || line instanceof Line.SufficientLine) {
      return word == Connective.AT;
    }
    if (!(line instanceof Line.StatementLine statement)) {
      return false;
    }
    Optional<Verb> verb = Verb.of(statement.head().text());
    if (word == Connective.TO) {
      return verb.filter(TO_A_TEMPERATURE::contains).isPresent();
    }
    return PLACES.contains(word)
        && (verb.filter(AT_A_TEMPERATURE::contains).isPresent()
            || FACTS.contains(statement.head().text()));
  }

  private static boolean isBare(Group group) {
    return group.atoms().get(0) instanceof Atom.QuantityAtom figure && figure.lacksUnit();
  }

  private static double hottest(Line line) {
    Optional<Verb> verb = line instanceof Line.StatementLine statement
        ? Verb.of(statement.head().text())
        : Optional.empty();
    return verb.map(Verb::effect)
        .map(effect -> switch (effect) {
          case COOK, BOIL -> HOTTEST_COOK;
          case HEAT -> HOTTEST_WARM;
          case WAIT -> HOTTEST_STORE;
          default -> HOTTEST_MASS;
        })
        .orElse(HOTTEST_MASS);
  }

  private static Finding finding(Group group, double hottest) {
    Atom.QuantityAtom figure = (Atom.QuantityAtom) group.atoms().get(0);
    List<Atom> loose = group.atoms().stream()
        .skip(1)
        .takeWhile(atom -> LOOSE_WORDS.containsKey(word(atom)))
        .toList();
    Span span = loose.isEmpty()
        ? figure.span()
        : figure.span().to(loose.get(loose.size() - 1).span());
    Quantity quantity = figure.quantity().orElseThrow();
    Finding finding = INFO.at(
            span, "%s of which scale%s", Columns.shown(figure.number()), readings(quantity))
        .because("one reader hears °C and another °F");
    Optional<Unit> hint = loose.stream()
        .flatMap(atom -> LOOSE_WORDS.getOrDefault(word(atom), Optional.empty()).stream())
        .findFirst();
    if (hint.isPresent()) {
      return finding.withFix(written(figure, span, hint.get()).beyondDoubt());
    }
    boolean tooHot = quantity.high().doubleValue() > hottest;
    Unit plausible = tooHot ? Unit.FAHRENHEIT : Unit.CELSIUS;
    Unit other = tooHot ? Unit.CELSIUS : Unit.FAHRENHEIT;
    List<Fix> fixes = new ArrayList<>();
    fixes.add(written(figure, span, plausible));
    if (tooHot && isPlain(quantity)) {
      String celsius = Display.celsius(whole(fahrenheit(quantity)));
      fixes.add(Fix.replace("Write `" + celsius + "`", span, celsius));
    }
    if (hottest != HOTTEST_COOK || canCook(quantity, other)) {
      fixes.add(written(figure, span, other));
    }
    return finding.withFixes(fixes);
  }

  /** Whether water boils and sugar does not yet burn, so that it may be the temperature of a cook. */
  private static boolean canCook(Quantity quantity, Unit scale) {
    double figure = Math.min(HOTTEST, Math.max(COLDEST, quantity.high().doubleValue()));
    Temperature read =
        scale == Unit.CELSIUS ? Temperature.ofCelsius(figure) : Temperature.ofFahrenheit(figure);
    return read.celsius() > COOLEST_COOK && read.celsius() <= HOTTEST_COOK;
  }

  private static String readings(Quantity quantity) {
    if (!isPlain(quantity)) {
      return "";
    }
    double figure = quantity.low().doubleValue();
    Temperature celsius = Temperature.ofCelsius(figure);
    return String.format(
        Locale.ROOT,
        ": %s is %s, %s is %s",
        Display.celsius(celsius),
        Display.fahrenheit(celsius),
        Display.trimmed(figure, 1) + " °F",
        Display.celsius(whole(fahrenheit(quantity))));
  }

  private static Fix written(Atom.QuantityAtom figure, Span span, Unit scale) {
    List<TextEdit> edits = new ArrayList<>();
    edits.add(TextEdit.insert(figure.numberSpan().end(), " " + scale.symbol()));
    if (figure.span().end() < span.end()) {
      edits.add(TextEdit.delete(new Span(figure.span().end(), span.end())));
    }
    return new Fix("Write `" + Columns.shown(figure.number()) + " " + scale.symbol() + "`", edits);
  }

  /** Whether it is one figure that both scales know. */
  private static boolean isPlain(Quantity quantity) {
    double figure = quantity.low().doubleValue();
    return !quantity.isRange()
        && quantity.tolerance().isEmpty()
        && figure > COLDEST
        && figure < HOTTEST;
  }

  private static Temperature fahrenheit(Quantity quantity) {
    return Temperature.ofFahrenheit(quantity.low().doubleValue());
  }

  private static Temperature whole(Temperature temperature) {
    return Temperature.ofCelsius(Math.rint(temperature.celsius()));
  }

  private static String word(Atom atom) {
    if (atom instanceof Atom.NameAtom name) {
      return name.text().toLowerCase(Locale.ROOT);
    }
    return atom instanceof Atom.StrayAtom stray ? stray.text() : "";
  }
}
