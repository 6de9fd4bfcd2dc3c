package dev.kettlemark.checks;

import dev.kettlemark.features.ThresholdText;
import dev.kettlemark.library.Thresholds;
import dev.kettlemark.model.House;
import dev.kettlemark.model.Threshold;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The page of all rules, thresholds and mistakes, written from the program's own words. */
final class RuleTables {

  private static final String PAGES = "src/main/resources/dev/kettlemark/rules/";

  private RuleTables() {}

  static String page() {
    Catalogue catalogue = Catalogue.read();
    return """
        # What is checked

        This page is written by a test from the rules, the thresholds and the catalogue of mistakes; whoever changes one of them writes it anew.
        `kettlemark explain RULE` and `kettlemark explain THRESHOLD` say more in a terminal.

        ## Rules

        An *error* cannot be right or is dangerous; a *warning* is very likely wrong; *information* is worth knowing; a *hint* is a plainer form.
        That is how grave a finding mostly is; a rule may tell a milder case as less.
        A *quick fix* is offered where a change of the text can mend it; it leaves no error and no warning that was not there before.
        A finding may be accepted in the text with a reason, as [the language reference](../grammar/LANGUAGE.md#accepting-what-is-found) says.

        """ + rules(catalogue) + """

        ## Thresholds

        Limits that are common practice and no law of nature.
        A house may set its own with a `threshold` line.

        """ + thresholds() + """

        ## Mistakes

        What goes wrong in the trade, and which rule finds it.
        """ + mistakes(catalogue);
  }

  private static String rules(Catalogue catalogue) {
    List<List<String>> rows = new ArrayList<>();
    Mends mends = Mends.found();
    for (Rule rule : Rules.all()) {
      RuleInfo info = rule.info();
      rows.add(List.of(
          link(info.id()),
          info.severity().word(),
          info.summary(),
          catalogue.of(info).stream().map(Catalogue.Row::mistake).collect(Collectors.joining("; ")),
          mended(mends, info),
          accepted(info)));
    }
    return table(List.of("Rule", "Mostly", "Finds", "Such as", "Mended", "Accepted"), rows);
  }

  private static String mended(Mends mends, RuleInfo rule) {
    if (mends.safe().contains(rule.id())) {
      return "by a quick fix, unseen where only one thing can be meant";
    }
    return mends.any().contains(rule.id())
        ? "by a quick fix"
        : "by hand: " + Mends.NONE.getOrDefault(rule.id(), "");
  }

  private static String accepted(RuleInfo rule) {
    if (!rule.acceptable()) {
      return "never";
    }
    return rule.safety() ? "stays listed, for safety" : "with a reason";
  }

  private static String thresholds() {
    List<List<String>> rows = new ArrayList<>();
    for (Threshold<?> threshold : Threshold.all()) {
      House.Setting usual = Thresholds.usual(threshold);
      rows.add(List.of(
          "`" + threshold.word() + "`",
          ThresholdText.value(usual),
          threshold.meaning(),
          usual.reason().orElse(""),
          usual.source().orElse(""),
          usual.on().map(Object::toString).orElse("")));
    }
    return table(List.of("Threshold", "Usual", "Is", "Because", "Source", "Looked at"), rows);
  }

  private static String mistakes(Catalogue catalogue) {
    return catalogue.groups().stream()
        .map(group -> "\n### " + group + "\n\n"
            + table(
                List.of("Mistake", "Found by"),
                catalogue.rows().stream()
                    .filter(row -> row.group().equals(group))
                    .map(row -> List.of(row.mistake(), foundBy(row)))
                    .toList()))
        .collect(Collectors.joining());
  }

  private static String foundBy(Catalogue.Row row) {
    return row.rules().isEmpty()
        ? "not checked, because " + row.whyNot()
        : row.rules().stream().map(RuleTables::link).collect(Collectors.joining(", "));
  }

  private static String link(String id) {
    return "[`" + id + "`](" + PAGES + id + ".md)";
  }

  private static String table(List<String> heads, List<List<String>> rows) {
    StringBuilder table = new StringBuilder();
    table.append(line(heads)).append("|---".repeat(heads.size())).append("|\n");
    rows.forEach(row -> table.append(line(row)));
    return table.toString();
  }

  private static String line(List<String> cells) {
    return "| "
        + cells.stream().map(cell -> cell.replace("|", "\\|")).collect(Collectors.joining(" | "))
        + " |\n";
  }
}
