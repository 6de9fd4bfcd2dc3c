package dev.kettlemark.checks;

import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.List;

/**
 * One way to mend a finding.
 *
 * @param title what it does, as an instruction with a capital and no full stop
 * @param edits changes to the finding's own section, counted from its start
 * @param safe whether it only spells out what is meant beyond doubt, so that it may be applied unseen
 */
public record Fix(String title, List<TextEdit> edits, boolean safe) {

  public Fix {
    edits = List.copyOf(edits);
  }

  /** A fix that somebody chooses. */
  public Fix(String title, List<TextEdit> edits) {
    this(title, edits, false);
  }

  /** The same fix where nothing else can be meant. */
  public Fix beyondDoubt() {
    return new Fix(title, edits, true);
  }

  public static Fix replace(String title, Span span, String text) {
    return new Fix(title, List.of(new TextEdit(span, text)));
  }

  public static Fix insert(String title, int offset, String text) {
    return new Fix(title, List.of(TextEdit.insert(offset, text)));
  }
}
