package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Variant;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The settings of formulas and variants in the order in which the language reference lists them.
 *
 * <p>Comments go with the line below them; lines of one word keep their order, and so do the changes of
 * a variant, since they apply in the order written.
 */
final class SettingsRefactoring {

  private static final List<String> ORDER = List.of(
      "code",
      "version",
      "status",
      "percent",
      "batch",
      "basis",
      "texture",
      "expect",
      "claim",
      "caution",
      "accept",
      "makes",
      "replace",
      "drop",
      "add",
      "change",
      "withdraw",
      "note");

  /** The changes of a variant are one group, with the bases that they speak of. */
  private static final List<String> CHANGES =
      List.of("replace", "drop", "add", "change", "withdraw", "basis");

  private SettingsRefactoring() {}

  /** For the whole document; empty where all is in order. */
  static Optional<Refactoring> of(Document document) {
    if (document.builtIn()) {
      return Optional.empty();
    }
    List<TextEdit> edits = document.entries().stream()
        .filter(entry -> entry
            .declaration()
            .filter(d -> d instanceof Formula || d instanceof Variant)
            .isPresent())
        .flatMap(entry -> sorted(entry).stream())
        .toList();
    List<TextEdit> laidOut =
        edits.isEmpty() ? List.of() : Rewriting.of(document, edits).edits();
    return laidOut.isEmpty()
        ? Optional.empty()
        : Optional.of(Refactoring.of(
            "Put settings in order", Refactoring.Kind.ORGANIZE, document.uri(), laidOut));
  }

  /**
   * A setting with the comments above it.
   *
   * @param text whole lines
   */
  private record Block(int rank, String text) {}

  private static Optional<TextEdit> sorted(Entry entry) {
    String text = entry.section().text();
    List<Line> lines = entry.section().lines();
    int count =
        (int) lines.stream().skip(1).takeWhile(line -> !opensStage(line)).count();
    List<Block> blocks = new ArrayList<>();
    int start = LineEnds.next(text, 0);
    int from = start;
    int offset = start;
    for (Line line : lines.subList(1, 1 + count)) {
      int next = offset < 0 ? -1 : LineEnds.next(text, offset);
      if (next < 0 || isBroken(entry, new Span(offset, next))) {
        // The last line has no end, or what it says is not known; both are left where they are.
        break;
      }
      Optional<String> word = word(line);
      if (word.isPresent()) {
        if (!ORDER.contains(word.get())) {
          break;
        }
        blocks.add(new Block(rank(entry, word.get()), text.substring(from, next)));
        from = next;
      } else if (text.substring(offset, next).isBlank()) {
        break;
      }
      offset = next;
    }
    List<Block> sorted =
        blocks.stream().sorted(Comparator.comparingInt(Block::rank)).toList();
    return sorted.equals(blocks)
        ? Optional.empty()
        : Optional.of(new TextEdit(
            entry.place(new Span(start, from)).span(),
            String.join("", sorted.stream().map(Block::text).toList())));
  }

  private static boolean isBroken(Entry entry, Span line) {
    return Stream.concat(
            entry.section().problems().stream().map(problem -> problem.span()),
            entry.reading().problems().stream().map(problem -> problem.span()))
        .anyMatch(span -> line.start() <= span.start() && span.start() < line.end());
  }

  private static int rank(Entry entry, String word) {
    boolean isVariant = entry.declaration().filter(Variant.class::isInstance).isPresent();
    return ORDER.indexOf(isVariant && CHANGES.contains(word) ? CHANGES.get(0) : word);
  }

  private static boolean opensStage(Line line) {
    return line instanceof Line.SectionLine heading && heading.keyword() == SectionWord.STAGE;
  }

  private static Optional<String> word(Line line) {
    if (line instanceof Line.StatementLine statement) {
      return Optional.of(statement.head().text());
    }
    return line instanceof Line.DefinitionLine definition
        ? Optional.of(definition.head().text())
        : line instanceof Line.EmptyLine ? Optional.empty() : Optional.of("");
  }
}
