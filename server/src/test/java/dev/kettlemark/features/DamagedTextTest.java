package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import dev.kettlemark.Chance;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** No text makes a feature fail: the samples at every offset, and thousands of damaged copies. */
class DamagedTextTest {

  private static final int COPIES = 2000;
  private static final int POINTERS = 12;

  private static final List<String> PIECES = List.of(
      "\n",
      "\r",
      " ",
      "-",
      "\"",
      "#",
      ",",
      "=",
      "stage ",
      "variant x of ",
      "all of ",
      "q.s. ",
      "part 1/0 of foam\n",
      "formula heather-nougat\n",
      " of ",
      " °C",
      " °F",
      " %",
      " kg",
      " ± 900 °C",
      "-300 °C",
      "999999999999999999999999 g",
      "0 g ",
      "0 % ",
      "-5 % ",
      "basis b = b, foam\n",
      "cook to 5000 °C\n",
      "cook to -280 °C\n",
      "water",
      "foam",
      "é",
      "\uD83C\uDF6F",
      "\uD83C",
      "\u0000");

  @Test
  void answersAtEveryOffsetOfTheSamples() {
    for (String folder : List.of("gannet-slip", "mistakes")) {
      List<Document> documents = FeatureFixture.samples(folder);
      assertTrue(documents.size() > 10, folder);
      Snapshot snapshot = FeatureFixture.snapshot(documents);
      for (Document document : documents) {
        int length = document.text().source().length();
        for (int offset = 0; offset <= length; offset++) {
          answer(snapshot, document, offset);
        }
        answerWhole(snapshot, document);
      }
    }
  }

  @Test
  void answersOnDamagedCopies() {
    List<Document> documents = new ArrayList<>(FeatureFixture.samples("gannet-slip"));
    documents.addAll(FeatureFixture.samples("mistakes"));
    Snapshot intact = FeatureFixture.snapshot(documents);
    Chance.rounds(COPIES, random -> {
      Document document = documents.get(random.nextInt(documents.size()));
      for (int damage = random.nextInt(4); damage >= 0; damage--) {
        document = document.with(damage(document.text().source().text(), random));
      }
      Snapshot snapshot = intact.with(intact.library().with(document));
      try {
        for (int pointer = 0; pointer < POINTERS; pointer++) {
          answer(snapshot, document, random.nextInt(document.text().source().length() + 1));
        }
        answerLine(snapshot, document, random.nextInt(document.text().source().length() + 1));
        answerWhole(snapshot, document);
      } catch (RuntimeException failure) {
        fail(document.text().source().text(), failure);
      }
    });
  }

  private static TextEdit damage(String text, Random random) {
    int start = random.nextInt(text.length() + 1);
    int end = Math.min(text.length(), start + random.nextInt(random.nextBoolean() ? 4 : 60));
    boolean swaps = random.nextInt(4) == 0;
    String piece = swaps
        ? text.substring(end, Math.min(text.length(), end + 30))
        : PIECES.get(random.nextInt(PIECES.size()));
    return new TextEdit(new Span(start, random.nextBoolean() ? start : end), piece);
  }

  private static void answer(Snapshot snapshot, Document document, int offset) {
    int length = document.text().source().length();
    Hover.at(snapshot, document, offset).ifPresent(hover -> {
      assertTrue(hover.span().touches(offset), () -> "hover beside the pointer at " + offset);
      assertTrue(hover.span().end() <= length, () -> "hover behind the text at " + offset);
      assertTrue(!hover.markdown().isBlank(), () -> "an empty hover at " + offset);
    });
    Navigation.highlights(snapshot, document, offset);
    Signatures.at(document, offset);
  }

  /** An answer runs the formula many times, so only some lines are asked. */
  private static void answerLine(Snapshot snapshot, Document document, int offset) {
    Variants.implementations(snapshot, document, offset);
    TextEdit.applyAll(
        document.text().source().text(), TypedFormat.atNewLine(document.text(), offset));
    Feeding.at(snapshot, document, offset).ifPresent(node -> {
      Feeding.into(snapshot, node.symbol());
      Feeding.from(snapshot, node.symbol());
    });
    AnswerActions.at(snapshot, document, Span.at(offset))
        .forEach(proposal -> TextEdit.applyAll(document.text().source().text(), proposal.edits()));
  }

  private static void answerWhole(Snapshot snapshot, Document document) {
    Span all = new Span(0, document.text().source().length());
    InlayHints.of(snapshot, document, all, EnumSet.allOf(InlayHints.Kind.class))
        .forEach(hint -> assertTrue(all.touches(hint.offset()), hint.label()));
    for (Entry entry : document.entries()) {
      int end = 0;
      for (SemanticTokens.Mark mark : SemanticTokens.of(snapshot, entry)) {
        assertTrue(mark.span().start() >= end, () -> "colours meet at " + mark);
        end = mark.span().end();
      }
    }
    Links.of(document.text()).forEach(link -> assertTrue(all.contains(link.span())));
    Totals.of(snapshot, document)
        .forEach(total -> assertTrue(all.contains(total.span()), total.title()));
    QuickFixes.at(snapshot, document, all)
        .forEach(action -> action
            .edits()
            .values()
            .forEach(edits -> TextEdit.applyAll(document.text().source().text(), edits)));
  }
}
