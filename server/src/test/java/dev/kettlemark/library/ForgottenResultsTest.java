package dev.kettlemark.library;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.model.Declaration;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What was computed from a section goes when the section goes, so that an hour of typing fills no memory. */
class ForgottenResultsTest {

  private static final Task<Object> COMPUTED = (entry, scope) -> new Object();

  private static final Document TEXT = Document.of(
      "a.kettle", "formula one\n  percent of charge\nformula two\n  percent of charge\n");

  @Test
  void forgetsWhatWasComputedFromASectionThatIsGone() throws InterruptedException {
    // One place for the moment, as in the server: nothing else may hold on to the one before.
    Snapshot[] now = {Snapshot.of(Library.of(List.of(TEXT)))};
    WeakReference<Object> gone =
        new WeakReference<>(now[0].result(COMPUTED, TEXT.entries().get(0)));
    Object stays = now[0].result(COMPUTED, TEXT.entries().get(1));
    Document edited = TEXT.with(new TextEdit(new Span(8, 11), "uno"));
    now[0] = now[0].with(now[0].library().with(edited));
    assertNull(afterCollection(gone));
    assertSame(stays, now[0].result(COMPUTED, edited.entries().get(1)));
  }

  /** A library that is only tried out takes nothing from the one it came from. */
  @Test
  void keepsTheResultsOfALibraryBesideWhichAnotherIsTried() throws InterruptedException {
    Snapshot snapshot = Snapshot.of(Library.of(List.of(TEXT)));
    WeakReference<Object> result =
        new WeakReference<>(snapshot.result(COMPUTED, TEXT.entries().get(0)));
    Document edited = TEXT.with(new TextEdit(new Span(8, 11), "uno"));
    Snapshot tried = snapshot.tried(snapshot.library().with(edited));
    tried.with(tried.library().without("a.kettle"));
    assertNotNull(afterCollection(result));
    assertSame(result.get(), snapshot.result(COMPUTED, TEXT.entries().get(0)));
  }

  /** A closed file keeps what is small and asked for again and again; the rest is read and computed anew. */
  @Test
  void letsGoOfAllThatDoesNotLast() {
    Task<Object> lasting = Task.lasting((entry, scope) -> new Object());
    Document text = Document.of("a.kettle", "formula one\n  percent of charge\n");
    Snapshot snapshot = Snapshot.of(Library.of(List.of(text)));
    Entry entry = text.entries().get(0);
    Object large = snapshot.result(COMPUTED, entry);
    Object small = snapshot.result(lasting, entry);
    Declaration declaration = entry.declaration().orElseThrow();
    List<Line> lines = entry.section().lines();
    snapshot.letGo(text);
    assertSame(small, snapshot.result(lasting, entry));
    assertNotSame(large, snapshot.result(COMPUTED, entry));
    assertNotSame(declaration, entry.declaration().orElseThrow());
    assertEquals(declaration, entry.declaration().orElseThrow());
    assertEquals(lines, entry.section().lines());
  }

  @Test
  void readsATextAgainThatWasLetGo() throws InterruptedException {
    Document text =
        Document.of("a.kettle", "formula one\n  percent of charge\n").learnt();
    Entry entry = text.entries().get(0);
    Declaration declaration = entry.declaration().orElseThrow();
    WeakReference<Object> line = new WeakReference<>(entry.section().lines().get(0));
    text.letGo();
    assertNull(afterCollection(line));
    assertEquals("one", entry.sign().orElseThrow().name());
    assertNotSame(declaration, entry.declaration().orElseThrow());
    assertEquals(declaration, entry.declaration().orElseThrow());
  }

  /** What a rule found holds on to nothing that was computed on the way. */
  @Test
  void holdsOnToNothingOfAClosedFileButItsFindings() throws InterruptedException {
    Document text = Document.of("a.kettle", """
        formula drop
          percent   of charge
          batch     1 kg
        stage pan
          80.00 %   white-sugar
          20.00 %   water
          cook      to 145 °C
        """);
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(text);
    Snapshot snapshot = Snapshot.of(Library.of(all));
    Entry entry = text.entries().get(0);
    List<Finding> found = Rules.of(snapshot, entry);
    WeakReference<Object> computed =
        new WeakReference<>(Formulas.computed(snapshot, entry).orElseThrow());
    snapshot.letGo(text);
    assertNull(afterCollection(computed));
    assertSame(found, Rules.of(snapshot.with(snapshot.library()), entry));
  }

  private static @Nullable Object afterCollection(WeakReference<Object> reference)
      throws InterruptedException {
    for (int i = 0; i < 20 && reference.get() != null; i++) {
      System.gc();
      Thread.sleep(10);
    }
    return reference.get();
  }
}
