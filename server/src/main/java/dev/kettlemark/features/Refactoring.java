package dev.kettlemark.features;

import dev.kettlemark.text.TextEdit;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Another way to write a formula, or another formula made of it, ready to be chosen.
 *
 * @param title what it does, with its numbers
 * @param edits by URI, in absolute offsets; empty where it is refused or opens something
 * @param refused why it cannot be done here, in lower case without a full stop
 * @param opens what is opened instead of edits
 */
public record Refactoring(
    String title,
    Kind kind,
    Map<String, List<TextEdit>> edits,
    Optional<String> refused,
    Optional<Page> opens) {

  public Refactoring {
    edits = Map.copyOf(edits);
  }

  /** What sort of change it is. */
  public enum Kind {
    REWRITE,
    EXTRACT,
    INLINE,
    /** Puts settings in order; has no place in a menu about one line. */
    ORGANIZE
  }

  /**
   * A page about a formula that changes nothing.
   *
   * @param command what the client asks the server
   * @param arguments besides the document and the formula
   */
  public record Page(String command, String formula, Map<String, String> arguments) {

    public Page {
      arguments = Map.copyOf(arguments);
    }
  }

  static Refactoring of(String title, Kind kind, String uri, List<TextEdit> edits) {
    return new Refactoring(title, kind, Map.of(uri, edits), Optional.empty(), Optional.empty());
  }

  static Refactoring refused(String title, Kind kind, String why) {
    return new Refactoring(title, kind, Map.of(), Optional.of(why), Optional.empty());
  }

  static Refactoring opening(String title, Page page) {
    return new Refactoring(title, Kind.REWRITE, Map.of(), Optional.empty(), Optional.of(page));
  }
}
