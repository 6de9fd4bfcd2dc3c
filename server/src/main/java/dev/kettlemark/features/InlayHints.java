package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Basis;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.scaling.ComputedProduct;
import dev.kettlemark.scaling.Products;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Figures that stand beside what is written without being part of the text.
 *
 * <p>What a line weighs stands behind its name, so that amounts and names stay in their columns.
 */
public final class InlayHints {

  private InlayHints() {}

  /** What a hint adds. */
  public enum Kind {
    /** Grams beside shares, volumes and counts, and for {@code q.s.}. */
    GRAMS,
    /** The share of the charge beside weights. */
    PERCENT,
    /** The other temperature scale. */
    OTHER_SCALE
  }

  /**
   * One hint.
   *
   * @param offset behind which character it stands, absolute
   * @param label what is shown
   * @param tooltip what it means, in plain text
   */
  public record Hint(int offset, String label, Kind kind, String tooltip) {}

  /** The hints of some kinds in a stretch of a document, in order of place. */
  public static List<Hint> of(Snapshot snapshot, Document document, Span range, Set<Kind> kinds) {
    List<Hint> hints = new ArrayList<>();
    for (Entry entry : document.entries()) {
      if (entry.placed().span().meets(range)) {
        WrittenFormula.of(snapshot, entry)
            .ifPresent(formula ->
                formula.ownLines().forEach(line -> amount(formula, line).ifPresent(hints::add)));
        Products.computed(snapshot, entry).ifPresent(product -> parts(entry, product, hints));
        temperatures(entry, hints);
      }
    }
    return hints.stream()
        .filter(hint -> kinds.contains(hint.kind()) && range.touches(hint.offset()))
        .sorted(Comparator.comparingInt(Hint::offset))
        .toList();
  }

  private static Optional<Hint> amount(WrittenFormula formula, LineAmount line) {
    Measure measure = line.line().measure().value();
    int offset = formula.entry().place(line.line().ingredient().span()).span().end();
    if (measure instanceof Measure.Weight) {
      return line.share()
          .toOptional()
          .map(share -> new Hint(
              offset,
              Display.percent(WrittenFormula.ratio(share)),
              Kind.PERCENT,
              "share of the charge"));
    }
    boolean saysShare = measure instanceof Measure.Share share && isOfCharge(formula, share);
    Optional<String> label = saysShare ? formula.weight(line) : formula.shareAndWeight(line);
    return label.map(text -> new Hint(
        offset,
        text,
        Kind.GRAMS,
        saysShare ? "weight in this batch" : "share of the charge, and weight in this batch"));
  }

  private static boolean isOfCharge(WrittenFormula formula, Measure.Share share) {
    return share
        .basis()
        .or(() -> formula.computed().formula().percent().map(Located::value))
        .map(basis -> basis instanceof Basis.Charge)
        .orElse(true);
  }

  private static void parts(Entry entry, ComputedProduct product, List<Hint> hints) {
    for (ComputedProduct.PartWeight part : product.parts()) {
      Span behind =
          part.part().material().map(Located::span).orElse(part.part().measure().span());
      int offset = entry.place(behind).span().end();
      boolean byWeight = part.part().measure().value() instanceof Measure.Weight;
      if (byWeight && product.parts().size() > 1) {
        part.ofFinished()
            .ifKnown(share -> hints.add(new Hint(
                offset, Display.percent(share), Kind.PERCENT, "share of the finished piece")));
      } else if (!byWeight) {
        part.mass()
            .ifKnown(mass ->
                hints.add(new Hint(offset, Display.mass(mass), Kind.GRAMS, "weight on one piece")));
      }
    }
  }

  private static void temperatures(Entry entry, List<Hint> hints) {
    for (Line line : entry.section().lines()) {
      Pointed.temperatures(line)
          .forEach(figure -> figure
              .quantity()
              .flatMap(OtherScale::asWritten)
              .ifPresent(label -> hints.add(new Hint(
                  entry.place(figure.span()).span().end(),
                  label,
                  Kind.OTHER_SCALE,
                  "the other temperature scale"))));
    }
  }
}
