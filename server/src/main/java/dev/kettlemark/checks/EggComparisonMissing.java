package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.labelling.Allergens;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Reports a released variant without the egg of its parent that does not say how the two compare.
 *
 * <p>The note that its fix writes holds what the models tell of both.
 */
public final class EggComparisonMissing implements Rule {

  private static final RuleInfo INFO = RuleInfo.hint(
      "egg-comparison-missing", "a variant without egg does not say how it compares with egg");

  private static final String EGG = "egg";

  private static final Pattern TOLD = Pattern.compile("(?i)\\begg\\b");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return Rules.sound(subject)
        .filter(variant -> variant.facts().says("status", "released"))
        .filter(variant -> variant
            .facts()
            .all("note")
            .flatMap(note -> note.text().stream())
            .noneMatch(text -> TOLD.matcher(text.value()).find()))
        .flatMap(Variant::parent)
        .filter(parent -> isWithoutEggOf(subject, parent.value()))
        .flatMap(parent -> finding(subject, parent))
        .stream()
        .toList();
  }

  private static boolean isWithoutEggOf(Subject subject, String parent) {
    Optional<Allergens> own = subject.label().map(Label::allergens);
    Optional<Allergens> other = subject
        .ask(Lookup.of(Kind.MATERIAL, parent))
        .flatMap(entry -> subject.ask(Labels.label(entry)))
        .map(Label::allergens);
    return own.filter(allergens -> !allergens.holds(EGG) && allergens.silent().isEmpty())
            .isPresent()
        && other.filter(allergens -> allergens.holds(EGG)).isPresent();
  }

  private static Optional<Finding> finding(Subject subject, Located<String> parent) {
    Optional<ComputedFormula> other = subject.ask(Formulas.computed(parent.value()));
    return subject
        .formula()
        .flatMap(own -> other.flatMap(with -> comparison(own, with)))
        .map(figures -> OtherPlace.heading(
            INFO.at(
                    parent.span(),
                    "`%s` is made with egg, and no note says how this compares",
                    parent.value())
                .because("whoever knows the one asks first what is different in the other")
                .withFix(new Fix(
                    "Add a note that compares the two",
                    List.of(new Columns(subject.section())
                        .addFact(
                            Optional.empty(),
                            "note",
                            "\"Beside " + parent.value() + " with egg: " + figures + ".\"")))),
            subject,
            parent.value(),
            "made with egg"));
  }

  /** What the models tell of both; empty where they tell nothing of one. */
  private static Optional<String> comparison(ComputedFormula own, ComputedFormula with) {
    List<String> figures = new ArrayList<>();
    add(figures, "moisture", own, with, mass -> mass.moisture().map(Display::estimate));
    add(figures, "water activity", own, with, mass -> mass.waterActivity().map(Display::activity));
    add(figures, "density", own, with, mass -> mass.density().map(Display::density));
    return figures.isEmpty() ? Optional.empty() : Optional.of(String.join("; ", figures));
  }

  private static void add(
      List<String> figures,
      String name,
      ComputedFormula own,
      ComputedFormula with,
      Function<MassFigures, Outcome<String>> figure) {
    Outcome.both(
            MassFigures.of(own).flatMap(figure),
            MassFigures.of(with).flatMap(figure),
            (here, there) -> name + " " + here + ", there " + there)
        .toOptional()
        .ifPresent(figures::add);
  }
}
