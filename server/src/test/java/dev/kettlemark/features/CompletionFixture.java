package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;

/** Asks for proposals at {@code <|>} in a text, with the built-in pantry and one more text beside it. */
final class CompletionFixture {

  private static final String CURSOR = "<|>";

  private static final List<Document> PANTRY = Pantry.documents();

  private final String besides;

  private CompletionFixture(String besides) {
    this.besides = besides;
  }

  /** A library of this text and the one of the test. */
  static CompletionFixture with(String besides) {
    return new CompletionFixture(besides);
  }

  /** Asserts which labels come first. */
  void check(String marked, String... first) {
    List<String> labels = labels(marked);
    assertEquals(
        List.of(first), labels.subList(0, Math.min(first.length, labels.size())), labels::toString);
  }

  /** Asserts all labels. */
  void checkAll(String marked, String... all) {
    assertEquals(List.of(all), labels(marked));
  }

  /** The proposal of a label. */
  Proposal proposal(String marked, String label) {
    return at(marked).stream()
        .filter(proposal -> proposal.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError(label + " is not among " + labels(marked)));
  }

  /** Asserts what a proposal makes of the text. */
  void checkInserted(String marked, String label, String after) {
    Proposal proposal = proposal(marked, label);
    String text = marked.replace(CURSOR, "");
    assertEquals(
        after,
        text.substring(0, proposal.replaced().start())
            + proposal.insertText()
            + text.substring(proposal.replaced().end()));
  }

  List<String> labels(String marked) {
    return at(marked).stream().map(Proposal::label).toList();
  }

  private List<Proposal> at(String marked) {
    int offset = marked.indexOf(CURSOR);
    assertTrue(offset >= 0, "the text has no cursor");
    Document document = Document.of("b.kettle", marked.replace(CURSOR, ""));
    List<Document> documents = new ArrayList<>(PANTRY);
    documents.add(Document.of("a.kettle", besides));
    documents.add(document);
    return Completion.at(Snapshot.of(Library.of(documents)), document, offset);
  }
}
