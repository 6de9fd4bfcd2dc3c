package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.text.Cells;
import dev.kettlemark.text.Source;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Where names start on the amounts of a stage, so that one that is filled in starts there too.
 *
 * @param gap the spaces that are missing before the word at the cursor
 */
record NameColumn(int gap) {

  private static final NameColumn NONE = new NameColumn(0);

  static NameColumn of(Document document, CursorLine cursor) {
    if (cursor.stage().isEmpty() || !expectsName(cursor)) {
      return NONE;
    }
    Source source = document.text().source();
    Span here = source.line(source.lineAt(cursor.word().start()));
    int column = Cells.of(new Span(here.start(), cursor.word().start()).of(source.text()));
    return neighbour(document, source.lineAt(here.start()), isTake(cursor))
        .map(other -> new NameColumn(Math.max(0, other - column)))
        .orElse(NONE);
  }

  /** Behind an amount, and not behind the {@code of} of its basis. */
  private static boolean expectsName(CursorLine cursor) {
    boolean isAmount = cursor
        .first()
        .filter(token -> token.is(Lexeme.Kind.NUMBER) || token.is(Lexeme.Kind.AMOUNT_WORD))
        .isPresent();
    return isAmount && (isTake(cursor) || !cursor.endsWith(Lexeme.Kind.CONNECTIVE));
  }

  private static boolean isTake(CursorLine cursor) {
    return cursor.head().equals("all") || cursor.head().equals("part");
  }

  /** The column of the nearest name above in the stage, or else of the nearest below. */
  private static Optional<Integer> neighbour(Document document, int number, boolean amongTakes) {
    ParsedText text = document.text();
    List<WrittenLine> lines =
        WrittenLine.of(text, text.sectionAt(text.source().line(number).start()));
    int here = number - lines.get(0).number();
    return IntStream.concat(
            IntStream.iterate(here - 1, i -> i >= 0 && !lines.get(i).isHeading(), i -> i - 1),
            IntStream.iterate(
                here + 1, i -> i < lines.size() && !lines.get(i).isHeading(), i -> i + 1))
        .mapToObj(lines::get)
        .filter(line -> !line.tokens().isEmpty() && !line.broken())
        .filter(line -> line.line() instanceof Line.TakeLine == amongTakes)
        .map(line -> RowCutter.cut(line, true))
        .filter(row -> row.table() == Table.AMOUNT)
        .filter(row -> !row.cells().get(AmountColumns.NAME).isEmpty())
        .map(row -> Cells.of(new Span(
                row.line().span().start(),
                row.cells().get(AmountColumns.NAME).tokens().get(0).span().start())
            .of(document.text().source().text())))
        .findFirst();
  }

  List<Proposal> padded(List<Proposal> proposals) {
    return gap == 0
        ? proposals
        : proposals.stream()
            .map(proposal -> isName(proposal.kind()) ? padded(proposal) : proposal)
            .toList();
  }

  private static boolean isName(Proposal.Kind kind) {
    return kind == Proposal.Kind.INGREDIENT
        || kind == Proposal.Kind.FORMULA
        || kind == Proposal.Kind.STAGE;
  }

  private Proposal padded(Proposal proposal) {
    return new Proposal(
        proposal.label(),
        proposal.detail(),
        proposal.documentation(),
        " ".repeat(gap) + proposal.insertText(),
        proposal.isSnippet(),
        proposal.replaced(),
        proposal.kind(),
        proposal.sortKey(),
        proposal.isPast());
  }
}
