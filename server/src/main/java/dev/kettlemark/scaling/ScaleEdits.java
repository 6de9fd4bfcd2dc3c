package dev.kettlemark.scaling;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.model.Facts;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Product;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** The one line that a scaling changes: {@code batch} of a formula, or {@code make} of a product. */
public final class ScaleEdits {

  private ScaleEdits() {}

  /** Sets the batch line of a formula or variant; adds one where there is none. */
  public static TextEdit batch(Entry entry, Scaling scaling) {
    return set(entry, facts(entry), "batch", Unit.Dimension.MASS, scaling.batchText());
  }

  /** Sets the make line of a product. */
  public static TextEdit make(Entry entry, BigFraction pieces) {
    String text = Display.trimmed(pieces.doubleValue(), 2) + " pieces";
    return set(entry, facts(entry), "make", Unit.Dimension.COUNT, text);
  }

  /** The line that {@link #batch} or {@link #make} leaves, for a reader to see beforehand. */
  public static String changedLine(Document document, TextEdit edit) {
    var after = document.text().source().with(edit);
    String inserted = edit.replacement().stripTrailing();
    int line = after.lineAt(edit.span().start() + inserted.length());
    return after.line(line).of(after.text()).strip();
  }

  private static TextEdit set(
      Entry entry, Facts facts, String word, Unit.Dimension dimension, String figure) {
    Optional<Span> written =
        facts.first(word).flatMap(fact -> fact.objectFigure(dimension)).map(q -> q.span());
    if (written.isPresent()) {
      return new TextEdit(entry.place(written.get()).span(), figure);
    }
    Optional<Span> whole = facts.first(word).map(fact -> fact.span());
    String line = word + " ".repeat(Math.max(1, 10 - word.length())) + figure;
    if (whole.isPresent()) {
      return new TextEdit(entry.place(whole.get()).span(), line);
    }
    String text = entry.section().text();
    int end = anchor(entry, facts).end();
    int next = LineEnds.next(text, end);
    int lineEnd = next < 0 ? text.length() : next;
    boolean hasEnd = next > 0;
    String lineBreak = LineEnds.of(text);
    String inserted = hasEnd ? "  " + line + lineBreak : lineBreak + "  " + line;
    return TextEdit.insert(entry.placed().offset() + lineEnd, inserted);
  }

  /** A new line goes behind the percent line, or else behind the heading. */
  private static Span anchor(Entry entry, Facts facts) {
    return facts
        .first("percent")
        .map(fact -> fact.span())
        .orElseGet(() -> ((Line.SectionLine) entry.section().lines().get(0)).span());
  }

  private static Facts facts(Entry entry) {
    Declaration declaration = entry.declaration().orElseThrow();
    if (declaration instanceof Formula formula) {
      return formula.facts();
    }
    if (declaration instanceof Variant variant) {
      return variant.facts();
    }
    return ((Product) declaration).facts();
  }
}
