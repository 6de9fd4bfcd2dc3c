package dev.kettlemark.features;

import dev.kettlemark.model.FactWord;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Cuts lines into the cells of their table. */
final class RowCutter {

  private static final Set<String> SHARES = Set.of("loss", "spare");

  private RowCutter() {}

  static Row cut(WrittenLine line, boolean inStage) {
    if (line.isHeading()) {
      return Row.of(line, Table.HEADING, List.of());
    }
    if (isAmount(line)) {
      return Row.of(line, Table.AMOUNT, amountCuts(line));
    }
    String head = line.tokens().get(0).text();
    return inStage || line.section().isEmpty()
        ? fact(line, Table.PLAIN)
        : fact(line, table(line.section().get(), head));
  }

  private static boolean isAmount(WrittenLine line) {
    return line.line() instanceof Line.AmountLine
        || line.line() instanceof Line.SufficientLine
        || line.line() instanceof Line.TakeLine;
  }

  private static Table table(SectionWord section, String head) {
    return switch (section) {
      case HOUSE -> Table.TOOL;
      case INGREDIENT -> head.equals("reviewed") ? Table.DATED : Table.SOURCED;
      case PRODUCT ->
        FactWord.PRODUCT_PART.contains(head) || SHARES.contains(head) ? Table.PART : dated(head);
      case TRIAL ->
        switch (head) {
          case "lot" -> Table.LOT;
          case "measured", "scored" -> Table.MEASURED;
          default -> Table.PLAIN;
        };
      case VARIANT ->
        switch (head) {
          case "replace" -> Table.REPLACED;
          case "add", "change" -> Table.ADDED;
          default -> dated(head);
        };
      default -> dated(head);
    };
  }

  private static Table dated(String head) {
    return head.equals("version") ? Table.DATED : Table.PLAIN;
  }

  private static Row fact(WrittenLine line, Table table) {
    List<Token> tokens = line.tokens();
    List<Integer> cuts = new ArrayList<>();
    if (tokens.size() > 1) {
      cuts.add(1);
      moreCuts(tokens, table, cuts);
    }
    cuts.removeIf(cut -> cut >= tokens.size());
    return Row.of(line, table, cuts);
  }

  private static void moreCuts(List<Token> tokens, Table table, List<Integer> cuts) {
    switch (table) {
      case DATED -> cutBefore(tokens, token -> token.reads("on") || token.reads("every"), 2, cuts);
      case SOURCED -> cutBefore(tokens, token -> token.reads("from"), 2, cuts);
      case REPLACED -> cutBefore(tokens, token -> token.reads("by"), 2, cuts);
      case PART -> cuts.add(Math.max(2, behindBasis(tokens, behindFigure(tokens, 1))));
      case MEASURED ->
        cuts.add(Math.max(2, behindScale(tokens, behindBasis(tokens, behindFigure(tokens, 1)))));
      case LOT -> cuts.add(2);
      case ADDED -> {
        int name = Math.max(2, behindBasis(tokens, behindFigure(tokens, 1)));
        cuts.add(name);
        cutBefore(tokens, token -> token.reads("in"), name + 1, cuts);
      }
      case TOOL -> toolCuts(tokens, cuts);
      default -> {}
    }
  }

  /** Cuts before every word that the test names, from an index on; never inside quotes. */
  private static void cutBefore(
      List<Token> tokens, Predicate<Token> test, int from, List<Integer> cuts) {
    for (int i = from; i < tokens.size(); i++) {
      if (test.test(tokens.get(i))) {
        cuts.add(i);
      }
    }
  }

  /** A tool has a name, then properties, each a word and its figures. */
  private static void toolCuts(List<Token> tokens, List<Integer> cuts) {
    boolean named = tokens.size() > 2
        && tokens.get(1).is(Lexeme.Kind.NAME)
        && tokens.get(2).is(Lexeme.Kind.NAME);
    if (named) {
      cuts.add(2);
      cutBefore(tokens, token -> token.reads("to"), 3, cuts);
      for (int i = 3; i < tokens.size(); i++) {
        if (tokens.get(i).is(Lexeme.Kind.NAME) && tokens.get(i - 1).is(Lexeme.Kind.UNIT)) {
          cuts.add(i);
        }
      }
      cuts.sort(Integer::compare);
    }
  }

  /** Number, unit, basis, name, circumstances; a take has its opening words for a number. */
  private static List<Integer> amountCuts(WrittenLine line) {
    List<Token> tokens = line.tokens();
    int unit;
    int basis;
    int name;
    if (line.line() instanceof Line.TakeLine) {
      name = 1;
      while (name < tokens.size() && !tokens.get(name - 1).reads("of")) {
        name++;
      }
      unit = name;
      basis = name;
    } else {
      unit = 1;
      basis = line.line() instanceof Line.AmountLine ? behindFigure(tokens, 0) : 1;
      name = line.line() instanceof Line.AmountLine ? behindBasis(tokens, basis) : 1;
    }
    int circumstances = name;
    while (circumstances < tokens.size() && !tokens.get(circumstances).is(Lexeme.Kind.CONNECTIVE)) {
      circumstances++;
    }
    return List.of(unit, basis, name, circumstances);
  }

  /** Index behind number, unit and tolerance; the index itself where no number stands. */
  static int behindFigure(List<Token> tokens, int from) {
    int i = from;
    if (!isAt(tokens, i, Lexeme.Kind.NUMBER)) {
      return from;
    }
    i++;
    if (isAt(tokens, i, Lexeme.Kind.UNIT)) {
      i++;
    }
    boolean tolerance = isAt(tokens, i, Lexeme.Kind.SYMBOL)
        && !tokens.get(i).isComma()
        && isAt(tokens, i + 1, Lexeme.Kind.NUMBER);
    if (tolerance) {
      i += isAt(tokens, i + 2, Lexeme.Kind.UNIT) ? 3 : 2;
    }
    return i;
  }

  /** Index behind {@code of NAME}; the index itself where no basis stands. */
  static int behindBasis(List<Token> tokens, int from) {
    boolean basis = from < tokens.size()
        && tokens.get(from).reads("of")
        && isAt(tokens, from + 1, Lexeme.Kind.NAME);
    return basis ? from + 2 : from;
  }

  /** Index behind the {@code of 10} of a score; the index itself where no scale stands. */
  private static int behindScale(List<Token> tokens, int from) {
    boolean scale = from < tokens.size()
        && tokens.get(from).reads("of")
        && isAt(tokens, from + 1, Lexeme.Kind.NUMBER);
    return scale ? from + 2 : from;
  }

  private static boolean isAt(List<Token> tokens, int index, Lexeme.Kind kind) {
    return index < tokens.size() && tokens.get(index).is(kind);
  }
}
