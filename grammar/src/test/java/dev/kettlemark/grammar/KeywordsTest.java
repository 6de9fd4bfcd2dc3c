package dev.kettlemark.grammar;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Token;
import org.junit.jupiter.api.Test;

/**
 * The complete list of words that the grammar reserves, each with its token.
 *
 * <p>Every new word takes a name away from the bench, so none slips in unseen: it must be added to
 * {@code keywords.txt} by hand.
 */
class KeywordsTest {

  private static final Path GRAMMAR =
      Path.of("src/main/antlr4/dev/kettlemark/grammar/KettleLexer.g4");

  private static final Pattern RULE = Pattern.compile("(?ms)^([A-Z]+)\\s*:(.*?);\\s*$");
  private static final Pattern LITERAL = Pattern.compile("'((?:[^'\\\\]|\\\\.)+)'(\\s*'s'\\?)?");

  /** Rules that stand for shapes, not for words. */
  private static final List<String> SHAPES = List.of(
      "DATE",
      "RANGE",
      "FRACTION",
      "NUMBER",
      "NAME",
      "STRING",
      "COMMENT",
      "SPACE",
      "NEWLINE",
      "STRAY");

  @Test
  void theListHoldsEveryWordOfTheGrammar() throws IOException {
    TreeSet<String> words = new TreeSet<>();
    Matcher rule = RULE.matcher(Files.readString(GRAMMAR));
    while (rule.find()) {
      if (!SHAPES.contains(rule.group(1))) {
        Matcher literal = LITERAL.matcher(rule.group(2));
        while (literal.find()) {
          words.add(rule.group(1) + " " + literal.group(1));
          if (literal.group(2) != null) {
            words.add(rule.group(1) + " " + literal.group(1) + "s");
          }
        }
      }
    }
    assertEquals(String.join("\n", new TreeSet<>(list())), String.join("\n", words));
  }

  @Test
  void everyWordOfTheListIsOneTokenOfItsKind() throws IOException {
    for (String line : list()) {
      String kind = line.substring(0, line.indexOf(' '));
      String word = line.substring(line.indexOf(' ') + 1);
      List<? extends Token> tokens = new KettleLexer(CharStreams.fromString(word)).getAllTokens();
      assertEquals(
          List.of(kind),
          tokens.stream()
              .map(token -> KettleLexer.VOCABULARY.getSymbolicName(token.getType()))
              .toList(),
          word);
    }
  }

  @Test
  void noWordIsListedTwice() throws IOException {
    List<String> words =
        list().stream().map(line -> line.substring(line.indexOf(' ') + 1)).toList();
    assertEquals(words.size(), words.stream().collect(Collectors.toSet()).size());
  }

  private static List<String> list() throws IOException {
    try (InputStream stream = KeywordsTest.class.getResourceAsStream("keywords.txt")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    }
  }
}
