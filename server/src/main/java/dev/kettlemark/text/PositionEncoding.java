package dev.kettlemark.text;

/** The units in which an editor counts columns. */
public enum PositionEncoding {
  UTF8("utf-8"),
  UTF16("utf-16"),
  UTF32("utf-32");

  private final String word;

  PositionEncoding(String word) {
    this.word = word;
  }

  /** The name of the encoding in the language server protocol. */
  public String word() {
    return word;
  }

  /** Units that a code point takes; a lone surrogate counts as the replacement character. */
  int unitsOf(int codePoint) {
    return switch (this) {
      case UTF8 -> codePoint < 0x80 ? 1 : codePoint < 0x800 ? 2 : codePoint < 0x10000 ? 3 : 4;
      case UTF16 -> Character.charCount(codePoint);
      case UTF32 -> 1;
    };
  }
}
