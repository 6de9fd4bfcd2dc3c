package dev.kettlemark.protocol;

import java.util.List;
import java.util.Objects;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.Range;

/**
 * Names a list of findings by what is in it, so that the same findings have the same name.
 *
 * <p>It is the 64-bit hash FNV-1a (Fowler, Noll and Vo; Internet draft draft-eastlake-fnv, from memory),
 * as 32 bits are too few for a name that hides a changed finding when two are alike.
 */
final class ResultId {

  private static final long OFFSET_BASIS = 0xcbf29ce484222325L;
  private static final long PRIME = 0x100000001b3L;

  private long hash = OFFSET_BASIS;

  private ResultId() {}

  static String of(List<Diagnostic> diagnostics) {
    ResultId id = new ResultId();
    diagnostics.forEach(id::add);
    return diagnostics.size() + "-" + Long.toHexString(id.hash);
  }

  private void add(Diagnostic diagnostic) {
    add(diagnostic.getRange());
    add(diagnostic.getSeverity().getValue());
    add(diagnostic.getCode().getLeft());
    add(diagnostic.getMessage().isLeft() ? diagnostic.getMessage().getLeft() : "");
    for (DiagnosticRelatedInformation related : Objects.requireNonNullElse(
        diagnostic.getRelatedInformation(), List.<DiagnosticRelatedInformation>of())) {
      add(related.getLocation().getUri());
      add(related.getLocation().getRange());
      add(related.getMessage());
    }
  }

  private void add(Range range) {
    add(range.getStart().getLine());
    add(range.getStart().getCharacter());
    add(range.getEnd().getLine());
    add(range.getEnd().getCharacter());
  }

  private void add(String text) {
    add(text.length());
    text.chars().forEach(this::add);
  }

  private void add(int value) {
    for (int shift = 0; shift < Integer.SIZE; shift += Byte.SIZE) {
      hash = (hash ^ ((value >>> shift) & 0xff)) * PRIME;
    }
  }
}
