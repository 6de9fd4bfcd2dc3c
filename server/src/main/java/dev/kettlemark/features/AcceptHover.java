package dev.kettlemark.features;

import dev.kettlemark.checks.Acceptances;
import dev.kettlemark.checks.Finding;
import dev.kettlemark.checks.Rule;
import dev.kettlemark.checks.RuleInfo;
import dev.kettlemark.checks.RulePages;
import dev.kettlemark.checks.Rules;
import dev.kettlemark.checks.Verdict;
import dev.kettlemark.library.Entry;
import dev.kettlemark.model.Acceptance;
import dev.kettlemark.model.Threshold;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** An acceptance by what it accepts. */
final class AcceptHover implements HoverAnswer {

  /** More of one kind are counted, not told. */
  private static final int MOST_TOLD = 8;

  @Override
  public Optional<HoverText> to(Pointed pointed) {
    return pointed
        .statement()
        .filter(line -> line.head().text().equals(Acceptance.WORD))
        .flatMap(line -> Acceptances.in(pointed.entry()).stream()
            .filter(acceptance -> acceptance.span().equals(line.span()))
            .findFirst())
        .flatMap(acceptance -> Rules.named(acceptance.rule().value())
            .map(Rule::info)
            .map(rule -> pointed.text(markdown(pointed, rule, acceptance), acceptance.span())));
  }

  private static Markdown markdown(Pointed pointed, RuleInfo rule, Acceptance acceptance) {
    Markdown markdown = new Markdown()
        .paragraph("**" + rule.id() + "** — " + rule.severity().word() + ": "
            + Markdown.plain(rule.summary()));
    List<Threshold<?>> thresholds = RulePages.thresholds(rule.id());
    if (!thresholds.isEmpty()) {
      markdown.paragraph("A house may set "
          + thresholds.stream()
              .map(threshold -> "`" + threshold.word() + "`")
              .collect(Collectors.joining(", "))
          + ".");
    }
    List<Finding> accepted = Rules.judged(pointed.snapshot(), pointed.entry()).accepted().stream()
        .filter(known -> known.acceptance().equals(acceptance))
        .map(Verdict.Accepted::finding)
        .toList();
    markdown.paragraph(accepted.isEmpty() ? "Accepts nothing at present." : "Accepts:");
    if (!accepted.isEmpty()) {
      markdown.paragraph(String.join(
          "\n",
          accepted.stream()
              .limit(MOST_TOLD)
              .map(finding -> "- " + told(pointed, finding))
              .toList()));
    }
    if (accepted.size() > MOST_TOLD) {
      markdown.paragraph("and " + (accepted.size() - MOST_TOLD) + " more.");
    }
    if (rule.safety()) {
      markdown.paragraph("It is a matter of safety, and so stays listed.");
    }
    return markdown;
  }

  private static String told(Pointed pointed, Finding finding) {
    Entry entry = pointed.entry();
    String place = pointed
        .snapshot()
        .library()
        .document(entry.uri())
        .map(document ->
            document.text().source().lineAt(entry.place(finding.span()).span().start()) + 1)
        .map(line -> "line " + line + ": ")
        .orElse("");
    return place + Markdown.plain(finding.message());
  }
}
