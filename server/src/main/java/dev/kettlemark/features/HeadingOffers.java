package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Vocabulary;
import java.util.List;
import java.util.stream.Stream;

/** What may follow on the line that opens a section or a stage. */
final class HeadingOffers {

  static final List<Vocabulary.Term> READERS = List.of(
      new Vocabulary.Term("chef", "weights and temperatures, no prose"),
      new Vocabulary.Term("home", "in full sentences, with cautions"),
      new Vocabulary.Term("production", "for the line"));

  static final List<Vocabulary.Term> LANGUAGES = List.of(
      new Vocabulary.Term("en-GB", "British English"),
      new Vocabulary.Term("en-US", "American English"),
      new Vocabulary.Term("de-DE", "German"),
      new Vocabulary.Term("fr-FR", "French"));

  private final Snapshot snapshot;
  private final CursorLine cursor;

  HeadingOffers(Snapshot snapshot, CursorLine cursor) {
    this.snapshot = snapshot;
    this.cursor = cursor;
  }

  List<Offer> offers() {
    String last = cursor.last().map(Token::text).orElse("");
    return switch (cursor.head() + " " + last) {
      case "variant of", "trial of" -> new Materials(snapshot).formulas(cursor.name());
      case "sheet of" ->
        Stream.concat(
                new Materials(snapshot).formulas(cursor.name()).stream(),
                named(dev.kettlemark.library.Kind.PRODUCT, Kind.PRODUCT).stream())
            .toList();
      case "trial at" -> named(dev.kettlemark.library.Kind.HOUSE, Kind.HOUSE);
      case "sheet for" -> Offer.words(READERS);
      case "sheet in" -> Offer.words(LANGUAGES);
      case "stage in" -> vessels();
      case "stage stage" -> FormulaNames.ofParent(snapshot, cursor.entry()).stages();
      default -> List.of();
    };
  }

  private List<Offer> named(dev.kettlemark.library.Kind names, Kind kind) {
    return snapshot.library().entries(names).stream()
        .map(Entry::declaration)
        .flatMap(declaration -> declaration.stream())
        .map(declaration ->
            Offer.of(declaration.name().value(), kind, declaration.title().orElse("")))
        .toList();
  }

  private List<Offer> vessels() {
    return StepOffers.house(snapshot, cursor.entry()).stream()
        .flatMap(house -> house.vessels().stream())
        .map(vessel -> Offer.of(vessel.name().value(), Kind.TOOL, vessel.kind()))
        .toList();
  }
}
