package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.kettlemark.Chance;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The outline that is told after an edit is that of the text, whatever was told before. */
class ToldSymbolsTest {

  private static final String KEY = "file:///quay/three.kettle";
  private static final String TEXT = """
      # Notes for the first one.
      formula jelly "Jelly"
        stage cook
          55.00 %  white-sugar
          45.00 %  water
          cook  to 107 °C
      # Notes for the second one.

      formula syrup
        stage boil
          80.00 %  white-sugar
          20.00 %  water

      ingredient house-salt
        form powder
      """;

  private final LiveLibrary library =
      new LiveLibrary(() -> LocalDate.of(2026, 3, 14), UnaryOperator.identity());
  private final ToldSymbols told = new ToldSymbols();
  private int version;

  @BeforeEach
  void open() {
    library.open(KEY, new Moment.OpenBuffer(KEY, ++version), TEXT);
  }

  @Test
  void keepsThoseOfSectionsThatStandAsTheyStood() {
    List<DocumentSymbol> before = symbols(told);
    edit(new Span(TEXT.indexOf("80.00"), TEXT.indexOf("80.00") + 1), "7");
    List<DocumentSymbol> after = symbols(told);
    assertSame(before.get(0), after.get(0));
    assertNotSame(before.get(1), after.get(1));
    assertSame(before.get(2), after.get(2));
  }

  @Test
  void tellsWhereSectionsStandNow() {
    symbols(told);
    edit(new Span(0, 0), "\n\n");
    assertEquals(3, symbols(told).get(0).getSelectionRange().getStart().getLine());
  }

  @Test
  void tellsTheSameAsOneWhoTellsItForTheFirstTime() {
    Chance.rounds(20, random -> {
      open();
      for (int edit = 0; edit < 30; edit++) {
        edit(random);
        if (random.nextBoolean()) {
          assertEquals(symbols(new ToldSymbols()), symbols(told));
        }
      }
    });
  }

  private List<DocumentSymbol> symbols(ToldSymbols some) {
    Moment moment = library.moment();
    return some
        .of(new Scene(
            moment, moment.document(KEY).orElseThrow(), ClientTraits.of(new InitializeParams())))
        .stream()
        .map(Either::getRight)
        .toList();
  }

  private void edit(Random random) {
    List<String> pieces = List.of(
        "", "x", "\n", "\n\n", "# more\n", "formula z\n", "  stage y\n", "  5.00 %  water\n", TEXT);
    int length = library.moment().document(KEY).orElseThrow().text().source().length();
    int start = random.nextInt(length + 1);
    int end = Math.min(length, start + random.nextInt(4) * random.nextInt(20));
    edit(new Span(start, end), pieces.get(random.nextInt(pieces.size())));
  }

  private void edit(Span span, String replacement) {
    library.change(
        KEY,
        new Moment.OpenBuffer(KEY, ++version),
        List.of(text -> new TextEdit(span, replacement)));
  }
}
