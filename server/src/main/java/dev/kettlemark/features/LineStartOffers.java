package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a line may start with. */
final class LineStartOffers {

  private static final Set<SectionWord> WITH_STAGES =
      Set.of(SectionWord.FORMULA, SectionWord.VARIANT);

  private LineStartOffers() {}

  static List<Offer> of(CursorLine cursor) {
    Optional<SectionWord> section = cursor.entry().section().keyword();
    List<Offer> offers = new ArrayList<>();
    if (cursor.atMargin()) {
      offers.addAll(Skeletons.of(section.filter(WITH_STAGES::contains).isPresent()));
    }
    if (cursor.stage().isPresent()) {
      offers.addAll(steps());
    } else {
      section.ifPresent(word -> offers.addAll(facts(cursor, word)));
    }
    return offers;
  }

  private static List<Offer> steps() {
    List<Offer> offers = new ArrayList<>();
    Arrays.stream(Verb.values())
        .map(verb -> Offer.of(verb.word(), Kind.VERB, verb.meaning())
            .withDocumentation(verb.form().written()))
        .forEach(offers::add);
    offers.add(Offer.of("all of", Kind.CONNECTIVE, "take over the whole mass of a stage"));
    offers.add(Offer.of("part", Kind.CONNECTIVE, "take over a part: part 1/2 of foam"));
    offers.add(Offer.of("q.s.", Kind.CONNECTIVE, "as much as fills the formula up"));
    FactWord.STAGE.stream()
        .sorted()
        .map(word -> fact(SectionWord.FORMULA, word))
        .forEach(offers::add);
    return offers;
  }

  /** Facts that the section has already come behind the others. */
  private static List<Offer> facts(CursorLine cursor, SectionWord section) {
    Set<String> written = cursor.entry().section().lines().stream()
        .filter(line -> line instanceof Line.StatementLine && !cursor.line().contains(line.span()))
        .map(line -> ((Line.StatementLine) line).head().text())
        .collect(Collectors.toSet());
    List<String> words = words(section).sorted().toList();
    return Stream.concat(
            words.stream().filter(word -> !written.contains(word)),
            words.stream().filter(written::contains))
        .map(word -> fact(section, word))
        .toList();
  }

  /** A fact with what it takes, as the reference has it. */
  private static Offer fact(SectionWord section, String word) {
    return Signatures.forms(section)
        .filter(form -> form.word().equals(word))
        .findFirst()
        .map(form -> Offer.of(word, Kind.FACT, form.written().replace("`", ""))
            .withDocumentation(Signatures.plain(form.meaning())))
        .orElseGet(() -> Offer.of(word, Kind.FACT, ""));
  }

  /** The fact words of a section, in no order. */
  static Stream<String> words(SectionWord section) {
    return switch (section) {
      case HOUSE -> FactWord.HOUSE.stream();
      case INGREDIENT -> FactWord.INGREDIENT.stream();
      case FORMULA -> FactWord.FORMULA.stream();
      case VARIANT -> Stream.concat(FactWord.VARIANT_CHANGE.stream(), FactWord.FORMULA.stream());
      case PRODUCT -> FactWord.PRODUCT.stream();
      case TRIAL -> FactWord.TRIAL.stream();
      case SHEET -> FactWord.SHEET.stream();
      case STAGE -> Stream.empty();
    };
  }
}
