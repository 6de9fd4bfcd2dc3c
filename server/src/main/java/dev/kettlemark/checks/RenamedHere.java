package dev.kettlemark.checks;

import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.text.TextEdit;
import java.util.List;

/** A fix that writes another name throughout a section, since its steps speak of what it weighs. */
final class RenamedHere {

  private RenamedHere() {}

  static Fix fix(String title, Subject subject, String old, String fresh) {
    return new Fix(title, edits(subject, old, fresh));
  }

  static List<TextEdit> edits(Subject subject, String old, String fresh) {
    String text = subject.text();
    return subject.section().lexemes().stream()
        .filter(lexeme -> lexeme.kind() == Lexeme.Kind.NAME)
        .filter(lexeme -> lexeme.span().of(text).equals(old))
        .map(lexeme -> new TextEdit(lexeme.span(), fresh))
        .toList();
  }
}
