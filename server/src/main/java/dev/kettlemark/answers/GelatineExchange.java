package dev.kettlemark.answers;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.quantity.Remark;
import dev.kettlemark.science.Bloom;
import dev.kettlemark.science.Equation;
import dev.kettlemark.science.GelatineStrength;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.fraction.BigFraction;

/**
 * Takes gelatine of one strength for gelatine of another.
 *
 * <p>Two rules circulate. The root rule follows the strength of the gel; the linear rule is custom in
 * kitchens. Where they differ by more than a tenth the answer says so.
 */
public final class GelatineExchange {

  private GelatineExchange() {}

  /** Which of the two rules holds. */
  public enum Rule {
    ROOT,
    LINEAR;

    Equation equation() {
      return this == ROOT ? GelatineStrength.EQUATION : GelatineStrength.LINEAR;
    }

    Mass mass(Mass mass, Bloom from, Bloom to) {
      return this == ROOT
          ? GelatineStrength.byRootRule(mass, from, to)
          : GelatineStrength.byLinearRule(mass, from, to);
    }

    private Rule other() {
      return this == ROOT ? LINEAR : ROOT;
    }

    private String word() {
      return this == ROOT ? "root" : "linear";
    }
  }

  /** So much gelatine of another strength for a mass of one. */
  public static Answer of(Mass mass, Bloom from, Bloom to, Rule rule) {
    Mass found = rule.mass(mass, from, to);
    return new Answer(
        "Use " + Display.mass(found) + " of gelatine " + bloom(to) + " for " + Display.mass(mass)
            + " of gelatine " + bloom(from),
        List.of(
            Value.of("gelatine", found),
            Value.of(
                "gelatine-by-" + rule.other().word() + "-rule", rule.other().mass(mass, from, to))),
        List.of(),
        notes(from, to, rule),
        derivation(Display.mass(found), Display.mass(mass), from, to, rule));
  }

  /**
   * Another gelatine in the place of a line's.
   *
   * @param index the line, counted through all stages
   */
  public static Outcome<Answer> of(ComputedFormula formula, int index, Material other, Rule rule) {
    LineAmount line = formula.amounts().lines().get(index);
    var from = formula
        .material(line.line().ingredient().value())
        .flatMap(Material::ingredient)
        .flatMap(Shelf::bloom);
    var to = other.ingredient().flatMap(Shelf::bloom);
    if (from.isEmpty() || to.isEmpty()) {
      String nameless = from.isEmpty() ? line.line().ingredient().value() : other.name();
      return Outcome.unknown(Reason.MISSING_FIGURE, "`%s` states no bloom", nameless);
    }
    return exchanged(formula, index, other, from.get(), to.get(), rule);
  }

  private static Outcome<Answer> exchanged(
      ComputedFormula formula, int index, Material other, Bloom from, Bloom to, Rule rule) {
    LineAmount line = formula.amounts().lines().get(index);
    if (!Figure.isFree(formula, line)) {
      return Exchanges.boundLine(line);
    }
    BigFraction before = line.share().orElse(BigFraction.ZERO);
    double factor = rule.mass(Mass.ofGrams(1), from, to).grams();
    Figure figure = Figure.rounded(line, before.multiply(Exchanges.exact(factor)));
    return WaterRest.changes(formula, line.stage(), figure.share().subtract(before))
        .map(rest -> {
          List<Change> changes = new ArrayList<>();
          changes.add(new Change.Replace(index, other, figure));
          changes.addAll(rest);
          String old = Exchanges.written(line);
          return new Answer(
              "Use " + other.name() + ": " + figure.shown() + " for "
                  + line.line().ingredient().value() + " " + old
                  + otherRule(line, before, from, to, rule)
                  + Exchanges.told(formula, rest)
                  + Exchanges.allergens(
                      formula.material(line.line().ingredient().value()), other),
              List.of(
                  Exchanges.share("gelatine", figure.share()),
                  Exchanges.share("gelatine-now", before)),
              changes,
              notes(from, to, rule),
              derivation(figure.shown(), old, from, to, rule));
        });
  }

  /** What the other rule would take, where it is noticeably more or less. */
  private static String otherRule(
      LineAmount line, BigFraction before, Bloom from, Bloom to, Rule rule) {
    if (!GelatineStrength.rulesDisagree(from, to)) {
      return "";
    }
    double factor = rule.other().mass(Mass.ofGrams(1), from, to).grams();
    Figure figure = Figure.rounded(line, before.multiply(Exchanges.exact(factor)));
    return " (by the " + rule.other().word() + " rule " + figure.shown() + ")";
  }

  private static List<Remark> notes(Bloom from, Bloom to, Rule rule) {
    List<Remark> notes = new ArrayList<>();
    if (GelatineStrength.rulesDisagree(from, to)) {
      double factor = rule.mass(Mass.ofGrams(1), from, to).grams();
      double other = rule.other().mass(Mass.ofGrams(1), from, to).grams();
      notes.add(Remark.of(
          "the %s rule takes %s times as much, the %s rule %s; try a small batch first",
          Remark.of(rule.word()),
          Display.fixed(factor, 2),
          Remark.of(rule.other().word()),
          Display.fixed(other, 2)));
    }
    return notes;
  }

  private static Derivation derivation(String value, String mass, Bloom from, Bloom to, Rule rule) {
    return rule.equation()
        .derive(
            value,
            List.of(
                Derivation.given("gelatine", mass, "the question"),
                Derivation.given("its bloom", bloom(from), "the grade"),
                Derivation.given("bloom wanted", bloom(to), "the grade")));
  }

  private static String bloom(Bloom bloom) {
    return Display.trimmed(bloom.grams(), 0) + " bloom";
  }
}
