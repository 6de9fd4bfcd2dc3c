package dev.kettlemark.cards;

import dev.kettlemark.cards.Judgement.Status;
import dev.kettlemark.sheets.Difference;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.Phrase;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetFigure.Spread;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Finds for each duty of a formula what the figures say of it. */
final class Judging {

  /**
   * A figure without a band rests on compositions that are typical values; a smaller part of it decides
   * nothing. An own choice, no source.
   */
  private static final double NOTICEABLE = 0.05;

  private final SideBySide both;
  private final List<Judgement> judgements = new ArrayList<>();

  Judging(SideBySide both) {
    this.both = both;
  }

  List<Judgement> all() {
    agents("foam", Function.WHIPPING, "whipping-protein", "as-egg-white");
    agents("gel", Function.GELLING, "as-gelatine");
    doses("body", Function.THICKENING);
    figures("bite", "glass-transition", "moisture");
    figures("sweetness", "sweetness");
    figures("grain", "doctor-share");
    figures("keeping", "water-activity");
    lightness();
    figures("yield", "yield");
    taste();
    allergens();
    claims();
    proof();
    return List.copyOf(judgements);
  }

  /** An equal dose of active matter is no proof of an equal foam or gel of another agent. */
  private void agents(String duty, Function function, String... words) {
    if (has(function)) {
      List<Phrase> told = new ArrayList<>();
      Status status = statusOf(told, words);
      boolean isAnother = isAnother(function);
      if (isAnother) {
        told.add(Phrase.sentence("verdict.other-agent"));
      }
      judgements.add(
          new Judgement(duty, status == Status.KEPT && isAnother ? Status.UNKNOWN : status, told));
    }
  }

  private boolean has(Function function) {
    return of(function).findAny().isPresent();
  }

  private Stream<Exchange> of(Function function) {
    return both.amounts().stream().filter(exchange -> does(exchange, function));
  }

  private boolean does(Exchange exchange, Function function) {
    return exchange.first().flatMap(a -> both.first().ingredient(a.material())).stream()
            .anyMatch(i -> i.hasRole(function.word()))
        || exchange.second().flatMap(a -> both.second().ingredient(a.material())).stream()
            .anyMatch(i -> i.hasRole(function.word()));
  }

  private boolean isAnother(Function function) {
    return of(function)
        .anyMatch(exchange -> exchange.isAnother()
            || exchange.first().isEmpty()
            || exchange.second().isEmpty());
  }

  /** Where no equation tells what an agent does, only the same dose of the same agent is the same. */
  private void doses(String duty, Function function) {
    if (!has(function)) {
      return;
    }
    List<Phrase> told = new ArrayList<>();
    Status status = Status.KEPT;
    for (Exchange exchange : of(function).toList()) {
      if (exchange.isAnother()
          || exchange.first().isEmpty()
          || exchange.second().isEmpty()) {
        status = Status.UNKNOWN;
        told.add(Told.exchange(both, exchange));
      } else {
        boolean isKept = isKept(Told.doses(both, exchange));
        status = isKept || status == Status.UNKNOWN ? status : Status.MOVES;
        told.add(Told.exchange(both, exchange));
      }
    }
    if (status == Status.UNKNOWN) {
      told.add(Phrase.sentence("verdict.no-equation"));
    }
    judgements.add(new Judgement(duty, status, told));
  }

  private void figures(String duty, String... words) {
    List<Phrase> told = new ArrayList<>();
    Status status = statusOf(told, words);
    if (!told.isEmpty()) {
      judgements.add(new Judgement(duty, status, told));
    }
  }

  /** The gravest of what the figures say. */
  private Status statusOf(List<Phrase> told, String... words) {
    Status status = Status.KEPT;
    for (String word : words) {
      for (Pair pair : both.figure(word).stream().toList()) {
        told.add(Told.pair(pair));
        if (isKept(pair)) {
          continue;
        }
        if (pair.difference().isSure()) {
          status = Status.MOVES;
        } else if (status == Status.KEPT) {
          status = Status.UNKNOWN;
        }
      }
    }
    return status;
  }

  private static boolean isKept(Pair pair) {
    Difference difference = pair.difference();
    double least = NOTICEABLE * Math.max(best(pair.first()), best(pair.second()));
    boolean isSmall = pair.first().spread() == Spread.NONE
        && difference.kind() != Difference.Kind.UNKNOWN
        && Math.abs(difference.by()) < least;
    return difference.isNone() || isSmall;
  }

  private static double best(SheetFigure figure) {
    return figure.reach().map(reach -> Math.abs(reach.best())).orElse(0.0);
  }

  /** The usual density of a whipped mass knows nothing of what foams it. */
  private void lightness() {
    List<Phrase> told = new ArrayList<>();
    Status status = statusOf(told, "density");
    boolean isUsual =
        both.first().figures().map(figures -> figures.parcel().isAerated()).orElse(false);
    if (isUsual && isAnother(Function.WHIPPING)) {
      told.add(Phrase.sentence("verdict.usual-density"));
      status = status == Status.KEPT ? Status.UNKNOWN : status;
    }
    judgements.add(new Judgement("lightness", status, told));
  }

  /** No figure tells flavour; it is the same only where the same goes in. */
  private void taste() {
    Set<Phrase> others = new LinkedHashSet<>();
    for (Exchange exchange : both.amounts()) {
      if (exchange.isAnother()) {
        others.add(both.second().called(exchange.second().orElseThrow().material()));
      } else if (exchange.first().isEmpty()) {
        others.add(both.second().called(exchange.second().orElseThrow().material()));
      } else if (exchange.second().isEmpty()) {
        others.add(both.first().called(exchange.first().orElseThrow().material()));
      }
    }
    judgements.add(
        others.isEmpty()
            ? new Judgement("taste", Status.KEPT, List.of(Phrase.sentence("verdict.taste.same")))
            : new Judgement(
                "taste",
                Status.UNKNOWN,
                List.of(Phrase.sentence(
                    "verdict.taste.other", new Phrase.Listing(List.copyOf(others))))));
  }

  private void allergens() {
    List<LabelWord> other = both.words().stream()
        .filter(word -> word.kind() == LabelWord.Kind.ALLERGEN && !word.isSame())
        .toList();
    List<Phrase> told = new ArrayList<>();
    other.forEach(word -> told.add(Told.word(word)));
    boolean isSilent = Stream.of(both.first(), both.second())
        .anyMatch(side ->
            side.label().map(label -> !label.allergens().silent().isEmpty()).orElse(true));
    if (isSilent) {
      told.add(Phrase.sentence("verdict.allergens.silent"));
    }
    Status status = !other.isEmpty() ? Status.MOVES : isSilent ? Status.UNKNOWN : Status.KEPT;
    if (told.isEmpty()) {
      told.add(Phrase.sentence("verdict.allergens.same"));
    }
    judgements.add(new Judgement("allergens", status, told));
  }

  private void claims() {
    List<Phrase> told = new ArrayList<>();
    Status status = Status.KEPT;
    for (LabelWord word : both.words()) {
      if (word.kind() == LabelWord.Kind.CLAIM && !word.isSame()) {
        status = Status.MOVES;
        told.add(Told.word(word));
      }
    }
    if (told.isEmpty()) {
      told.add(Phrase.sentence("verdict.claims.same"));
    }
    judgements.add(new Judgement("claims", status, told));
  }

  /** Nothing that was only computed has been shown to be the same. */
  private void proof() {
    List<Phrase> told = List.of(Told.trials(both.first()), Told.trials(both.second()));
    boolean isTried =
        !both.first().trials().isEmpty() && !both.second().trials().isEmpty();
    judgements.add(new Judgement("proof", isTried ? Status.KEPT : Status.UNKNOWN, told));
  }
}
