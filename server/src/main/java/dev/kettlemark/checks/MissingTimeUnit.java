package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reports a time without a unit.
 *
 * <p>Ninety seconds make a foam, ninety minutes ruin it.
 */
public final class MissingTimeUnit implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("missing-time-unit", "a time has no unit, so it is seconds or minutes");

  private static final Set<Connective> TIMES =
      EnumSet.of(Connective.FOR, Connective.OVER, Connective.WITHIN);

  /** A mass is left alone for hours by these; common practice, no source. */
  private static final Set<Verb> HOURS = EnumSet.of(Verb.SET, Verb.REST, Verb.DRY);

  /** Nobody whips or adds for so many minutes on end; common practice, no source. */
  private static final double MOST_MINUTES = 20;

  /** Words for a unit of time that are none. */
  private static final Map<String, Unit> LOOSE_WORDS = Map.ofEntries(
      Map.entry("sec", Unit.SECOND),
      Map.entry("secs", Unit.SECOND),
      Map.entry("second", Unit.SECOND),
      Map.entry("seconds", Unit.SECOND),
      Map.entry("mins", Unit.MINUTE),
      Map.entry("minute", Unit.MINUTE),
      Map.entry("minutes", Unit.MINUTE),
      Map.entry("hr", Unit.HOUR),
      Map.entry("hrs", Unit.HOUR),
      Map.entry("hour", Unit.HOUR),
      Map.entry("hours", Unit.HOUR));

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<Finding> findings = new ArrayList<>();
    for (Line line : subject.section().lines()) {
      if (line instanceof Line.StatementLine step) {
        for (Clause clause : step.clauses()) {
          for (Group group : clause.groups()) {
            if (isBare(group) && TIMES.contains(clause.word())) {
              Verb.of(step.head().text())
                  .ifPresent(verb -> findings.add(finding(verb, clause, group)));
            }
          }
        }
      }
    }
    return findings;
  }

  private static boolean isBare(Group group) {
    return group.atoms().get(0) instanceof Atom.QuantityAtom figure && figure.lacksUnit();
  }

  private static Finding finding(Verb verb, Clause clause, Group group) {
    Atom.QuantityAtom figure = (Atom.QuantityAtom) group.atoms().get(0);
    Optional<Atom.NameAtom> word = group.atoms().stream()
        .skip(1)
        .limit(1)
        .flatMap(atom -> atom instanceof Atom.NameAtom name ? Stream.of(name) : Stream.empty())
        .filter(name -> meant(name).isPresent())
        .findFirst();
    if (word.isPresent()) {
      Unit unit = meant(word.get()).orElseThrow();
      return INFO.at(
              word.get().span(), "the unit `%s` is written `%s`", word.get().text(), unit.symbol())
          .withFix(Fix.replace("Write `" + unit.symbol() + "`", word.get().span(), unit.symbol())
              .beyondDoubt());
    }
    String number = Columns.shown(figure.number());
    List<Unit> likely = likely(verb, clause.word(), figure);
    return INFO.at(
            figure.numberSpan(),
            "%s of which unit of time: %s",
            number,
            likely.stream()
                .map(unit -> "`" + number + " " + unit.symbol() + "`")
                .collect(Collectors.joining(" or ")))
        .because("the two differ by a factor of sixty")
        .withFixes(likely.stream()
            .map(unit -> Fix.insert(
                "Write `" + number + " " + unit.symbol() + "`",
                figure.numberSpan().end(),
                " " + unit.symbol()))
            .toList());
  }

  private static Optional<Unit> meant(Atom.NameAtom word) {
    return Optional.ofNullable(LOOSE_WORDS.get(word.text().toLowerCase(Locale.ROOT)))
        .or(() ->
            Unit.overlookingCase(word.text()).filter(unit -> unit.measures(Unit.Dimension.TIME)));
  }

  /** The two likely units, the likelier one first. */
  private static List<Unit> likely(Verb verb, Connective word, Atom.QuantityAtom figure) {
    double value = figure.quantity().orElseThrow().high().doubleValue();
    List<Unit> units = new ArrayList<>();
    if (HOURS.contains(verb) && word == Connective.FOR) {
      units.add(Unit.HOUR);
      units.add(Unit.MINUTE);
    } else if (verb == Verb.STAND || verb == Verb.SOAK || value <= MOST_MINUTES) {
      units.add(Unit.MINUTE);
      units.add(Unit.SECOND);
    } else {
      units.add(Unit.SECOND);
      units.add(Unit.MINUTE);
    }
    return units;
  }
}
