package dev.kettlemark.features;

/**
 * Something that has a name and is spoken of by it.
 *
 * @param kind what it is
 * @param owner the formula that a stage or basis belongs to, or the house of a tool; empty for what is global
 * @param name as written
 */
public record Symbol(Kind kind, String owner, String name) {

  /** The kinds of things that have names. */
  public enum Kind {
    /** An ingredient, formula or variant. */
    MATERIAL("material"),
    HOUSE("house"),
    PRODUCT("product"),
    TRIAL("trial"),
    SHEET("sheet"),
    STAGE("stage"),
    /** A basis that a formula declares. */
    BASIS("basis"),
    /** A bowl, pan, mould, frame or scale of a house. */
    TOOL("tool");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** The word for it in a sentence. */
    public String word() {
      return word;
    }
  }

  static Symbol global(Kind kind, String name) {
    return new Symbol(kind, "", name);
  }

  /** The same thing under another name; what belongs to it follows. */
  Symbol renamed(Symbol target, String newName) {
    if (equals(target)) {
      return new Symbol(kind, owner, newName);
    }
    boolean belongs = owner.equals(target.name)
        && (kind == Kind.TOOL
            ? target.kind == Kind.HOUSE
            : (kind == Kind.STAGE || kind == Kind.BASIS) && target.kind == Kind.MATERIAL);
    return belongs ? new Symbol(kind, newName, name) : this;
  }
}
