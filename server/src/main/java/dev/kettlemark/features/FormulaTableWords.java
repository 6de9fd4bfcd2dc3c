package dev.kettlemark.features;

import dev.kettlemark.analysis.CookedWeight;
import dev.kettlemark.analysis.Figure;
import dev.kettlemark.analysis.FigureWords;
import dev.kettlemark.features.FormulaTable.Row;
import dev.kettlemark.features.FormulaTable.StageRows;
import dev.kettlemark.features.FormulaTable.Totals;
import dev.kettlemark.model.Operand;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The figures of a {@link FormulaTable} in words, the same in every rendering. */
final class FormulaTableWords {

  private FormulaTableWords() {}

  /**
   * One figure of the whole formula.
   *
   * @param word by which programs know it
   * @param what a reader calls it
   * @param shown with its unit
   */
  record Total(String word, String what, Outcome<String> shown) {

    /** The figure, or why it is unknown. */
    String value() {
      return shown.fold(text -> text, unknown -> "unknown: " + unknown.because());
    }
  }

  /** Code, version, status, basis, weight and place. */
  static String circumstances(FormulaTable table) {
    List<String> words = new ArrayList<>();
    table.factWord("code").ifPresent(words::add);
    version(table).forEach(words::add);
    table.factWord("status").ifPresent(words::add);
    words.add("percent of " + table.basis());
    String charge = Display.mass(table.totals().charge());
    words.add(
        table.nominal() ? "no batch given: weights for a charge of " + charge : "batch " + charge);
    words.add("at "
        + Display.trimmed(table.kitchen().altitudeMetres(), 0)
        + " m ("
        + Display.fixed(table.kitchen().pressure().kilopascals(), 1)
        + " kPa)");
    return String.join(", ", words);
  }

  static String heading(StageRows stage) {
    return "stage "
        + stage.name()
        + stage.title().map(title -> " \"" + title + "\"").orElse("")
        + stage.vessel().map(vessel -> " in " + vessel).orElse("");
  }

  /** The name of a row, which for a taken stage says how much of it. */
  static String name(Row row) {
    return row.taken() ? row.written() + " " + row.name() : row.name();
  }

  static String written(Row row) {
    return row.taken() ? "" : row.written();
  }

  static String share(Row row) {
    return row.share()
        .map(share -> share.fold(Display::percent, unknown -> "unknown"))
        .orElse("");
  }

  static String mass(Outcome<Mass> mass) {
    return mass.fold(Display::mass, unknown -> "unknown");
  }

  /** What a stage leaves, in one sentence. */
  static String leaves(StageRows stage) {
    List<String> words = new ArrayList<>();
    words.add("leaves "
        + stage
            .left()
            .fold(
                mass -> withSlack(mass, stage.slack()),
                unknown -> "an unknown weight (" + unknown.because() + ")"));
    stage.water().ifKnown(water -> words.add(Display.estimate(water) + " water"));
    words.add(Display.celsius(stage.temperature()));
    if (!stage.states().isEmpty()) {
      words.add(stage.stateWords());
    }
    if (stage.evaporated().grams() > 0) {
      words.add(Display.mass(stage.evaporated()) + " boiled away");
    }
    return String.join(", ", words);
  }

  /** The figures of the whole formula, in the order of the work, then how it eats and keeps. */
  static List<Total> totals(Totals totals) {
    List<Total> told = new ArrayList<>(List.of(
        known("charge", Display.mass(totals.charge())),
        known("boiled away", Display.mass(totals.evaporated())),
        new Total("cooked", "cooked", totals.cooked().map(FormulaTableWords::cooked)),
        new Total(
            "yield",
            "yield",
            Outcome.both(
                totals.yieldShare(), totals.yieldBand(), FormulaTableWords::cookedShare))));
    for (Figure figure : Figure.values()) {
      told.add(new Total(
          figure.word(),
          figure.title(),
          totals.figures().flatMap(all -> FigureWords.of(all, figure))));
    }
    return told;
  }

  private static Total known(String what, String text) {
    return new Total(what.replace(' ', '-'), what, Outcome.known(text));
  }

  private static List<String> version(FormulaTable table) {
    return table.facts().first("version").stream()
        .flatMap(fact -> fact.objects().stream().limit(1))
        .flatMap(object -> object.value() instanceof Operand.Figure figure
            ? Stream.of("version " + Display.trimmed(figure.quantity().middle().doubleValue(), 2))
            : Stream.empty())
        .toList();
  }

  private static String cooked(CookedWeight cooked) {
    return withSlack(cooked.mass(), cooked.slack());
  }

  private static String cookedShare(Ratio yield, Band<Ratio> band) {
    String share = Display.estimate(yield);
    return band.isExact()
        ? share
        : share
            + " ("
            + Display.fixed(band.low().percent(), 1)
            + "–"
            + Display.estimate(band.high())
            + ")";
  }

  private static String withSlack(Mass mass, Mass slack) {
    return slack.grams() > 0
        ? Display.mass(mass) + " ± " + Display.mass(slack)
        : Display.mass(mass);
  }
}
