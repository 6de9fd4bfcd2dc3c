package dev.kettlemark.library;

/**
 * A part of a library that changes on its own, and that a result may depend on.
 *
 * @param what which sort of part
 * @param kind in whose name space; empty where that does not matter
 * @param name which one of that sort; empty where there is only one
 */
record Part(What what, String kind, String name) {

  enum What {
    NAMED,
    NAMES,
    CODE,
    TRIALS,
    SHEETS,
    HOUSES,
    LENGTH,
    OPENING,
    MENTION,
    FORMULAS,
    DAY,
    ALL
  }

  /** The entries of one name. */
  static Part named(Kind kind, String name) {
    return new Part(What.NAMED, kind.name(), name);
  }

  /** The names of a kind. */
  static Part names(Kind kind) {
    return new Part(What.NAMES, kind.name(), "");
  }

  /** The entries that bear a code. */
  static Part code(String code) {
    return new Part(What.CODE, "", code);
  }

  static Part trials(String formula) {
    return new Part(What.TRIALS, "", formula);
  }

  static Part sheets(String shown) {
    return new Part(What.SHEETS, "", shown);
  }

  static Part houses() {
    return new Part(What.HOUSES, "", "");
  }

  /** Whether a document is too long, and how long it is then. */
  static Part length(String uri) {
    return new Part(What.LENGTH, "", uri);
  }

  /** The first section of a document. */
  static Part opening(String uri) {
    return new Part(What.OPENING, "", uri);
  }

  /** Where the user speaks of a material. */
  static Part mention(String material) {
    return new Part(What.MENTION, "", material);
  }

  /** Which formulas are the user's. */
  static Part formulas() {
    return new Part(What.FORMULAS, "", "");
  }

  static Part day() {
    return new Part(What.DAY, "", "");
  }

  /** Whatever there is: changes whenever anything does. */
  static Part all() {
    return new Part(What.ALL, "", "");
  }
}
