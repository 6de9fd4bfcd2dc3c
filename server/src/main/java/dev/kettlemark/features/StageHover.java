package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.HouseCorrections;
import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.model.State;
import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Mass;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A stage: its weights, what it holds, and what each step makes of it. */
final class StageHover implements HoverAnswer {

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .named(Symbol.Kind.STAGE)
        .flatMap(name -> pointed
            .formula()
            .flatMap(formula -> formula
                .process()
                .stage(name.symbol().name())
                .map(stage -> pointed.text(
                    text(formula, stage, HouseCorrections.beside(pointed.snapshot(), formula)),
                    name.occurrence().span()))));
  }

  private static Markdown text(
      ComputedFormula formula, StageResult stage, HouseCorrections corrections) {
    Markdown markdown = new Markdown();
    FinishedMass left = new FinishedMass(stage.left(), formula.kitchen());
    String title = stage.stage().title().map(Markdown::plain).orElse(stage.name());
    markdown.paragraph("**" + title + "** — stage " + Markdown.code(stage.name()) + " of "
        + Markdown.code(formula.formula().name().value())
        + stage.stage().vessel().map(v -> ", in " + Markdown.code(v.value())).orElse(""));
    markdown.paragraph(weights(formula, stage, left));
    markdown.paragraph(Constituents.groups(stage.left().composition())
        + left.waterBand()
            .toOptional()
            .filter(band -> !band.isExact())
            .map(band -> " By the boiling model water lies from " + Display.estimate(band.low())
                + " to " + Display.estimate(band.high()) + ".")
            .orElse(""));
    markdown.paragraph(left.figures());
    markdown.paragraph(AgentText.of(stage.left().agents()));
    markdown.paragraph(
        "Temperature when it is done: " + Display.celsius(stage.left().temperature())
            + states(stage.left()).map(states -> ", " + states).orElse("") + ".");
    markdown.table(
        formula.isNominal()
            ? List.of("after", "temperature", "water", "state")
            : List.of("after", "weight", "temperature", "water", "state"),
        stage.steps().stream().map(step -> row(step, formula)).toList());
    markdown.paragraph(String.join(
        "\n",
        new CorrectedStage(stage, formula.kitchen(), corrections, !formula.isNominal()).lines()));
    return markdown;
  }

  private static String weights(ComputedFormula formula, StageResult stage, FinishedMass left) {
    if (formula.isNominal()) {
      return Display.percent(stage.charged().dividedBy(ComputedFormula.NOMINAL_CHARGE))
          + " of the charge is in it.";
    }
    List<String> told = new ArrayList<>();
    Mass charge = formula.process().charge().mass();
    boolean takes = !stage.stage().takes().isEmpty();
    told.add("Weighed in " + Display.mass(stage.weighed())
        + (takes && stage.weighed().grams() > 0 && charge.grams() > 0
            ? " (" + Display.percent(stage.weighed().dividedBy(charge)) + ")"
            : ""));
    if (takes) {
      told.add("taken over " + stage.taken().map(Display::mass).orElse("an unknown weight"));
    }
    told.add(Display.mass(stage.charged()) + " of the charge"
        + (charge.grams() > 0
            ? " (" + Display.percent(stage.charged().dividedBy(charge)) + ")"
            : ""));
    told.add("leaves " + left.weight().orElse("an unknown weight"));
    return String.join(" · ", told) + ".";
  }

  private static List<String> row(StepResult step, ComputedFormula formula) {
    List<String> cells = new ArrayList<>();
    cells.add(step.step().word().value() + objects(step));
    if (!formula.isNominal()) {
      cells.add(weight(step.after()));
    }
    cells.add(step.after().stream()
        .map(StageParcel::temperature)
        .reduce(Band::spanning)
        .map(Display::celsius)
        .orElse(""));
    cells.add(
        step.after().size() == 1
            ? new FinishedMass(step.after().get(0), formula.kitchen()).water().orElse("unknown")
            : "");
    cells.add(step.after().stream()
        .flatMap(parcel -> states(parcel).stream())
        .distinct()
        .collect(Collectors.joining(", ")));
    return cells;
  }

  private static String objects(StepResult step) {
    List<String> names = step.step().objectNames().stream().map(n -> n.value()).toList();
    return names.isEmpty() ? "" : " " + Markdown.some(names, 2);
  }

  private static String weight(List<StageParcel> parcels) {
    Mass sum = Mass.ZERO;
    for (StageParcel parcel : parcels) {
      Optional<Mass> mass = parcel.mass().toOptional();
      if (mass.isEmpty()) {
        return "unknown";
      }
      sum = sum.plus(mass.get());
    }
    return parcels.isEmpty() ? "" : Display.mass(sum);
  }

  private static Optional<String> states(StageParcel parcel) {
    return parcel.states().isEmpty()
        ? Optional.empty()
        : Optional.of(parcel.states().stream()
            .sorted(Comparator.naturalOrder())
            .map(State::word)
            .collect(Collectors.joining(", ")));
  }
}
