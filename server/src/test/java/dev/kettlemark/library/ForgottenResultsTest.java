package dev.kettlemark.library;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.lang.ref.WeakReference;
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
    Snapshot snapshot = Snapshot.of(Library.of(List.of(TEXT)));
    WeakReference<Object> gone =
        new WeakReference<>(snapshot.result(COMPUTED, TEXT.entries().get(0)));
    Object stays = snapshot.result(COMPUTED, TEXT.entries().get(1));
    Document edited = TEXT.with(new TextEdit(new Span(8, 11), "uno"));
    Snapshot next = snapshot.with(snapshot.library().with(edited));
    snapshot = next;
    assertNull(afterCollection(gone));
    assertSame(stays, next.result(COMPUTED, edited.entries().get(1)));
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

  private static @Nullable Object afterCollection(WeakReference<Object> reference)
      throws InterruptedException {
    for (int i = 0; i < 20 && reference.get() != null; i++) {
      System.gc();
      Thread.sleep(10);
    }
    return reference.get();
  }
}
