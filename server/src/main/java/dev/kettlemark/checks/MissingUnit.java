package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Excerpt;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Reports an amount without a unit.
 *
 * <p>Percent or grams differ by the batch: a factor of twelve in a batch of 1200 g.
 */
public final class MissingUnit implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("missing-unit", "an amount has no unit, so nobody knows how much it is");

  /** Facts that are an amount, each with its likely units. */
  private static final Map<String, List<String>> FACTS = Map.of(
      "batch", List.of("g", "kg"),
      "centre", List.of("g"),
      "coat", List.of("%", "g"),
      "filling", List.of("%", "g"),
      "layer", List.of("%", "g"),
      "wafer", List.of("g", "%"),
      "make", List.of("pieces"),
      "loss", List.of("%"),
      "spare", List.of("%"));

  /** Changes of a variant that write an amount. */
  private static final Set<String> CHANGES = Set.of("replace", "add", "change");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Section section = subject.section();
    List<String> usual = units(section);
    List<Finding> findings = new ArrayList<>();
    for (Line line : section.lines()) {
      if (line instanceof Line.AmountLine amount && amount.measure().lacksUnit()) {
        findings.add(finding(amount.measure(), misspelt(amount), usual));
      } else if (line instanceof Line.StatementLine statement) {
        findings.addAll(findings(usual, statement));
      }
    }
    return findings;
  }

  private static List<Finding> findings(List<String> usual, Line.StatementLine statement) {
    List<Finding> findings = misspelt(statement);
    if (findings.isEmpty() && isAmount(statement.head().text())) {
      List<String> units = FACTS.getOrDefault(statement.head().text(), usual);
      addBare(statement.objects(), units, findings);
      for (Clause clause : statement.clauses()) {
        if (clause.word() == Connective.BY) {
          addBare(clause.groups(), units, findings);
        }
      }
    }
    return findings;
  }

  private static boolean isAmount(String head) {
    return CHANGES.contains(head) || FACTS.containsKey(head);
  }

  private static void addBare(List<Group> groups, List<String> units, List<Finding> findings) {
    for (Group group : groups) {
      if (group.atoms().get(0) instanceof Atom.QuantityAtom figure && figure.lacksUnit()) {
        findings.add(finding(figure, Optional.empty(), units));
      }
    }
  }

  /** Figures with a unit in the wrong capitals; those of time and heat are left to rules of their own. */
  private static List<Finding> misspelt(Line.StatementLine statement) {
    List<Finding> findings = new ArrayList<>();
    statement.objects().forEach(group -> addMisspelt(group, findings));
    for (Clause clause : statement.clauses()) {
      clause.groups().forEach(group -> addMisspelt(group, findings));
    }
    return findings;
  }

  private static void addMisspelt(Group group, List<Finding> findings) {
    List<Atom> atoms = group.atoms();
    for (int i = 0; i + 1 < atoms.size(); i++) {
      if (atoms.get(i) instanceof Atom.QuantityAtom figure
          && figure.lacksUnit()
          && atoms.get(i + 1) instanceof Atom.NameAtom name
          && Unit.overlookingCase(name.text()).filter(MissingUnit::isOwn).isPresent()) {
        findings.add(finding(figure, Optional.of(name), List.of()));
      }
    }
  }

  private static boolean isOwn(Unit unit) {
    return !unit.measures(Unit.Dimension.TIME) && !unit.measures(Unit.Dimension.TEMPERATURE);
  }

  private static Finding finding(
      Atom.QuantityAtom amount, Optional<Atom.NameAtom> misspelt, List<String> units) {
    if (misspelt.isPresent()) {
      Unit unit = Unit.overlookingCase(misspelt.get().text()).orElseThrow();
      return INFO.at(
              misspelt.get().span(),
              "the unit %s is written `%s`",
              Excerpt.of(misspelt.get().text()),
              unit.symbol())
          .because("capitals matter: `m` is a metre and `M` nothing at all")
          .withFix(
              Fix.replace("Write `" + unit.symbol() + "`", misspelt.get().span(), unit.symbol())
                  .beyondDoubt());
    }
    Finding finding = INFO.at(
            amount.numberSpan(), "%s of what unit", Columns.shown(amount.number()))
        .because("percent and grams differ by the weight of the batch");
    for (String unit : units) {
      finding =
          finding.withFix(Fix.insert("Add `" + unit + "`", amount.numberSpan().end(), " " + unit));
    }
    return finding;
  }

  /** A name right behind the figure that is a unit but for its capitals. */
  private static Optional<Atom.NameAtom> misspelt(Line.AmountLine amount) {
    return amount.objects().stream()
        .flatMap(group -> group.atoms().stream())
        .limit(1)
        .flatMap(atom -> atom instanceof Atom.NameAtom name ? Stream.of(name) : Stream.empty())
        .filter(name -> amount.objects().get(0).atoms().size() > 1)
        .filter(name -> Unit.overlookingCase(name.text()).isPresent())
        .findFirst();
  }

  /** The units that an amount may have, likeliest first; that of all other amounts alone, if they agree. */
  private static List<String> units(Section section) {
    int percent = count(section, Unit.Dimension.SHARE);
    int weight = count(section, Unit.Dimension.MASS);
    if (percent == 0 || weight == 0) {
      return percent > weight ? List.of("%") : weight > 0 ? List.of("g") : List.of("%", "g");
    }
    return weight > percent ? List.of("g", "%") : List.of("%", "g");
  }

  private static int count(Section section, Unit.Dimension dimension) {
    int count = 0;
    for (Line line : section.lines()) {
      if (line instanceof Line.AmountLine amount && amount.measure().measures(dimension)) {
        count++;
      }
    }
    return count;
  }
}
