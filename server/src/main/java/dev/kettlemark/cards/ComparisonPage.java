package dev.kettlemark.cards;

import dev.kettlemark.analysis.MassFigures;
import dev.kettlemark.cards.Exchange.Amount;
import dev.kettlemark.cards.Judgement.Status;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Block;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Reach;
import dev.kettlemark.sheets.SheetUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Lays a comparison out as a page. */
public final class ComparisonPage {

  private static final List<Function> AGENTS = List.of(
      Function.WHIPPING,
      Function.GELLING,
      Function.THICKENING,
      Function.EMULSIFIER,
      Function.ACIDULANT);

  private final SideBySide both;

  private ComparisonPage(SideBySide both) {
    this.both = both;
  }

  /** The page in a language; empty where there are no words in it. */
  public static Optional<Leaf> of(SideBySide both, Locale locale) {
    ComparisonPage page = new ComparisonPage(both);
    LabelSections labels = new LabelSections(both.words(), page.silent());
    return Leaf.of(
        both.first().name() + "-and-" + both.second().name(),
        locale,
        Lookup.today().ask(both.second().snapshot()),
        Phrase.words("compare.title", both.first().called(), both.second().called()),
        Phrase.words("compare.kind"),
        page.marks(),
        List.of(
            page.verdict(),
            page.amounts(),
            page.bases(),
            page.figures(),
            labels.section(LabelWord.Kind.ALLERGEN, "allergens"),
            labels.section(LabelWord.Kind.CLAIM, "claims"),
            labels.section(LabelWord.Kind.CAUTION, "cautions-compared"),
            page.trials()),
        Leaf.Size.PAGE);
  }

  private List<Phrase> marks() {
    return List.of(
        mark("compare.first", both.first()),
        mark("compare.second", both.second()),
        Phrase.words("compare.batch", Phrase.value(grams("batch", both.batch().grams()))));
  }

  private static Phrase mark(String key, Side side) {
    return Phrase.words(
        key,
        side.called(),
        side.version()
            .<Phrase>map(version -> Phrase.words("head.version", Phrase.given(version)))
            .orElseGet(Phrase::nothing));
  }

  private Leaf.Section verdict() {
    List<Judgement> judgements = both.judgements();
    List<Row> rows = judgements.stream()
        .map(judgement -> Row.of(
            Phrase.words("duty." + judgement.duty()),
            new Phrase.Marked(Phrase.words(judgement.status().key())),
            new Phrase.Together(judgement.told())))
        .toList();
    return new Leaf.Section(
        "verdict",
        Phrase.words("compare.verdict"),
        List.of(
            Block.Lines.of(Phrase.sentence(conclusion(judgements)), Phrase.sentence("verdict.how")),
            new Block.Grid(
                Phrase.words("verdict.caption"),
                List.of(
                    Column.text("column.duty"),
                    Column.text("column.verdict"),
                    Column.text("column.told")),
                rows)));
  }

  /** Counted, not chosen. */
  static Phrase conclusion(List<Judgement> judgements) {
    Phrase all = count("all", judgements.size());
    Phrase kept = count("kept", of(judgements, Status.KEPT));
    Phrase moves = count("moves", of(judgements, Status.MOVES));
    Phrase unknown = count("unknown", of(judgements, Status.UNKNOWN));
    String key = of(judgements, Status.MOVES) > 0
        ? "verdict.other"
        : of(judgements, Status.UNKNOWN) > 0 ? "verdict.open" : "verdict.same";
    return Phrase.words(key, all, kept, moves, unknown);
  }

  private static int of(List<Judgement> judgements, Status status) {
    return (int) judgements.stream().filter(j -> j.status() == status).count();
  }

  private static Phrase count(String id, int count) {
    return Phrase.value(SheetFigure.exact("verdict." + id, SheetUnit.NUMBER, count, 0));
  }

  private Leaf.Section amounts() {
    List<Row> rows = new ArrayList<>();
    for (Exchange exchange : both.amounts()) {
      Pair doses = Told.doses(both, exchange);
      rows.add(Row.of(
          Told.material(both, exchange),
          exchange
              .function()
              .<Phrase>map(function -> Phrase.words("function." + function.word()))
              .orElseGet(Phrase::nothing),
          dose(exchange.first(), doses.first()),
          weight(both.first(), exchange.first()),
          dose(exchange.second(), doses.second()),
          weight(both.second(), exchange.second()),
          doses.told()));
    }
    return new Leaf.Section(
        "amounts",
        Phrase.words("compare.amounts"),
        List.of(new Block.Grid(
            Phrase.words("compare.amounts.caption"),
            List.of(
                Column.text("column.ingredient"),
                Column.text("column.does"),
                Column.figure("column.first.percent"),
                Column.figure("column.first.weight"),
                Column.figure("column.second.percent"),
                Column.figure("column.second.weight"),
                Column.text("column.difference")),
            rows)));
  }

  private static Phrase dose(Optional<Amount> amount, SheetFigure figure) {
    return amount.isEmpty() ? Phrase.given("–") : Phrase.value(figure);
  }

  private Phrase weight(Side side, Optional<Amount> amount) {
    return amount
        .<Phrase>map(a -> Phrase.value(new SheetFigure(
            side.name() + "." + a.material() + ".weight",
            SheetUnit.GRAM,
            a.share().map(share -> Reach.of(share.doubleValue() * both.batch().grams())),
            SheetFigure.Spread.NONE,
            a.share()
                .map(s -> s.doubleValue() * both.batch().grams() < 100 ? 2 : 1)
                .orElse(1),
            SheetFigure.Basis.EXACT)))
        .orElseGet(() -> Phrase.given("–"));
  }

  /** What is dosed on little is told on every basis that either formula speaks of. */
  private Leaf.Section bases() {
    List<Row> rows = new ArrayList<>();
    for (Exchange exchange : both.amounts()) {
      if (exchange.function().filter(AGENTS::contains).isPresent()) {
        rows.add(Row.group(Told.material(both, exchange)));
        for (Dose.Of of : Dose.bases(both)) {
          Pair pair = new Pair(
              "dose",
              Dose.of(both.first(), exchange.first(), of),
              Dose.of(both.second(), exchange.second(), of));
          rows.add(Row.of(
              of.phrase(),
              value(exchange.first(), pair.first()),
              value(exchange.second(), pair.second()),
              pair.told()));
        }
      }
    }
    return rows.isEmpty()
        ? new Leaf.Section("bases", Phrase.nothing(), List.of())
        : new Leaf.Section(
            "bases",
            Phrase.words("compare.bases"),
            List.of(new Block.Grid(
                Phrase.words("compare.bases.caption"),
                List.of(
                    Column.text("column.basis"),
                    Column.figure("column.first"),
                    Column.figure("column.second"),
                    Column.text("column.difference")),
                rows)));
  }

  private static Phrase value(Optional<Amount> amount, SheetFigure figure) {
    return amount.isEmpty() || !figure.reach().isKnown() ? Phrase.given("–") : Phrase.value(figure);
  }

  private Leaf.Section figures() {
    List<Row> rows = new ArrayList<>();
    for (Pair pair : both.figures()) {
      if (pair.isKnown()) {
        rows.add(row(pair));
      }
      if (pair.word().equals("glass-transition")) {
        rows.add(Row.of(
            Phrase.words("compare.figure.texture"),
            texture(both.first()),
            texture(both.second()),
            Phrase.nothing()));
      }
    }
    List<Phrase> unknown = unknown(both.figures());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Grid(
        Phrase.words("compare.figures.caption"),
        List.of(
            Column.text("column.figure"),
            Column.figure("column.first"),
            Column.figure("column.second"),
            Column.text("column.difference")),
        rows));
    if (!unknown.isEmpty()) {
      blocks.add(new Block.Points(unknown));
    }
    return new Leaf.Section("figures", Phrase.words("compare.figures"), blocks);
  }

  /** Each pair of which anything is known. */
  static List<Row> rows(List<Pair> pairs) {
    return pairs.stream().filter(Pair::isKnown).map(ComparisonPage::row).toList();
  }

  private static Row row(Pair pair) {
    return Row.of(Told.name(pair), known(pair.first()), known(pair.second()), pair.told());
  }

  /** Why figures are unknown, each reason once. */
  static List<Phrase> unknown(List<Pair> pairs) {
    Map<String, Phrase> reasons = new LinkedHashMap<>();
    for (Pair pair : pairs) {
      for (SheetFigure figure : List.of(pair.first(), pair.second())) {
        if (figure.reach() instanceof Outcome.Unknown<Reach> why) {
          reasons.putIfAbsent(
              pair.word() + " " + why.because(),
              Phrase.words("told.unknown", Told.name(pair), Phrase.value(figure)));
        }
      }
    }
    return List.copyOf(reasons.values());
  }

  /** A reason is too long for a table; it stands below. */
  static Phrase known(SheetFigure figure) {
    return figure.reach().isKnown() ? Phrase.value(figure) : Phrase.words("figure.unknown");
  }

  private static Phrase texture(Side side) {
    return side.figures()
        .flatMap(MassFigures::texture)
        .fold(
            band -> new Phrase.Listing(
                band.isExact()
                    ? List.of(Phrase.words("bite." + band.low().word()))
                    : List.of(
                        Phrase.words("bite." + band.low().word()),
                        Phrase.words("bite." + band.high().word()))),
            unknown -> Phrase.told(unknown.why()));
  }

  private List<Phrase> silent() {
    return List.of(both.first(), both.second()).stream()
        .flatMap(side -> side.label().stream()
            .flatMap(label -> label.allergens().silent().stream())
            .map(use -> side.called(use.name())))
        .distinct()
        .toList();
  }

  private Leaf.Section trials() {
    return new Leaf.Section(
        "trials",
        Phrase.words("compare.trials"),
        List.of(Block.Lines.of(Told.trials(both.first()), Told.trials(both.second()))));
  }

  private static SheetFigure grams(String id, double grams) {
    return SheetFigure.exact(id, SheetUnit.GRAM, grams, 0);
  }
}
