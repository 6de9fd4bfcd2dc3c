package dev.kettlemark.cards;

import dev.kettlemark.model.Trial;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetUnit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is said of pairs, exchanges and differences. */
final class Told {

  private Told() {}

  /** {@code Water: 11.6 %, then 12.1 %: no difference within the bands}. */
  static Phrase pair(Pair pair) {
    return Phrase.sentence(
        "told.pair",
        name(pair),
        Phrase.value(pair.first()),
        Phrase.value(pair.second()),
        pair.told());
  }

  static Phrase name(Pair pair) {
    return Phrase.words("compare.figure." + pair.word());
  }

  /** The shares of the charge of an exchange, of nothing where one side has none. */
  static Pair doses(SideBySide both, Exchange exchange) {
    String word = "dose."
        + exchange.first().or(exchange::second).map(Exchange.Amount::material).orElse("");
    return new Pair(
        word,
        dose(both.first(), exchange.first(), word),
        dose(both.second(), exchange.second(), word));
  }

  private static SheetFigure dose(Side side, Optional<Exchange.Amount> amount, String word) {
    return SheetFigure.percent(
        side.name() + "." + word,
        amount
            .map(a -> a.share().map(share -> share.doubleValue()))
            .orElseGet(() -> Outcome.known(0.0)));
  }

  static Phrase exchange(SideBySide both, Exchange exchange) {
    Pair doses = doses(both, exchange);
    return Phrase.sentence(
        "told.pair",
        material(both, exchange),
        Phrase.value(doses.first()),
        Phrase.value(doses.second()),
        doses.told());
  }

  /** The material, or what stands for it in the second. */
  static Phrase material(SideBySide both, Exchange exchange) {
    Optional<Phrase> one = exchange.first().map(a -> both.first().called(a.material()));
    Optional<Phrase> other = exchange.second().map(a -> both.second().called(a.material()));
    return exchange.isAnother()
        ? Phrase.words("compare.for", one.orElseThrow(), other.orElseThrow())
        : one.or(() -> other).orElseGet(Phrase::nothing);
  }

  static Phrase word(LabelWord word) {
    return Phrase.sentence(
        "told.word", name(word), Phrase.words(word.first()), Phrase.words(word.second()));
  }

  static Phrase name(LabelWord word) {
    return switch (word.kind()) {
      case ALLERGEN -> Phrase.words("allergen." + word.word());
      case CLAIM -> Phrase.words("claim." + word.word());
      case CAUTION -> Phrase.words("caution.name." + word.word());
    };
  }

  /** How often it was really made. */
  static Phrase trials(Side side) {
    List<Trial> trials = side.trials();
    Phrase name = side.called();
    Optional<LocalDate> last =
        trials.stream().flatMap(trial -> trial.day().stream()).max(Comparator.naturalOrder());
    return trials.isEmpty()
        ? Phrase.sentence("evidence.none", name)
        : Phrase.sentence(
            "evidence.made.production",
            name,
            Phrase.value(
                SheetFigure.exact(side.name() + ".trials", SheetUnit.NUMBER, trials.size(), 0)),
            last.<Phrase>map(Phrase.Day::new).orElseGet(() -> Phrase.given("–")));
  }
}
