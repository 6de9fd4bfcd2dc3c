package dev.kettlemark.protocol.wire;

import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * The nesting limit of a JSON text, checked before any parser sees it.
 *
 * <p>Readers of nested data call themselves once per level, so depth is what overflows a stack.
 */
final class JsonDepth {

  /** Levels; the deepest message that LSP 3.17 lets a client send has about fifteen, free-form settings included. */
  static final int DEEPEST = 200;

  private JsonDepth() {}

  /** Refuses a text whose arrays and objects nest deeper than {@link #DEEPEST}; looks at nothing else. */
  static void check(String json) throws Refusal {
    int depth = 0;
    boolean inString = false;
    for (int i = 0; i < json.length(); i++) {
      char c = json.charAt(i);
      if (c == '"') {
        inString = !inString;
      } else if (inString) {
        // The character after a backslash never ends a string.
        i += c == '\\' ? 1 : 0;
      } else if (c == '[' || c == '{') {
        if (++depth > DEEPEST) {
          throw Refusal.of(
              ResponseErrorCode.ParseError, "JSON nests deeper than " + DEEPEST + " levels");
        }
      } else if (c == ']' || c == '}') {
        depth--;
      }
    }
  }
}
