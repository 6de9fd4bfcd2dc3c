package dev.kettlemark.protocol.wire;

import org.eclipse.lsp4j.Diagnostic;

/** A finding that remembers the form in which it was sent. */
public final class ResentDiagnostic extends Diagnostic implements Resent {

  private final transient Form form = new Form();

  @Override
  public Form form() {
    return form;
  }
}
