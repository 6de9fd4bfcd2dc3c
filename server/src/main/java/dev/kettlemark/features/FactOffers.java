package dev.kettlemark.features;

import dev.kettlemark.analysis.Measurement;
import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Component;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.syntax.Lexeme;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What may follow a fact word. */
final class FactOffers {

  private final Snapshot snapshot;
  private final CursorLine cursor;
  private final FormulaNames names;

  FactOffers(Snapshot snapshot, CursorLine cursor, FormulaNames names) {
    this.snapshot = snapshot;
    this.cursor = cursor;
    this.names = names;
  }

  List<Offer> offers() {
    if (cursor.isFigure()) {
      return List.of();
    }
    return switch (cursor.head()) {
      case "accept" ->
        cursor.before().size() == 1 ? AcceptOffers.of(snapshot, cursor.entry()) : List.of();
      case "threshold" -> cursor.before().size() == 1 ? thresholds() : List.of();
      case "basis" -> basis();
      case "percent", "use" -> cursor.endsWith("of") ? names.bases() : of();
      case "loss" -> cursor.endsWith("of") ? parts() : of();
      case "contains" -> cursor.endsWith(Lexeme.Kind.UNIT) ? components() : List.of();
      case "make" -> cursor.endsWith("in") ? moulds() : List.of();
      case "replace", "drop" -> change();
      case "withdraw" -> withdraw();
      case "names", "note" ->
        cursor.endsWith("in") ? Offer.words(Vocabulary.of("language")) : List.of();
      case "price" -> price();
      case "lot", "changed" -> listed(names.ingredients());
      case "measured" -> measured();
      case "stands-in-for" -> listed(new Materials(snapshot).weighable(Set.of(), ""));
      default -> listed(Offer.words(Vocabulary.of(cursor.head())));
    };
  }

  /** What was measured stands behind the figure, and the stage behind {@code of}. */
  private List<Offer> measured() {
    if (cursor.endsWith("of")) {
      return names.stages();
    }
    return cursor.endsWith(Lexeme.Kind.UNIT)
        ? Measurement.words().stream()
            .map(word -> Offer.of(word, Kind.WORD, ""))
            .toList()
        : List.of();
  }

  /** In a house the price of what it buys; in an ingredient its own. */
  private List<Offer> price() {
    boolean isOfHouse =
        cursor.entry().declaration().filter(House.class::isInstance).isPresent();
    return isOfHouse && cursor.before().size() == 1
        ? new Materials(snapshot).weighable(Set.of(), "")
        : List.of();
  }

  /** Words that stand right behind the fact word and behind each comma. */
  private List<Offer> listed(List<Offer> offers) {
    return cursor.expectsItem(0) ? offers : List.of();
  }

  private static List<Offer> thresholds() {
    return Threshold.all().stream()
        .map(threshold -> Offer.of(threshold.word(), Kind.WORD, threshold.meaning())
            .withDocumentation(ThresholdText.markdown(threshold)))
        .toList();
  }

  private List<Offer> of() {
    boolean wanted = cursor.head().equals("percent")
        ? cursor.before().size() == 1
        : cursor.endsWith(Lexeme.Kind.UNIT);
    return wanted ? List.of(Offer.of("of", Kind.CONNECTIVE, "a basis: of charge")) : List.of();
  }

  private List<Offer> basis() {
    if (cursor.endsWith("in")) {
      return names.stages();
    }
    boolean member =
        cursor.endsWith("=") || cursor.last().filter(Token::isComma).isPresent();
    return member ? names.ingredients() : List.of();
  }

  private List<Offer> change() {
    if (cursor.endsWith("in")) {
      return names.stages();
    }
    if (cursor.before().size() == 1) {
      return names.ingredients();
    }
    if (cursor.before().size() > 2) {
      return cursor.head().equals("replace") && cursor.endsWith("by")
          ? names.amountsOf(cursor.before().get(1).text())
          : List.of();
    }
    List<Offer> offers = new ArrayList<>();
    if (cursor.head().equals("replace")) {
      offers.add(Offer.of("by", Kind.CONNECTIVE, "what takes its place: by 0.90 % guar-gum"));
    }
    offers.add(Offer.of("in", Kind.CONNECTIVE, "a stage: in foam"));
    return offers;
  }

  private List<Offer> withdraw() {
    return cursor.before().size() == 1
        ? List.of(
            Offer.of("caution", Kind.FACT, "a caution that no longer holds"),
            Offer.of("claim", Kind.FACT, "a claim that no longer holds"))
        : Offer.words(Vocabulary.of(cursor.before().get(1).text()));
  }

  private static List<Offer> parts() {
    return List.of(
        Offer.of("centre", Kind.BASIS, "the centre alone"),
        Offer.of("finished", Kind.BASIS, "the piece with all its parts"));
  }

  private static List<Offer> components() {
    List<Offer> offers = new ArrayList<>();
    Arrays.stream(Component.values())
        .map(component -> Offer.of(component.word(), Kind.WORD, ""))
        .forEach(offers::add);
    offers.add(Offer.of("solids", Kind.WORD, "all but water"));
    return offers;
  }

  private List<Offer> moulds() {
    Optional<House> house = StepOffers.house(snapshot, cursor.entry());
    return house.stream()
        .flatMap(h -> h.moulds().stream())
        .map(mould -> Offer.of(mould.name().value(), Kind.TOOL, mould.pieces() + " pieces"))
        .toList();
  }
}
