package dev.kettlemark.sheets;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.Material;
import dev.kettlemark.answers.AgentPower;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Labels;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.scaling.Scaling;
import dev.kettlemark.scaling.Target;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Shown.Made;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.fraction.BigFraction;

/**
 * How a foam without egg stands beside one with egg: whoever has made the one asks first what is other in the
 * other. A formula with egg in it says nothing here.
 */
final class EggPart implements SheetPart {

  private static final String EGG = "egg";

  @Override
  public Part.Kind kind() {
    return Part.Kind.EGG;
  }

  @Override
  public List<Block> of(Shown shown) {
    if (shown.reader() != SheetReader.HOME) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    for (Made made : shown.made()) {
      if (isFoamWithoutEgg(shown, made)) {
        counterpart(shown, made)
            .ifPresentOrElse(
                egg -> beside(shown, egg, made, blocks), () -> alone(shown, made, blocks));
      }
    }
    return blocks;
  }

  private static boolean isFoamWithoutEgg(Shown shown, Made made) {
    boolean isFoam =
        made.process().stages().stream().anyMatch(stage -> stage.left().isAerated());
    return isFoam
        && entry(shown, made.name())
            .flatMap(found -> label(shown, found))
            .filter(label -> !label.allergens().holds(EGG))
            .isPresent();
  }

  private static Optional<Entry> entry(Shown shown, String name) {
    return shown.snapshot().library().find(Kind.MATERIAL, name);
  }

  private static Optional<Label> label(Shown shown, Entry entry) {
    return Labels.label(shown.snapshot(), entry);
  }

  /** What it is a variant of, or a variant of it, that is made with egg; both at this batch. */
  private static Optional<Made> counterpart(Shown shown, Made made) {
    Stream<Entry> parent = entry(shown, made.name())
        .flatMap(Entry::declaration)
        .flatMap(d -> d instanceof Variant variant ? variant.parent() : Optional.empty())
        .map(Located::value)
        .flatMap(name -> entry(shown, name))
        .stream();
    Stream<Entry> variants = shown.snapshot().library().variantsOf(made.name()).stream();
    return Stream.concat(parent, variants)
        .filter(entry ->
            label(shown, entry).filter(label -> label.allergens().holds(EGG)).isPresent())
        .flatMap(entry -> Formulas.computed(shown.snapshot(), entry).stream())
        .flatMap(formula -> sameBatch(shown, formula, made.scaling().batch()).stream())
        .findFirst();
  }

  private static Optional<Made> sameBatch(Shown shown, ComputedFormula formula, BigFraction batch) {
    return Scaling.of(formula, new Target.Charge(batch))
        .map(scaling -> Made.of(shown.snapshot(), formula, scaling))
        .toOptional();
  }

  private static void beside(Shown shown, Made egg, Made made, List<Block> blocks) {
    List<Row> rows = new ArrayList<>();
    rows.add(Row.of(Phrase.words("egg.foams"), foamers(egg), foamers(made), Phrase.nothing()));
    List<Pair> pairs = FoamPair.of(shown, egg, made);
    pairs.stream()
        .filter(pair -> pair.isKnown() || pair.word().equals(FoamPair.WHIPPING))
        .forEach(pair -> rows.add(row(egg, made, pair)));
    blocks.add(new Block.Grid(
        Phrase.words("egg.caption", made.title(), egg.title()),
        List.of(
            Column.text("column.figure"),
            Column.text("column.with-egg"),
            Column.text("column.this"),
            Column.text("column.difference")),
        rows));
    List<Phrase> points = new ArrayList<>();
    others(egg, made).ifPresent(points::add);
    pairs.stream()
        .filter(pair -> pair.difference().kind() == Difference.Kind.UNKNOWN)
        .forEach(pair -> points.add(Phrase.sentence(
            "egg.unknown.figure", Phrase.words("egg.figure." + pair.word()), why(pair))));
    points.add(Phrase.sentence("egg.unknown.foam"));
    points.add(Phrase.sentence("egg.unknown.density"));
    points.add(Phrase.sentence("egg.trials", trials(shown, egg), trials(shown, made)));
    blocks.add(new Block.Points(points));
  }

  private static Row row(Made egg, Made made, Pair pair) {
    boolean isTime = pair.word().equals(FoamPair.WHIPPING);
    return Row.of(
        Phrase.words("egg.figure." + pair.word()),
        isTime ? time(egg, pair.first()) : known(pair.first()),
        isTime ? time(made, pair.second()) : known(pair.second()),
        pair.told());
  }

  /** What the steps do say of a time stands there even where another of them ends by its look. */
  private static Phrase time(Made made, SheetFigure whole) {
    Phrase look = Phrase.words("egg.by-look");
    return whole.reach().isKnown()
        ? Phrase.value(whole)
        : FoamPair.saidTime(made)
            .map(said -> Phrase.words("egg.and-look", Phrase.value(said), look))
            .orElse(look);
  }

  private static Phrase known(SheetFigure figure) {
    return figure.reach().isKnown() ? Phrase.value(figure) : Phrase.given("–");
  }

  /** What is known by its word to lack is told in the reader's language. */
  private static Phrase why(Pair pair) {
    if (pair.word().equals(FoamPair.WHIPPING)) {
      return Phrase.words("egg.why.look");
    }
    if (pair.word().equals("as-egg-white")) {
      return Phrase.words("egg.why.custom");
    }
    return Stream.of(pair.first(), pair.second())
        .flatMap(figure -> FigureText.why(figure).stream())
        .findFirst()
        .orElseGet(Phrase::nothing);
  }

  private static Phrase trials(Shown shown, Made made) {
    return Phrase.value(SheetFigure.exact(
        made.name() + ".trials",
        SheetUnit.NUMBER,
        (double) SwapsPart.trials(shown, made.name()).size(),
        0));
  }

  /** What whips in it, each with its share of what is weighed in. */
  private static Phrase foamers(Made made) {
    List<Phrase> all = new ArrayList<>();
    AgentPower power = new AgentPower(made.titles().snapshot(), made.formula());
    power
        .all(AgentPower.WHIPPING)
        .forEach((name, share) -> all.add(
            Phrase.together(Names.material(name, made), Phrase.value(dose(made, name, share)))));
    return new Phrase.Listing(all);
  }

  private static SheetFigure dose(Made made, String name, Outcome<BigFraction> share) {
    return SheetFigure.percent(
        made.name() + ".dose." + name, share.map(fraction -> fraction.doubleValue()));
  }

  /** Whatever else is not the same in both. */
  private static Optional<Phrase> others(Made egg, Made made) {
    List<Phrase> gone = missing(egg, made);
    List<Phrase> come = missing(made, egg);
    if (gone.isEmpty() && come.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        gone.isEmpty()
            ? Phrase.sentence("egg.come", new Phrase.Listing(come))
            : come.isEmpty()
                ? Phrase.sentence("egg.gone", new Phrase.Listing(gone))
                : Phrase.sentence(
                    "egg.others", new Phrase.Listing(gone), new Phrase.Listing(come)));
  }

  private static List<Phrase> missing(Made here, Made there) {
    List<String> others = names(there);
    return names(here).stream()
        .filter(name -> !others.contains(name))
        .map(name -> Names.material(name, here))
        .toList();
  }

  private static List<String> names(Made made) {
    return made.formula().formula().amounts().stream()
        .map(line -> line.ingredient().value())
        .distinct()
        .toList();
  }

  /** Without a formula with egg to hold it against, what foams is counted as fresh egg white. */
  private static void alone(Shown shown, Made made, List<Block> blocks) {
    AgentPower power = new AgentPower(shown.snapshot(), made.formula());
    Shelf shelf = new Shelf(shown.snapshot());
    Map<String, Outcome<BigFraction>> agents = power.all(AgentPower.WHIPPING);
    List<Row> rows = new ArrayList<>();
    agents.forEach((name, share) -> made.formula()
        .material(name)
        .flatMap(Material::ingredient)
        .ifPresent(agent -> rows.add(counted(made, shelf, agent, share))));
    List<Phrase> points = new ArrayList<>();
    points.add(Phrase.sentence("egg.alone", made.title()));
    if (rows.isEmpty()) {
      points.add(Phrase.sentence("egg.no-whipping"));
    } else {
      blocks.add(new Block.Grid(
          Phrase.words("egg.alone.caption", Phrase.value(YieldPart.charge(made))),
          List.of(
              Column.text("egg.foams"),
              Column.figure("column.weight"),
              Column.figure("column.by-protein"),
              Column.figure("column.by-custom")),
          rows));
      points.add(Phrase.sentence("egg.unknown.protein"));
    }
    points.add(Phrase.sentence("egg.unknown.foam"));
    points.add(Phrase.sentence("egg.unknown.trial"));
    blocks.add(new Block.Points(points));
  }

  private static Row counted(Made made, Shelf shelf, Ingredient agent, Outcome<BigFraction> share) {
    String name = agent.name().value();
    String id = made.name() + ".egg." + name;
    Outcome<Double> grams =
        share.map(part -> part.multiply(made.scaling().batch()).doubleValue());
    EggCount count = new EggCount(shelf, agent);
    return Row.of(
        Names.material(name, made),
        known(weight(id, grams)),
        known(
            weight(id + ".by-protein", Outcome.both(grams, count.byProtein(), (g, by) -> g * by))),
        known(weight(id + ".by-custom", Outcome.both(grams, count.byCustom(), (g, by) -> g * by))));
  }

  private static SheetFigure weight(String id, Outcome<Double> grams) {
    return new SheetFigure(
        id,
        SheetUnit.GRAM,
        grams.map(SheetFigure.Reach::of),
        SheetFigure.Spread.NONE,
        grams.map(g -> g < 100 ? 1 : 0).orElse(0),
        SheetFigure.Basis.PRACTICE);
  }
}
