package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Origin;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Trial;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.science.GrowthLimit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reports a piece that is to keep in a room although neither its dryness nor its acid protects it.
 *
 * <p>No pH is computed. What was measured at the bench counts, then what the formula expects or checks;
 * where nothing is said, nobody can say whether the piece needs the cold.
 */
public final class PerishableInRoom implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
          "perishable-in-room", "a moist piece that acid does not protect is to keep in a room")
      .forSafety();

  /** Acid foods are those of pH 4.6 or below: 21 CFR 114.3(b); Food Code 2022, 1-201.10, from memory. */
  private static final double ACID = 4.6;

  /** So long time alone may stand for the cold: Food Code 2022, 3-501.19, from memory. */
  private static final double SECONDS_WITHOUT_COLD = 4 * 3600;

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return RoomShelf.of(subject).stream()
        .flatMap(shelf -> shelf.parts().flatMap(part -> check(subject, shelf, part).stream()))
        .toList();
  }

  /** Whether a part is told of here as wet enough for what makes people ill. */
  static boolean tells(Subject subject, RoomShelf shelf, Located<String> part) {
    return check(subject, shelf, part)
        .filter(finding -> finding.severity() != Severity.INFORMATION)
        .isPresent();
  }

  /** A pH with the place that gives it. */
  private record Acidity(Band<Double> band, String told, Origin place) {}

  private static Optional<Finding> check(Subject subject, RoomShelf shelf, Located<String> part) {
    Optional<Band<Ratio>> wet = PartActivity.of(subject, part.value())
        .filter(activity -> activity.high().compareTo(GrowthLimit.SHELF_STABLE) > 0);
    if (wet.isEmpty() || shelf.seconds() <= SECONDS_WITHOUT_COLD) {
      return Optional.empty();
    }
    Optional<Acidity> acidity = acidity(subject, part.value());
    if (acidity.filter(said -> said.band().high() <= ACID).isPresent()) {
      return Optional.empty();
    }
    Finding finding = INFO.at(
            part.span(),
            "`%s` has a water activity of %s, and %s",
            part.value(),
            Display.activity(wet.get()),
            acidity
                .map(said -> "pH " + Display.trimmed(said.band().high(), 2) + " " + said.told())
                .orElse("nothing says its pH"))
        .because(
            "above 0.85 germs that make people ill grow, unless its pH is 4.6 or below; "
                + (acidity.isPresent()
                    ? "keep it cold, make it drier or more sour, and follow local food law"
                    : "measure the pH and write `expect acidity`, or keep it cold; local food law decides"))
        .as(severity(wet.get(), acidity))
        .withRelated(subject.entry().origin(shelf.fact().span()), "kept here")
        .withFix(shelf.keptCold());
    return Optional.of(
        acidity.map(said -> finding.withRelated(said.place(), "its pH")).orElse(finding));
  }

  private static Severity severity(Band<Ratio> activity, Optional<Acidity> acidity) {
    if (!activity.isWhollyAbove(GrowthLimit.SHELF_STABLE)) {
      return Severity.INFORMATION;
    }
    return acidity.filter(said -> said.band().low() > ACID).isPresent()
        ? Severity.ERROR
        : Severity.WARNING;
  }

  private static Optional<Acidity> acidity(Subject subject, String name) {
    return measured(subject, name)
        .or(() -> subject.ask(Formulas.computed(name)).flatMap(formula -> said(subject, formula)));
  }

  /** The pH of the latest trial that measured one. */
  private static Optional<Acidity> measured(Subject subject, String name) {
    return subject.ask(Lookup.trialsOf(name)).stream()
        .sorted(Comparator.comparing(PerishableInRoom::day).reversed())
        .flatMap(entry -> Trials.trial(entry).stream()
            .map(Trial::facts)
            .flatMap(facts -> highest(facts.all("measured")).stream())
            .map(
                figure -> new Acidity(figure.value(), "was measured", entry.origin(figure.span()))))
        .findFirst();
  }

  private static String day(Entry trial) {
    return Trials.trial(trial).flatMap(Trial::day).map(Object::toString).orElse("");
  }

  /** What the formula itself expects of the whole, or else checks. */
  private static Optional<Acidity> said(Subject subject, ComputedFormula formula) {
    Facts facts = formula.formula().facts();
    Optional<Located<Band<Double>>> expected = highest(facts.all("expect"));
    Optional<Located<Band<Double>>> checked =
        highest(formula.formula().steps().filter(step -> step.is("check")));
    return expected
        .or(() -> checked)
        .flatMap(figure -> subject
            .ask(Lookup.of(Kind.MATERIAL, formula.formula().name().value()))
            .map(entry -> new Acidity(
                figure.value(),
                expected.isPresent() ? "is expected" : "is checked for",
                entry.origin(figure.span()))));
  }

  private static Optional<Located<Band<Double>>> highest(Stream<Statement> lines) {
    return lines
        .flatMap(line -> line.figure(Unit.Dimension.ACIDITY).stream())
        .map(figure -> figure.map(written -> {
          double slack = written.toleranceInBase().map(t -> t.doubleValue()).orElse(0.0);
          return Band.spanning(
              written.low().doubleValue() - slack, written.high().doubleValue() + slack);
        }))
        .max(Comparator.comparing(figure -> figure.value().high()));
  }
}
