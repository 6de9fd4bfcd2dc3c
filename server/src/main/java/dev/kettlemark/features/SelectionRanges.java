package dev.kettlemark.features;

import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Group;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What a selection grows to: word, list item, clause, line, stage, section, text. */
public final class SelectionRanges {

  private SelectionRanges() {}

  /** The stretches that hold an offset, the innermost first, each larger than the one before. */
  public static List<Span> at(ParsedText text, int offset) {
    ParsedText.PlacedSection placed = text.sectionAt(offset);
    List<Span> candidates = new ArrayList<>();
    placed.section().lexemes().forEach(lexeme -> candidates.add(lexeme.span()));
    for (Line line : placed.section().lines()) {
      addParts(line, candidates);
    }
    candidates.replaceAll(span -> span.shiftedBy(placed.offset()));
    for (Block block : Block.of(text, placed)) {
      candidates.add(block.span());
      block.parts().forEach(part -> candidates.add(part.span()));
    }
    List<Span> ranges = new ArrayList<>();
    candidates.stream()
        .filter(span -> span.touches(offset) && !span.isEmpty())
        .sorted(Comparator.comparingInt(Span::length).thenComparingInt(Span::start))
        .forEach(span -> addLarger(span, ranges));
    addLarger(new Span(0, text.source().length()), ranges);
    return List.copyOf(ranges);
  }

  private static void addParts(Line line, List<Span> candidates) {
    candidates.add(line.span());
    line.clauses().stream().map(Clause::span).forEach(candidates::add);
    Stream.concat(
            line.objects().stream(),
            line.clauses().stream().flatMap(clause -> clause.groups().stream()))
        .map(Group::span)
        .forEach(candidates::add);
    if (!line.objects().isEmpty()) {
      List<Group> objects = line.objects();
      candidates.add(objects.get(0).span().to(objects.get(objects.size() - 1).span()));
    }
  }

  private static void addLarger(Span span, List<Span> ranges) {
    if (ranges.isEmpty()
        || (span.contains(ranges.get(ranges.size() - 1))
            && span.length() > ranges.get(ranges.size() - 1).length())) {
      ranges.add(span);
    }
  }
}
