package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.ClauseWords;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.SectionWord;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What may follow a figure that says how much of something. */
final class AmountOffers {

  private static final Set<String> CHANGES = Set.of("add", "change");

  private final Snapshot snapshot;
  private final CursorLine cursor;
  private final FormulaNames names;

  AmountOffers(Snapshot snapshot, CursorLine cursor, FormulaNames names) {
    this.snapshot = snapshot;
    this.cursor = cursor;
    this.names = names;
  }

  /** Empty where the line has no amount before the cursor. */
  Optional<List<Offer>> offers() {
    return amountStart().map(this::behindAmount);
  }

  /** Index of the figure, on the amount lines of all sections. */
  private Optional<Integer> amountStart() {
    List<Token> before = cursor.before();
    int start = 0;
    if (cursor.isIn(SectionWord.VARIANT) && cursor.stage().isEmpty()) {
      start = CHANGES.contains(cursor.head()) ? 1 : cursor.head().equals("replace") ? 3 : 0;
    } else if (cursor.isIn(SectionWord.PRODUCT)
        && (FactWord.PRODUCT_PART.contains(cursor.head()) || cursor.head().equals("spare"))) {
      start = 1;
    }
    boolean amount = before.size() > start
        && (before.get(start).is(Lexeme.Kind.NUMBER) || before.get(start).reads("q.s."));
    return amount ? Optional.of(start) : Optional.empty();
  }

  private List<Offer> behindAmount(int start) {
    List<Token> before = cursor.before();
    if (cursor.isFigure()) {
      return List.of();
    }
    if (before.size() == start + 1 && cursor.endsWith(Lexeme.Kind.NUMBER)) {
      return UnitOffers.ofAmounts();
    }
    if (cursor.endsWith("of")) {
      return cursor.isIn(SectionWord.PRODUCT) ? productBases() : names.bases();
    }
    if (cursor.endsWith("in")) {
      return names.stages();
    }
    int named = behindMeasure(start);
    if (named >= before.size()) {
      return materials();
    }
    return List.of(
        Offer.of("at", Kind.CONNECTIVE, ClauseWords.meaning(Connective.AT)),
        Offer.of("in", Kind.CONNECTIVE, "a stage: in foam"));
  }

  /** Index behind figure, unit, tolerance and basis. */
  private int behindMeasure(int start) {
    List<Token> before = cursor.before();
    int i = RowCutter.behindFigure(before, start);
    return RowCutter.behindBasis(before, Math.max(i, start + 1));
  }

  private List<Offer> materials() {
    Materials materials = new Materials(snapshot);
    if (cursor.isIn(SectionWord.PRODUCT)) {
      return cursor.head().equals("centre") || cursor.head().equals("filling")
          ? materials.fitting(Materials::isFormula)
          : materials.fitting(
              material -> material instanceof Ingredient ingredient && ingredient.hasRole(role()));
    }
    if (cursor.head().equals("change")) {
      return names.ingredients();
    }
    return materials.weighable(names.weighed(cursor.stage()), cursor.name());
  }

  private String role() {
    return cursor.head().equals("wafer") ? "wafer" : "coating";
  }

  private static List<Offer> productBases() {
    return List.of(
        Offer.of("finished", Kind.BASIS, "the piece with all its parts"),
        Offer.of("centre", Kind.BASIS, "the centre alone"));
  }
}
