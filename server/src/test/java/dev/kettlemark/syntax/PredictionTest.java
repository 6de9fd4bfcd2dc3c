package dev.kettlemark.syntax;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.Pinned;
import dev.kettlemark.SampleTexts;
import dev.kettlemark.grammar.KettleLexer;
import dev.kettlemark.grammar.KettleParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.Stream;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.DiagnosticErrorListener;
import org.antlr.v4.runtime.Parser;
import org.antlr.v4.runtime.atn.ATNConfigSet;
import org.antlr.v4.runtime.atn.PredictionMode;
import org.antlr.v4.runtime.dfa.DFA;
import org.junit.jupiter.api.Test;

/** The grammar has one reading for every text, and the fast way of prediction finds it. */
class PredictionTest {

  @Test
  void noTextHasTwoReadings() throws IOException {
    List<String> ambiguities = new ArrayList<>();
    for (String text : texts()) {
      KettleParser parser = parser(text, PredictionMode.LL_EXACT_AMBIG_DETECTION);
      parser.addErrorListener(new Ambiguities(ambiguities));
      parser.standaloneText();
    }
    assertEquals(List.of(), ambiguities);
  }

  @Test
  void theFastWayOfPredictionGivesTheSameTree() throws IOException {
    for (String text : texts()) {
      assertEquals(tree(text, PredictionMode.LL), tree(text, PredictionMode.SLL), text);
    }
  }

  private static String tree(String text, PredictionMode mode) {
    KettleParser parser = parser(text, mode);
    return parser.standaloneText().toStringTree(parser);
  }

  private static KettleParser parser(String text, PredictionMode mode) {
    KettleLexer lexer = new KettleLexer(CharStreams.fromString(text));
    KettleParser parser = new KettleParser(new CommonTokenStream(lexer));
    lexer.removeErrorListeners();
    parser.removeErrorListeners();
    parser.setErrorHandler(new LineRecovery(Offsets.of(text), new ArrayList<>()));
    parser.getInterpreter().setPredictionMode(mode);
    return parser;
  }

  private static List<String> texts() throws IOException {
    List<String> texts = new ArrayList<>();
    SampleTexts.all().forEach(document -> texts.add(document.text().source().text()));
    try (Stream<Path> files = Files.list(Pinned.folder("syntax/trees"))) {
      for (Path file :
          files.filter(f -> f.toString().endsWith(".kettle")).sorted().toList()) {
        texts.add(Files.readString(file));
      }
    }
    texts.add(Pinned.resource("reading/messages.txt").text());
    return texts;
  }

  /** Counts what ANTLR's own diagnostics call an ambiguity or a conflict that needs full context. */
  private static final class Ambiguities extends DiagnosticErrorListener {

    private final List<String> found;

    Ambiguities(List<String> found) {
      super(true);
      this.found = found;
    }

    @Override
    public void reportAmbiguity(
        Parser parser,
        DFA dfa,
        int start,
        int stop,
        boolean exact,
        BitSet alternatives,
        ATNConfigSet configs) {
      found.add(getDecisionDescription(parser, dfa) + " " + alternatives);
    }

    @Override
    public void reportAttemptingFullContext(
        Parser parser, DFA dfa, int start, int stop, BitSet alternatives, ATNConfigSet configs) {
      found.add("full context " + getDecisionDescription(parser, dfa));
    }

    @Override
    public void reportContextSensitivity(
        Parser parser, DFA dfa, int start, int stop, int prediction, ATNConfigSet configs) {
      found.add("context " + getDecisionDescription(parser, dfa));
    }
  }
}
