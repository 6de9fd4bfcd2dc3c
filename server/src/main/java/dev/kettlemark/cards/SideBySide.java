package dev.kettlemark.cards;

import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.sheets.Pair;
import dev.kettlemark.sheets.SheetFigure;
import dev.kettlemark.sheets.SheetUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Two formulas with the same batch: what stands for what, which figures they share, and what that makes of
 * the question whether one can take the place of the other.
 *
 * @param amounts what is weighed in
 * @param figures what comes of it
 * @param words what their labels say
 */
public record SideBySide(
    Side first, Side second, List<Exchange> amounts, List<Pair> figures, List<LabelWord> words) {

  public SideBySide {
    amounts = List.copyOf(amounts);
    figures = List.copyOf(figures);
    words = List.copyOf(words);
  }

  /** Compares two sides with the batch of the first. */
  public static SideBySide of(Side first, Side second) {
    Side other = second.with(first.batch());
    return new SideBySide(
        first,
        other,
        Exchange.between(first, other),
        pairs(Figures.of(first), Figures.of(other), first, other),
        LabelWord.between(first.label(), other.label()));
  }

  private static List<Pair> pairs(
      Map<String, SheetFigure> here, Map<String, SheetFigure> there, Side first, Side second) {
    Set<String> words = new LinkedHashSet<>(here.keySet());
    words.addAll(there.keySet());
    List<Pair> pairs = new ArrayList<>();
    for (String word : words) {
      SheetFigure one =
          Optional.ofNullable(here.get(word)).orElseGet(() -> missing(first, word, there));
      SheetFigure other =
          Optional.ofNullable(there.get(word)).orElseGet(() -> missing(second, word, here));
      pairs.add(new Pair(word, one, other));
    }
    return pairs;
  }

  /** What the other side alone has a figure of: none where nothing does it, else not known. */
  private static SheetFigure missing(Side side, String word, Map<String, SheetFigure> others) {
    SheetFigure other = others.getOrDefault(word, SheetFigure.exact(word, SheetUnit.NUMBER, 0, 0));
    boolean isAgent = word.equals("whipping-protein") || word.startsWith("as-");
    Outcome<SheetFigure.Reach> reach = isAgent
        ? Outcome.known(SheetFigure.Reach.of(0))
        : Outcome.unknown(Reason.MISSING_FIGURE, "nothing is stated of it");
    return new SheetFigure(
        side.name() + "." + word,
        other.unit(),
        reach,
        other.spread(),
        other.decimals(),
        other.basis());
  }

  /** The pair of a word. */
  public Optional<Pair> figure(String word) {
    return figures.stream().filter(pair -> pair.word().equals(word)).findFirst();
  }

  /** What becomes of each duty if the second takes the place of the first. */
  public List<Judgement> judgements() {
    return new Judging(this).all();
  }

  /** The batch that both are compared at. */
  public Mass batch() {
    return first.batch();
  }
}
