package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.bench.BenchTexts;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each request is measured with something to do. */
class EveryRequestTest {

  @Test
  void findsAnAnswerToEachRequest() {
    EveryRequest every = EveryRequest.on(BenchTexts.forFeatures(100));
    assertEquals(Set.of(), every.unanswered());
    EveryRequest.names().forEach(every::named);
  }

  @Test
  void knowsWhatAnEditorAsksMost() {
    List<String> names = EveryRequest.names();
    assertTrue(
        names.containsAll(List.of(
            "codeAction",
            "completion",
            "definition",
            "diagnostic",
            "formatting",
            "hover",
            "inlayHint",
            "onTypeFormatting",
            "rename",
            "semanticTokensFull",
            "semanticTokensRange",
            "symbolOfLibrary")),
        names::toString);
    assertTrue(names.size() >= 30, names::toString);
  }
}
