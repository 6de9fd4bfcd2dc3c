package dev.kettlemark.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;

/** What a key takes of the heap, which no busy machine changes. */
class KeyCostTest {

  /** One key in a formula of forty lines took some 930 KB when this was written, and 1,810 KB before. */
  private static final double MOST = 1_400_000;

  /** The text is copied at each edit, piece by piece and as a whole. */
  private static final double COPIES = 4;

  /** The other 249 formulas are held against what changed, and no more. */
  private static final double MOST_OF_SHORT = 1.5;

  private static final int FIRST_KEYS = 20;
  private static final int KEYS = 20;

  @Test
  void aKeyTakesLittle() {
    double taken = bytesOfAKey(BenchTexts.formula());
    assertTrue(taken < MOST, "bytes of a key: " + taken);
  }

  @Test
  void aKeyInALongTextTakesTheTextAndLittleElse() {
    Document longText = BenchTexts.formulas(250);
    double text = COPIES * longText.text().source().length();
    double ofLong = bytesOfAKey(longText);
    double ofShort = bytesOfAKey(BenchTexts.formula());
    assertTrue(
        ofLong < MOST_OF_SHORT * ofShort + text,
        "bytes of a key: " + ofLong + " in a long text, " + ofShort + " in a short one");
  }

  /** The mean after the first keys, at which classes and constants are made. */
  private static double bytesOfAKey(Document opened) {
    ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    Document document = opened;
    Snapshot snapshot = Snapshot.of(BenchTexts.library(document));
    int place = BenchTexts.cursor(document);
    findings(snapshot, document);
    long before = 0;
    for (int key = 0; key < FIRST_KEYS + KEYS; key++) {
      if (key == FIRST_KEYS) {
        before = thread.getCurrentThreadAllocatedBytes();
      }
      document =
          document.with(new TextEdit(new Span(place, place + 1), Integer.toString(key % 10)));
      snapshot = snapshot.with(snapshot.library().with(document));
      findings(snapshot, document);
    }
    return (thread.getCurrentThreadAllocatedBytes() - before) / (double) KEYS;
  }

  private static void findings(Snapshot snapshot, Document document) {
    document.entries().forEach(entry -> Rules.of(snapshot, entry));
  }
}
