package dev.kettlemark.checks;

import dev.kettlemark.model.Connective;
import dev.kettlemark.syntax.Atom;
import dev.kettlemark.syntax.Clause;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;

/** Reports {@code to taste} behind an amount or a step, where a figure is what is made again. */
public final class ToTaste implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("to-taste", "an amount or a step ends at somebody's taste");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<Finding> findings = new ArrayList<>();
    for (Line line : subject.section().lines()) {
      for (Clause clause : line.clauses()) {
        if (isTaste(clause) && !(line instanceof Line.SectionLine)) {
          findings.add(finding(subject, clause));
        }
      }
    }
    return findings;
  }

  private static Finding finding(Subject subject, Clause clause) {
    return INFO.at(clause.span(), "`to taste` is another figure for every cook")
        .because("what was made once cannot be made again; the figure on the line is what counts")
        .withFix(Fix.replace("Leave `to taste` out", withSpace(subject.text(), clause.span()), ""));
  }

  private static boolean isTaste(Clause clause) {
    return clause.word() == Connective.TO
        && clause.groups().size() == 1
        && clause.groups().get(0).atoms().size() == 1
        && clause.groups().get(0).atoms().get(0) instanceof Atom.NameAtom name
        && name.text().equals("taste");
  }

  /** The clause with the space before it. */
  private static Span withSpace(String text, Span span) {
    int start = span.start();
    while (start > 0 && text.charAt(start - 1) == ' ') {
      start--;
    }
    return new Span(start, span.end());
  }
}
