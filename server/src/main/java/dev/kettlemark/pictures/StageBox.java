package dev.kettlemark.pictures;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Located;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What stands in the box of a stage: the heaviest of what is weighed in, and what it leaves. */
final class StageBox {

  /** A box that lists more is no longer read at a glance. */
  private static final int MOST_LISTED = 4;

  private final ComputedFormula computed;
  private final int index;
  private final StageResult stage;

  private StageBox(ComputedFormula computed, int index) {
    this.computed = computed;
    this.index = index;
    this.stage = computed.process().stages().get(index);
  }

  static FlowNode of(ComputedFormula computed, int index) {
    return new StageBox(computed, index).node();
  }

  /** What one amount line weighs. */
  static Outcome<Mass> mass(ComputedFormula computed, LineAmount line) {
    double charge = computed
        .amounts()
        .charge()
        .map(grams -> grams.doubleValue())
        .orElse(ComputedFormula.NOMINAL_CHARGE.grams());
    return line.share().map(share -> Mass.ofGrams(charge * share.doubleValue()));
  }

  /** Whether an amount line weighs in what another formula makes, and so has a box of its own. */
  static boolean isMade(ComputedFormula computed, LineAmount line) {
    return computed
        .material(line.line().ingredient().value())
        .flatMap(Material::made)
        .isPresent();
  }

  private FlowNode node() {
    List<String> weighed = weighed();
    List<String> left = left();
    List<BoxLine> lines = new ArrayList<>();
    stage
        .stage()
        .vessel()
        .map(Located::value)
        .ifPresent(name -> lines.add(BoxLine.small("in " + name)));
    if (!weighed.isEmpty()) {
      lines.add(BoxLine.rule());
      weighed.forEach(line -> lines.add(BoxLine.small(line)));
    }
    lines.add(BoxLine.rule());
    left.forEach(line -> lines.add(BoxLine.plain(line)));
    String words = StageNames.titleAndVessel(stage) + ": "
        + (weighed.isEmpty() ? "" : "weighed in " + String.join(", ", weighed) + "; ")
        + String.join(", ", left) + ".";
    return new FlowNode(
        "stage-" + index, FlowNode.Kind.STAGE, StageNames.title(stage), lines, words);
  }

  private List<String> weighed() {
    List<LineAmount> lines = computed.amounts().lines().stream()
        .filter(line -> line.stage() == index && !isMade(computed, line))
        .sorted(Comparator.comparing(
            (LineAmount line) -> mass(computed, line).orElse(Mass.ZERO), Comparator.reverseOrder()))
        .toList();
    int listed = lines.size() == MOST_LISTED + 1 ? lines.size() : MOST_LISTED;
    List<String> shown = new ArrayList<>();
    lines.stream().limit(listed).map(this::words).forEach(shown::add);
    if (lines.size() > listed) {
      shown.add(rest(lines.subList(listed, lines.size())));
    }
    return shown;
  }

  private String words(LineAmount line) {
    return line.line().ingredient().value() + " "
        + mass(computed, line).fold(Display::mass, unknown -> "of unknown weight");
  }

  private String rest(List<LineAmount> lines) {
    Outcome<Mass> all = lines.stream()
        .map(line -> mass(computed, line))
        .reduce(Outcome.known(Mass.ZERO), (one, other) -> Outcome.both(one, other, Mass::plus));
    return "and " + lines.size() + " more, "
        + all.fold(Display::mass, unknown -> "of unknown weight");
  }

  private List<String> left() {
    Outcome<Mass> over = computed
        .process()
        .leftOver()
        .getOrDefault(stage.name(), Outcome.unknown(Reason.MISSING_FIGURE, "nothing is left over"));
    String leaves = "leaves " + StageNames.mass(stage) + " at "
        + Display.celsius(stage.left().temperature());
    return Stream.of(
            Stream.of(leaves),
            Stream.of(stage.evaporated())
                .filter(gone -> gone.grams() > 0)
                .map(gone -> Display.mass(gone) + " gone as vapour"),
            over.toOptional().stream().map(mass -> Display.mass(mass) + " not taken"))
        .flatMap(lines -> lines)
        .toList();
  }
}
