package dev.kettlemark.bench.stdio;

import dev.kettlemark.library.Document;
import java.util.function.Consumer;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;

/** Keeps one text and reads all of it anew at each change. */
final class WholeReader implements Consumer<EchoServer.Edit> {

  private final StringBuilder text = new StringBuilder();
  private int sections;

  @Override
  public void accept(EchoServer.Edit edit) {
    if (edit.changes().isEmpty()) {
      text.setLength(0);
      text.append(edit.whole());
    }
    for (TextDocumentContentChangeEvent change : edit.changes()) {
      text.replace(
          offset(change.getRange().getStart()),
          offset(change.getRange().getEnd()),
          change.getText());
    }
    sections += Document.of("a.kettle", text.toString()).entries().size();
  }

  private int offset(Position position) {
    int start = 0;
    for (int line = 0; line < position.getLine(); line++) {
      start = text.indexOf("\n", start) + 1;
    }
    return start + position.getCharacter();
  }
}
