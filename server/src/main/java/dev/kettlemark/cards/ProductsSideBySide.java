package dev.kettlemark.cards;

import dev.kettlemark.cards.ProductSide.PartFigures;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.SheetFigure;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Two products, piece beside piece.
 *
 * @param figures what a piece is
 * @param parts what it is put together of
 * @param words what their labels say
 */
public record ProductsSideBySide(
    ProductSide first,
    ProductSide second,
    List<Pair> figures,
    List<PartPair> parts,
    List<LabelWord> words) {

  /**
   * A part of one piece beside that of the same duty in the other.
   *
   * @param role {@code centre}, {@code layer}, {@code coat}, {@code filling} or {@code wafer}
   * @param first of what it is; empty where that piece has no such part
   */
  public record PartPair(
      String role, Optional<String> first, Optional<String> second, List<Pair> figures) {

    public PartPair {
      figures = List.copyOf(figures);
    }

    /** Whether both pieces have it. */
    public boolean isPaired() {
      return first.isPresent() && second.isPresent();
    }
  }

  public ProductsSideBySide {
    figures = List.copyOf(figures);
    parts = List.copyOf(parts);
    words = List.copyOf(words);
  }

  public static ProductsSideBySide of(ProductSide first, ProductSide second) {
    return new ProductsSideBySide(
        first,
        second,
        pairs(first.figures(), second.figures()),
        parts(first, second),
        LabelWord.between(first.label(), second.label()));
  }

  /** The figure of a word. */
  public Optional<Pair> figure(String word) {
    return figures.stream().filter(pair -> pair.word().equals(word)).findFirst();
  }

  /** The parts of a role beside each other in order; what is over stands alone. */
  private static List<PartPair> parts(ProductSide first, ProductSide second) {
    List<PartPair> pairs = new ArrayList<>();
    List<PartFigures> left = new ArrayList<>(second.parts());
    for (PartFigures part : first.parts()) {
      Optional<PartFigures> other =
          left.stream().filter(one -> one.role().equals(part.role())).findFirst();
      other.ifPresent(left::remove);
      pairs.add(pair(part.role(), Optional.of(part), other));
    }
    left.forEach(part -> pairs.add(pair(part.role(), Optional.empty(), Optional.of(part))));
    return pairs;
  }

  private static PartPair pair(
      String role, Optional<PartFigures> one, Optional<PartFigures> other) {
    return new PartPair(
        role,
        one.map(PartFigures::material),
        other.map(PartFigures::material),
        pairs(
            one.map(PartFigures::figures).orElse(Map.of()),
            other.map(PartFigures::figures).orElse(Map.of())));
  }

  private static List<Pair> pairs(Map<String, SheetFigure> here, Map<String, SheetFigure> there) {
    Set<String> words = new LinkedHashSet<>(here.keySet());
    words.addAll(there.keySet());
    List<Pair> pairs = new ArrayList<>();
    for (String word : words) {
      Optional<SheetFigure> one = Optional.ofNullable(here.get(word));
      Optional<SheetFigure> other = Optional.ofNullable(there.get(word));
      SheetFigure known = one.or(() -> other).orElseThrow();
      pairs.add(
          new Pair(word, one.orElseGet(() -> none(known)), other.orElseGet(() -> none(known))));
    }
    return pairs;
  }

  private static SheetFigure none(SheetFigure other) {
    return new SheetFigure(
        other.id() + ".none",
        other.unit(),
        Outcome.unknown(Reason.MISSING_FIGURE, "nothing is stated of it"),
        other.spread(),
        other.decimals(),
        other.basis());
  }
}
