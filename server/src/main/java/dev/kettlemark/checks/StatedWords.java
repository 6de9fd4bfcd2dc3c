package dev.kettlemark.checks;

import dev.kettlemark.labelling.ClaimAnswer;
import dev.kettlemark.labelling.ClaimAnswer.Ground;
import dev.kettlemark.labelling.ClaimAnswer.Kind;
import dev.kettlemark.labelling.Label;
import dev.kettlemark.labelling.Market;
import dev.kettlemark.library.Origin;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A word of a fact, such as a claim, with how it is taken back.
 *
 * @param fact the line it stands on
 * @param word where it stands
 */
record StatedWords(Subject subject, Statement fact, Located<String> word) {

  /** More things than this against one claim only repeat each other. */
  private static final int MOST_GROUNDS = 3;

  /** A finding shows no more places than this. */
  private static final int MOST_PLACES = 8;

  /** Every word of a fact that the language knows, each once. */
  static List<StatedWords> of(Subject subject, Label label, String fact) {
    List<StatedWords> all = new ArrayList<>();
    Set<String> open = new HashSet<>(Vocabulary.words(fact));
    for (Statement line : label.facts().all(fact).toList()) {
      for (Located<String> word : line.objectNames()) {
        if (open.remove(word.value())) {
          all.add(new StatedWords(subject, line, word));
        }
      }
    }
    return all;
  }

  /** What speaks against this claim, the same in all markets told once. */
  List<Ground> grounds(Label label, Kind kind) {
    Map<String, Ground> grounds = new LinkedHashMap<>();
    label.claims().stream()
        .filter(answer -> answer.claim().equals(word.value()))
        .flatMap(answer -> answer.of(kind).stream())
        .forEach(ground -> grounds.putIfAbsent(ground.text(), ground));
    return List.copyOf(grounds.values());
  }

  /** {@code in the European Union}, where only some of the markets speak against it. */
  String where(Label label, Kind kind) {
    List<Market> against = label.claims().stream()
        .filter(answer -> answer.claim().equals(word.value()))
        .filter(answer -> !answer.of(kind).isEmpty())
        .map(ClaimAnswer::market)
        .toList();
    return against.size() == label.markets().size()
        ? ""
        : against.stream().map(m -> " in " + m.place()).collect(Collectors.joining(" and"));
  }

  /** The first few grounds as one clause. */
  static String told(List<Ground> grounds) {
    String first =
        grounds.stream().limit(MOST_GROUNDS).map(Ground::text).collect(Collectors.joining("; "));
    int rest = grounds.size() - MOST_GROUNDS;
    return rest > 0 ? first + "; and " + rest + " more" : first;
  }

  /** The finding with the places that the grounds come from. */
  static Finding withPlaces(Finding finding, List<Ground> grounds) {
    Finding result = finding;
    for (Ground ground : grounds.subList(0, Math.min(grounds.size(), MOST_PLACES))) {
      for (Origin place : ground.places()) {
        result = result.withRelated(place, ground.text());
      }
    }
    return result;
  }

  /** Takes the word back; a variant withdraws what it inherits. */
  Optional<Fix> withdraw() {
    String stated = fact.word().value() + " " + word.value();
    if (!subject.isWrittenHere(word.span())) {
      return subject
          .variant()
          .map(variant -> new Fix(
              "Withdraw `" + stated + "`",
              List.of(
                  new Columns(subject.section()).addFact(Optional.empty(), "withdraw", stated))));
    }
    Span span = fact.objectNames().size() == 1 ? wholeLine(fact.span()) : withComma();
    return Optional.of(new Fix("Remove `" + stated + "`", List.of(new TextEdit(span, ""))));
  }

  /** The line with its end, as nothing must be left of it. */
  private Span wholeLine(Span line) {
    return wholeLine(subject.text(), line);
  }

  static Span wholeLine(String text, Span line) {
    int start = text.lastIndexOf('\n', Math.max(0, line.start() - 1)) + 1;
    int next = text.indexOf('\n', line.end());
    return new Span(start, next < 0 ? text.length() : next + 1);
  }

  /** The word with the comma that binds it to its neighbour. */
  private Span withComma() {
    List<Located<String>> words = fact.objectNames();
    int index = words.indexOf(word);
    return index > 0
        ? new Span(words.get(index - 1).span().end(), word.span().end())
        : new Span(word.span().start(), words.get(1).span().start());
  }
}
