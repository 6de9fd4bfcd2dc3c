package dev.kettlemark.features;

import dev.kettlemark.text.Cells;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A line cut into cells.
 *
 * @param line the line as written
 * @param table which cells it has
 * @param cells runs of words that stand one space apart; a cell may be empty
 */
record Row(WrittenLine line, Table table, List<Cell> cells) {

  Row {
    cells = List.copyOf(cells);
  }

  /** A run of words that stand one space apart. */
  record Cell(List<Token> tokens, List<String> words) {

    Cell {
      tokens = List.copyOf(tokens);
      words = List.copyOf(words);
    }

    boolean isEmpty() {
      return tokens.isEmpty();
    }

    /** A comma stands right behind the word before it. */
    int gapBefore(int index) {
      return index == 0 || tokens.get(index).isComma() ? 0 : 1;
    }

    int width() {
      int width = 0;
      for (int i = 0; i < words.size(); i++) {
        width += gapBefore(i) + Cells.of(words.get(i));
      }
      return width;
    }
  }

  /** Cuts the words of a line before each of the given indices. */
  static Row of(WrittenLine line, Table table, List<Integer> cuts) {
    List<Cell> cells = new ArrayList<>();
    int start = 0;
    for (int cut : cuts) {
      cells.add(cell(line.tokens(), start, cut));
      start = cut;
    }
    cells.add(cell(line.tokens(), start, line.tokens().size()));
    return new Row(line, table, cells);
  }

  private static Cell cell(List<Token> tokens, int start, int end) {
    List<String> words = new ArrayList<>();
    for (int i = start; i < end; i++) {
      Optional<Token> before = i == 0 ? Optional.empty() : Optional.of(tokens.get(i - 1));
      words.add(Spelling.of(tokens.get(i), before));
    }
    return new Cell(tokens.subList(start, end), words);
  }
}
