package dev.kettlemark.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.grammar.KettleLexer;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Unit;
import java.util.List;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Token;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The words that stand both in the grammar and in the model are the same words. */
class WordAgreementTest {

  @ParameterizedTest
  @EnumSource(Unit.class)
  void theLexerKnowsEveryUnit(Unit unit) {
    assertEquals(KettleLexer.UNIT, typeOf(unit.symbol()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "%", "ppm", "kg", "g", "mg", "L", "mL", "lb", "oz", "fl-oz", "cup", "cups", "tbsp", "tsp",
        "each", "°C", "degC", "°F", "degF", "s", "min", "h", "day", "days", "week", "weeks",
        "month", "months", "m", "cm", "mm", "g/mL", "%RH", "piece", "pieces", "Brix", "pH", "aw"
      })
  void theModelKnowsEveryUnitOfTheLexer(String word) {
    assertEquals(KettleLexer.UNIT, typeOf(word));
    assertTrue(Unit.of(word).isPresent(), word);
  }

  @ParameterizedTest
  @EnumSource(Connective.class)
  void theLexerKnowsEveryConnective(Connective connective) {
    int type = typeOf(connective.word());
    assertTrue(KettleLexer.OF <= type && type <= KettleLexer.PER, connective.word());
    assertEquals(connective, Connective.ofWord(connective.word()));
  }

  @ParameterizedTest
  @EnumSource(SectionWord.class)
  void theLexerAndTheBoundariesKnowEverySectionWord(SectionWord section) {
    int type = typeOf(section.word());
    assertTrue(KettleLexer.HOUSE <= type && type <= KettleLexer.SHEET, section.word());
    String text = "\n" + section.word() + " x";
    assertEquals(section.opensSection() ? 1 : -1, SectionBoundaries.next(text, 1));
  }

  private static int typeOf(String word) {
    List<? extends Token> tokens = new KettleLexer(CharStreams.fromString(word)).getAllTokens();
    assertEquals(1, tokens.size(), word);
    return tokens.get(0).getType();
  }
}
