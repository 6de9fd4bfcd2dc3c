package dev.kettlemark.reading;

import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Statement;

/** Tells what is odd about the shape of an {@code accept} line. */
final class AcceptanceReader {

  private static final String FORM =
      "an acceptance reads `accept RULE \"why\"`, if need be with `until 2027-03-01` behind it";

  private AcceptanceReader() {}

  /** Passes a fact on; an acceptance that says more or less than one rule is reported. */
  static Statement checked(Body body, Statement fact) {
    if (fact.is(Acceptance.WORD)
        && (fact.objectNames().size() != 1
            || fact.objects().size() > 2
            || fact.clauses().size() > 1
            || fact.clauses().size() != fact.days(Connective.UNTIL).size())) {
      body.report(fact.span(), FORM);
    }
    return fact;
  }
}
