package dev.kettlemark.checks;

import java.util.List;

/** One kind of mistake: how it is recognised, told, and mended. */
public interface Rule {

  RuleInfo info();

  /** Whether it looks at what the other rules find, and so comes after all of them. */
  default boolean looksAtFindings() {
    return false;
  }

  /** Everything of this kind in one section; a pure function. */
  List<Finding> check(Subject subject);
}
