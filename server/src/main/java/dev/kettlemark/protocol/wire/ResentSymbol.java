package dev.kettlemark.protocol.wire;

import org.eclipse.lsp4j.DocumentSymbol;

/** An item of the outline that remembers the form in which it was sent, with all below it. */
public final class ResentSymbol extends DocumentSymbol implements Resent {

  private final transient Form form = new Form();

  @Override
  public Form form() {
    return form;
  }
}
