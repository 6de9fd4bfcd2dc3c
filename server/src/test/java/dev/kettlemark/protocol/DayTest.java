package dev.kettlemark.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Position;
import org.junit.jupiter.api.Test;

/** A server that runs for days, on a machine whose clock may be set while it runs. */
class DayTest {

  private static final String URI = "untitled:pantry";

  private static final String TEXT = """
      ingredient lime-honey
        role sweetening
        form syrup
        contains 18 % water, 74 % fructose, 8 % other  from "invented"
        reviewed on 2025-12-01 every 12 months
      formula cold-syrup
        percent of charge
        batch 500 g
      stage bowl
        60.00 % lime-honey
        40.00 % water
        mix lime-honey, water
      """;

  private final AtomicReference<LocalDate> day = new AtomicReference<>(LocalDate.of(2026, 11, 25));

  private List<String> rules(EditorFixture editor) throws InterruptedException {
    return editor.diagnostics(URI).stream()
        .map(Diagnostic::getCode)
        .map(code -> String.valueOf(code.get()))
        .filter("overdue-review"::equals)
        .toList();
  }

  /** Nobody types; the editor asks for something, as it does when it comes to the front. */
  private List<String> rulesOn(EditorFixture editor, LocalDate next) throws Exception {
    day.set(next);
    editor.await(editor
        .server()
        .getTextDocumentService()
        .hover(new HoverParams(EditorFixture.id(URI), new Position(0, 12))));
    return rules(editor);
  }

  @Test
  void tellsWhatFallsDueWhileNobodyTypes() throws Exception {
    try (EditorFixture editor = EditorFixture.at(day::get)) {
      editor.open(URI, TEXT);
      assertEquals(List.of(), rules(editor));
      assertEquals(List.of("overdue-review"), rulesOn(editor, LocalDate.of(2026, 12, 2)));
    }
  }

  @Test
  void takesItBackWhenTheClockIsSetBack() throws Exception {
    day.set(LocalDate.of(2099, 1, 1));
    try (EditorFixture editor = EditorFixture.at(day::get)) {
      editor.open(URI, TEXT);
      assertEquals(List.of("overdue-review"), rules(editor));
      assertEquals(List.of(), rulesOn(editor, LocalDate.of(1970, 1, 1)));
      assertEquals(List.of("overdue-review"), rulesOn(editor, LocalDate.of(2026, 12, 2)));
    }
  }
}
