package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Verb;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.SectionWord;
import java.util.List;
import java.util.Optional;

/**
 * What may be written at a place.
 *
 * <p>Only the words before the cursor on its line decide, and what the section declares on its other
 * lines; so errors elsewhere do no harm. The likeliest comes first. Nothing is left out for the
 * letters typed so far: editors do that while they are typed.
 */
public final class Completion {

  private Completion() {}

  /** The proposals at an offset, best first; none in comments and in quotes. */
  public static List<Proposal> at(Snapshot snapshot, Document document, int offset) {
    return CursorLine.at(document, offset)
        .map(cursor -> NameColumn.of(document, cursor)
            .padded(Offer.placed(offers(snapshot, cursor), cursor.word())))
        .orElse(List.of());
  }

  private static List<Offer> offers(Snapshot snapshot, CursorLine cursor) {
    if (cursor.before().isEmpty()) {
      return cursor.isFigure() ? List.of() : LineStartOffers.of(cursor);
    }
    if (cursor.first().filter(token -> token.is(Lexeme.Kind.SECTION_WORD)).isPresent()) {
      return new HeadingOffers(snapshot, cursor).offers();
    }
    FormulaNames names = names(snapshot, cursor);
    if (cursor.head().equals("all") || cursor.head().equals("part")) {
      return cursor.endsWith("of") ? names.stagesToTake(cursor.stage()) : takeWords(cursor);
    }
    Optional<List<Offer>> amounts = new AmountOffers(snapshot, cursor, names).offers();
    if (amounts.isPresent()) {
      return amounts.get();
    }
    boolean isStep = cursor.stage().isPresent() && Verb.of(cursor.head()).isPresent();
    return isStep
        ? new StepOffers(snapshot, cursor, names).offers()
        : new FactOffers(snapshot, cursor, names).offers();
  }

  /** A variant's changes speak of what its parent has; all else of what the section itself has. */
  private static FormulaNames names(Snapshot snapshot, CursorLine cursor) {
    boolean change = cursor.isIn(SectionWord.VARIANT)
        && cursor.stage().isEmpty()
        && FactWord.VARIANT_CHANGE.contains(cursor.head());
    if (!change) {
      return FormulaNames.of(snapshot, cursor.entry());
    }
    return cursor.endsWith("of")
        ? FormulaNames.of(snapshot, cursor.entry())
        : FormulaNames.ofParent(snapshot, cursor.entry());
  }

  private static List<Offer> takeWords(CursorLine cursor) {
    boolean ready = cursor.head().equals("all")
        ? cursor.before().size() == 1
        : cursor.endsWith(Lexeme.Kind.NUMBER) || cursor.endsWith(Lexeme.Kind.UNIT);
    return ready
        ? List.of(Offer.of("of", Proposal.Kind.CONNECTIVE, "a stage: of foam"))
        : List.of();
  }
}
