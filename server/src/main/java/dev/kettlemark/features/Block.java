package dev.kettlemark.features;

import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.ParsedText.PlacedSection;
import dev.kettlemark.text.Span;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;

/**
 * A heading with the lines below it: a section with its stages, or a stage.
 *
 * @param heading the line that opens it
 * @param body the lines up to the next heading, without blank ones at their end and without the
 *     comments that belong to the next heading
 * @param parts the stages of a section
 */
record Block(WrittenLine heading, List<WrittenLine> body, List<Block> parts) {

  Block {
    body = List.copyOf(body);
    parts = List.copyOf(parts);
  }

  boolean isStage() {
    return heading.opensStage();
  }

  WrittenLine lastLine() {
    if (!parts.isEmpty()) {
      return parts.get(parts.size() - 1).lastLine();
    }
    return body.isEmpty() ? heading : body.get(body.size() - 1);
  }

  /** From the first character of the heading to the last one of the last line. */
  Span span() {
    return new Span(heading.tokens().get(0).span().start(), lastLine().span().end());
  }

  /** The sections of a text; what stands above them is left out, and a stage may stand alone. */
  static List<Block> of(ParsedText text) {
    return text.sections().stream().flatMap(placed -> of(text, placed).stream()).toList();
  }

  /** The blocks of one section: itself, or stages that stand alone. */
  static List<Block> of(ParsedText text, PlacedSection placed) {
    List<WrittenLine> lines = WrittenLine.of(text, placed);
    boolean goesOn = placed.end() < text.source().length();
    return of(lines, new LineSpacing(lines, true, goesOn));
  }

  private static List<Block> of(List<WrittenLine> lines, LineSpacing spacing) {
    Deque<Block> sections = new ArrayDeque<>();
    Deque<Block> stages = new ArrayDeque<>();
    int end = lines.size();
    for (int i = lines.size() - 1; i >= 0; i--) {
      WrittenLine line = lines.get(i);
      if (line.isHeading()) {
        Block block = new Block(line, body(lines, spacing, i + 1, end), List.of());
        end = i;
        if (block.isStage()) {
          stages.addFirst(block);
        } else {
          sections.addFirst(new Block(line, block.body(), List.copyOf(stages)));
          stages.clear();
        }
      }
    }
    stages.addAll(sections);
    return List.copyOf(stages);
  }

  private static List<WrittenLine> body(
      List<WrittenLine> lines, LineSpacing spacing, int from, int end) {
    int last = end;
    while (last > from
        && (lines.get(last - 1).isBlank()
            || spacing.isHeadingComment(lines.get(last - 1).number()))) {
      last--;
    }
    return lines.subList(from, last);
  }
}
