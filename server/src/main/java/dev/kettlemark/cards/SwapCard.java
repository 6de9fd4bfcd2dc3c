package dev.kettlemark.cards;

import dev.kettlemark.cards.Judgement.Status;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.sheets.Block;
import dev.kettlemark.sheets.Block.Column;
import dev.kettlemark.sheets.Block.Row;
import dev.kettlemark.sheets.Difference;
import dev.kettlemark.sheets.Leaf;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What one material in the place of another would move, on half a page. */
public final class SwapCard {

  private final SideBySide both;

  private SwapCard(SideBySide both) {
    this.both = both;
  }

  /**
   * The card in a language; empty where there are no words in it.
   *
   * @param both the formula as it is and as it would be
   */
  public static Optional<Leaf> of(SideBySide both, String old, String fresh, Locale locale) {
    SwapCard card = new SwapCard(both);
    return Leaf.of(
        "answer-swap",
        locale,
        Lookup.today().ask(both.first().snapshot()),
        Phrase.words(
            "answer.title.swap",
            both.first().called(old),
            both.second().called(fresh),
            both.first().called()),
        Phrase.words("answer.kind"),
        List.of(),
        List.of(card.line(), card.numbers(), card.minded(), card.unknown()),
        Leaf.Size.HALF);
  }

  private Leaf.Section line() {
    return section(
        "answer", Block.Lines.of(Phrase.sentence(ComparisonPage.conclusion(both.judgements()))));
  }

  private Leaf.Section numbers() {
    List<Row> rows = new ArrayList<>();
    both.amounts().stream()
        .filter(exchange ->
            exchange.isAnother() || !Told.doses(both, exchange).difference().isNone())
        .forEach(
            exchange -> rows.add(row(Told.material(both, exchange), Told.doses(both, exchange))));
    both.figures().stream()
        .filter(pair -> pair.isKnown() && pair.difference().kind() != Difference.Kind.NONE)
        .forEach(pair -> rows.add(row(Told.name(pair), pair)));
    return section(
        "numbers",
        new Block.Grid(
            Phrase.words("answer.numbers.swap"),
            List.of(
                Column.text("column.figure"),
                Column.figure("column.now"),
                Column.figure("column.then"),
                Column.text("column.difference")),
            rows));
  }

  private static Row row(Phrase name, Pair pair) {
    return Row.of(
        name, ComparisonPage.known(pair.first()), ComparisonPage.known(pair.second()), pair.told());
  }

  private Leaf.Section minded() {
    List<Phrase> points = new ArrayList<>();
    both.words().stream()
        .filter(word -> !word.isSame())
        .forEach(word -> points.add(Told.word(word)));
    Stream.of(both.second())
        .flatMap(side -> side.label().stream())
        .flatMap(label -> label.cautions().stream())
        .filter(need -> !need.isStated())
        .forEach(need -> points.add(new Phrase.Words("caution." + need.caution(), List.of())));
    if (points.isEmpty()) {
      points.add(Phrase.sentence("answer.allergens.alike"));
    }
    return section("minded", new Block.Points(points));
  }

  private Leaf.Section unknown() {
    List<Phrase> points = new ArrayList<>();
    for (Judgement judgement : both.judgements()) {
      if (judgement.status() == Status.UNKNOWN && !judgement.duty().equals("proof")) {
        points.add(Phrase.words(
            "told.unknown",
            Phrase.words("duty." + judgement.duty()),
            new Phrase.Together(judgement.told())));
      }
    }
    points.add(Phrase.sentence("answer.unknown.trial"));
    return section("unknown", new Block.Points(points));
  }

  private static Leaf.Section section(String word, Block... blocks) {
    return new Leaf.Section(word, Phrase.words("answer.part." + word), List.of(blocks));
  }
}
