package dev.kettlemark.checks;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.Today;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which rules offer a fix for something on their pages or in the gallery, and which of those are safe. */
record Mends(Set<String> any, Set<String> safe) {

  /** What is spelt so that only one thing can be meant. */
  private static final Document BEYOND_DOUBT = Document.of("beyond-doubt.kettle", """
      formula syrup
        percent of charge
      stage pan
        12 ML  water
        .5 %   sea-salt
        99.5 % white-sugar
        warm   to 60 celsius
        rest   for 3 minutes
      """);

  /** Rules that offer no fix, and why a text edit cannot mend what they find. */
  static final Map<String, String> NONE = Map.ofEntries(
      Map.entry(
          "acidity-not-stood", "another agent, or the acid at another time: a choice of design"),
      Map.entry("additive-not-permitted", "the recipe must become another one for that market"),
      Map.entry("circular-formula", "any of the formulas of the circle may be the wrong one"),
      Map.entry("cook-out-of-tolerance", "what was measured is not rewritten"),
      Map.entry("fat-jump", "the pantry seldom has a kind with its fat pressed out"),
      Map.entry("impossible-weight", "what was measured is not rewritten"),
      Map.entry("loss-twice", "which of the two losses is real, only the kitchen knows"),
      Map.entry("material-total-off", "the mend stands in the other formula"),
      Map.entry("missing-lot", "the number stands on the bag"),
      Map.entry("missing-shelf", "how long it keeps is found out, and not made up"),
      Map.entry(
          "raw-nut-in-cool-mass", "whether a treated kind can be bought, only the supplier knows"),
      Map.entry(
          "sheet-without-tolerance", "the tolerance stands in the formula, and not on the sheet"),
      Map.entry("similar-ingredients", "it takes edits in all sections that use one of them"),
      Map.entry("thermometer-against-weight", "what was measured is not rewritten"),
      Map.entry("trial-of-older-version", "it wants a trial, and not an edit"),
      Map.entry("two-changes", "what was done is not rewritten"),
      Map.entry("uncounted-inversion", "it is told for information; the acid is mostly meant"),
      Map.entry("uneven-editions", "which of the two is right, only a reader of both can tell"),
      Map.entry("variant-changed-since-trial", "it wants a trial, and not an edit"),
      Map.entry("water-activity-off", "what was measured is not rewritten"),
      Map.entry("weight-off-prediction", "what was measured is not rewritten"));

  static Mends found() {
    List<Finding> findings = Stream.concat(
            Stream.concat(
                Rules.all().stream().map(rule -> RulePagesTest.block(rule, "Example")),
                SampleTexts.mistakes().stream()),
            Stream.of(BEYOND_DOUBT))
        .flatMap(Mends::findings)
        .toList();
    return new Mends(
        ids(findings.stream().filter(finding -> !finding.fixes().isEmpty())),
        ids(findings.stream().filter(finding -> finding.fixes().stream().anyMatch(Fix::safe))));
  }

  private static Set<String> ids(Stream<Finding> findings) {
    return findings.map(finding -> finding.rule().id()).collect(Collectors.toUnmodifiableSet());
  }

  private static Stream<Finding> findings(Document document) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all), Today.DAY);
    return document.entries().stream().flatMap(entry -> Rules.of(snapshot, entry).stream());
  }
}
