package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.Answer;
import dev.kettlemark.answers.Change;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.answers.WhiteExchange;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A variant with what the pantry says stands in for what foams: egg for plant, plant for egg.
 *
 * <p>Nothing in the formula itself changes; the variant is written below it.
 */
final class VariantRefactoring {

  private static final String EGG = "egg";

  /** More than these crowd a menu. */
  private static final int MOST = 2;

  private static final String FACT = "  %-10s%s";

  private final RefactoringSite site;
  private final ComputedFormula computed;
  private final Shelf shelf;

  private VariantRefactoring(RefactoringSite site) {
    this.site = site;
    this.computed = site.computed();
    this.shelf = new Shelf(site.snapshot());
  }

  /** For a formula in which exactly one line is of egg white, or of what stands in for it. */
  static List<Refactoring> at(RefactoringSite site) {
    return site.formula().isPresent() ? new VariantRefactoring(site).all() : List.of();
  }

  private List<Refactoring> all() {
    List<Integer> eggs = lines(VariantRefactoring::isEggWhite);
    if (eggs.size() == 1) {
      return shelf.standIns(name(eggs.get(0))).stream()
          .filter(standIn -> standIn
              .material()
              .ingredient()
              .filter(one -> one.facts().says("suits", "vegan"))
              .isPresent())
          .flatMap(standIn -> made(eggs.get(0), standIn, "without").stream())
          .limit(MOST)
          .toList();
    }
    List<Integer> plants = lines(one -> one.hasRole("whipping") && !isEggWhite(one));
    return eggs.isEmpty() && plants.size() == 1
        ? whitesFor(plants.get(0)).stream()
            .flatMap(standIn -> made(plants.get(0), standIn, "with").stream())
            .limit(MOST)
            .toList()
        : List.of();
  }

  private List<Integer> lines(Predicate<Ingredient> what) {
    return IntStream.range(0, computed.amounts().lines().size())
        .boxed()
        .filter(i -> computed
            .material(name(i))
            .flatMap(Material::ingredient)
            .filter(what)
            .isPresent())
        .toList();
  }

  private static boolean isEggWhite(Ingredient ingredient) {
    return Shelf.isEggWhite(ingredient);
  }

  private String name(int index) {
    return site.line(index).ingredient().value();
  }

  /** What the pantry says of a plant, read the other way round. */
  private List<Shelf.StandIn> whitesFor(int index) {
    return Stream.concat(shelf.eggWhites(true).stream(), shelf.eggWhites(false).stream())
        .filter(white ->
            white.ingredient().filter(one -> one.hasTrait("raw-animal")).isEmpty())
        .flatMap(white -> shelf.standIns(white.name()).stream()
            .filter(standIn -> standIn.material().name().equals(name(index)))
            .filter(standIn -> standIn.share().fraction() > 0)
            .map(standIn -> new Shelf.StandIn(
                white,
                Ratio.ofFraction(1 / standIn.share().fraction()),
                standIn.by(),
                standIn.source())))
        .toList();
  }

  private Optional<Refactoring> made(int index, Shelf.StandIn standIn, String how) {
    return WhiteExchange.of(computed, shelf, index, standIn)
        .toOptional()
        .flatMap(answer -> written(index, standIn, how, answer));
  }

  private Optional<Refactoring> written(
      int index, Shelf.StandIn standIn, String how, Answer answer) {
    String fresh = freeName(site.name() + "-" + how + "-" + EGG);
    ComputedFormula tried = Change.tried(computed, answer.changes());
    String text = section(fresh, how, answer, tried);
    int end = site.text().stripTrailing().length();
    String lineBreak = site.lineBreak();
    Rewriting rewriting = site.rewriting(
        List.of(TextEdit.insert(end, lineBreak + lineBreak + text.replace("\n", lineBreak))));
    Snapshot after = site.next(rewriting);
    return Formulas.computed(fresh)
        .ask(after)
        .filter(variant -> isAsTried(variant, tried))
        .map(variant -> Refactoring.of(
            ActionTitle.of(
                "Make a variant " + how + " egg: ",
                answer.values().get(0).shown() + " " + standIn.material().name(),
                " for " + name(index)),
            Refactoring.Kind.EXTRACT,
            site.document().uri(),
            rewriting.edits()));
  }

  private static boolean isAsTried(ComputedFormula variant, ComputedFormula tried) {
    return variant.resolved().missed().isEmpty() && KeptGrams.everyMaterial(tried, variant);
  }

  private String section(String fresh, String how, Answer answer, ComputedFormula tried) {
    List<String> lines = new ArrayList<>();
    String title =
        computed.formula().title().map(t -> " \"" + t + ", " + how + " egg\"").orElse("");
    lines.add("variant " + fresh + title + " of " + site.name());
    lines.add(FACT.formatted("status", "draft"));
    answer.changes().forEach(change -> lines.add(change(change)));
    lines.add(FACT.formatted("note", "\"" + comparison(how, tried) + "\""));
    return String.join("\n", lines);
  }

  private String change(Change change) {
    if (change instanceof Change.Replace replace) {
      return FACT.formatted(
          "replace",
          name(replace.line()) + " by " + replace.figure().shown() + " "
              + replace.material().name() + inStage(replace.line()));
    }
    if (change instanceof Change.Add add) {
      return FACT.formatted(
          "add",
          add.figure().shown() + " " + add.material().name() + " in "
              + computed.formula().stages().get(add.stage()).name().value());
    }
    Change.Weigh weigh = (Change.Weigh) change;
    return FACT.formatted(
        "change", weigh.figure().shown() + " " + name(weigh.line()) + inStage(weigh.line()));
  }

  private String inStage(int index) {
    LineAmount line = site.lineAmount(index);
    return " in " + computed.formula().stages().get(line.stage()).name().value();
  }

  /** What the models tell of both, as whoever knows the one asks first what is different. */
  private String comparison(String how, ComputedFormula tried) {
    List<String> figures = new ArrayList<>();
    add(figures, "moisture", tried, mass -> mass.moisture().map(Display::estimate));
    add(figures, "water activity", tried, mass -> mass.waterActivity().map(Display::activity));
    add(figures, "density", tried, mass -> mass.density().map(Display::density));
    figures.add("foam and bite not compared yet");
    return "Beside " + site.name() + (how.equals("with") ? " without egg: " : " with egg: ")
        + String.join("; ", figures) + ".";
  }

  private void add(
      List<String> figures,
      String name,
      ComputedFormula tried,
      Function<MassFigures, Outcome<String>> figure) {
    Outcome.both(
            MassFigures.of(tried).flatMap(figure),
            MassFigures.of(computed).flatMap(figure),
            (here, there) -> name + " " + here + ", there " + there)
        .ifKnown(figures::add);
  }

  private String freeName(String wanted) {
    return Stream.iterate(1, count -> count + 1)
        .map(count -> count == 1 ? wanted : wanted + "-" + count)
        .filter(name -> site.snapshot().library().find(Kind.MATERIAL, name).isEmpty())
        .findFirst()
        .orElseThrow();
  }
}
