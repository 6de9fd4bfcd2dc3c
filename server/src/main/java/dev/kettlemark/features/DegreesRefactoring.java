package dev.kettlemark.features;

import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Unit;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/** Temperatures in the other scale, tolerances too. */
final class DegreesRefactoring {

  private final RefactoringSite site;

  private DegreesRefactoring(RefactoringSite site) {
    this.site = site;
  }

  /** The temperatures of the selected lines, and those of the whole formula. */
  static List<Refactoring> at(RefactoringSite site) {
    return new DegreesRefactoring(site).all();
  }

  private List<Refactoring> all() {
    List<Refactoring> found = new ArrayList<>();
    List<Atom.QuantityAtom> here = figures(
        site.entry().section().lines().stream().filter(line -> site.isSelected(line.span())));
    List<Atom.QuantityAtom> all = figures(site.entry().section().lines().stream());
    if (here.isEmpty() && site.lines().start() == 0) {
      all.stream()
          .findFirst()
          .ifPresent(first -> addAll(found, edits(all, other(first)), other(first)));
    }
    here.stream().findFirst().ifPresent(first -> {
      Unit to = other(first);
      List<TextEdit> edits = edits(here, to);
      String written = first.span().of(site.text());
      String title = edits.size() == 1
          ? "Write " + written + " as " + edits.get(0).replacement()
          : "Write " + edits.size() + " temperatures here in " + to.symbol();
      add(found, ActionTitle.of(title), edits);
      List<TextEdit> whole = edits(all, to);
      if (whole.size() > edits.size()) {
        addAll(found, whole, to);
      }
    });
    return found;
  }

  private void addAll(List<Refactoring> found, List<TextEdit> whole, Unit to) {
    add(
        found,
        ActionTitle.of(
            "Write all " + whole.size() + " temperatures in " + to.symbol(), " in " + site.name()),
        whole);
  }

  private void add(List<Refactoring> found, String title, List<TextEdit> edits) {
    Rewriting rewriting = site.rewriting(edits);
    if (!rewriting.edits().isEmpty()) {
      found.add(Refactoring.of(
          title, Refactoring.Kind.REWRITE, site.document().uri(), rewriting.edits()));
    }
  }

  private static List<Atom.QuantityAtom> figures(Stream<Line> lines) {
    return lines
        .flatMap(Pointed::temperatures)
        .filter(figure -> figure.quantity().isPresent())
        .toList();
  }

  private static Unit other(Atom.QuantityAtom figure) {
    return unit(figure) == Unit.CELSIUS ? Unit.FAHRENHEIT : Unit.CELSIUS;
  }

  private static Unit unit(Atom.QuantityAtom figure) {
    return figure.quantity().flatMap(Quantity::unit).orElse(Unit.CELSIUS);
  }

  private static List<TextEdit> edits(List<Atom.QuantityAtom> figures, Unit to) {
    return figures.stream()
        .filter(figure -> unit(figure) != to)
        .flatMap(figure -> figure.quantity().stream()
            .map(quantity -> new TextEdit(figure.span(), written(quantity, to))))
        .toList();
  }

  /** {@code 289 °F ± 1.8}, {@code 64-68 °F}. */
  static String written(Quantity quantity, Unit to) {
    String low = figure(quantity.lowInBase(), to);
    String high = figure(quantity.highInBase(), to);
    Optional<String> tolerance = quantity
        .toleranceInBase()
        .map(difference -> Display.trimmed(difference.divide(to.factor()).doubleValue(), 1));
    String range = low.startsWith("-") || high.startsWith("-") ? "–" : "-";
    return (quantity.isRange() ? low + range + high : low)
        + " " + to.symbol()
        + tolerance.map(slack -> " ± " + slack).orElse("");
  }

  private static String figure(BigFraction celsius, Unit to) {
    Temperature temperature = Temperature.ofCelsius(celsius.doubleValue());
    String shown =
        to == Unit.CELSIUS ? Display.celsius(temperature) : Display.fahrenheit(temperature);
    return shown.substring(0, shown.indexOf(' '));
  }
}
