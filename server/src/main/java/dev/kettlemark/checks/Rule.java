package dev.kettlemark.checks;

import java.util.List;

/** One kind of mistake: how it is recognised, told, and mended. */
public interface Rule {

  RuleInfo info();

  /** Whether it is about acceptances, and so looks at what all other rules have found. */
  default boolean isAboutAcceptances() {
    return false;
  }

  /** Whether it looks at lines alone and computes nothing, so that it holds in a text of any length. */
  default boolean isAboutReading() {
    return false;
  }

  /** Everything of this kind in one section; a pure function. */
  List<Finding> check(Subject subject);
}
