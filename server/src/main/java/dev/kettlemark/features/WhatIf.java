package dev.kettlemark.features;

import dev.kettlemark.analysis.Amounts.LineAmount;
import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.answers.Shelf;
import dev.kettlemark.comparison.LibraryComparison;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Measure;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Reason;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.fraction.BigFraction;

/**
 * What would become of a formula with one material in the place of another; nothing is edited.
 *
 * @param title what is asked
 * @param comparison of the library as it is with the library as it would be
 * @param then the library as it would be
 */
public record WhatIf(String title, LibraryComparison comparison, Snapshot then) {

  /** The command with which a client of ours opens the page. */
  public static final String OPEN = "kettlemark.whatIf.open";

  private static final String FACT = "  %-10s%s";

  /**
   * Tries a replacement.
   *
   * @param old what goes
   * @param by what comes: a name, or an amount and a name as a line says them
   */
  public static Outcome<WhatIf> of(Snapshot snapshot, String formula, String old, String by) {
    Optional<Entry> entry = snapshot.library().find(Kind.MATERIAL, formula);
    Optional<ComputedFormula> computed = entry.flatMap(e -> Formulas.computed(snapshot, e));
    Optional<Document> document =
        entry.flatMap(e -> snapshot.library().document(e.uri())).filter(d -> !d.builtIn());
    if (computed.isEmpty() || document.isEmpty()) {
      return Outcome.unknown(Reason.MISSING_FIGURE, "the library has no formula `%s`", formula);
    }
    String wanted = by.strip();
    int space = wanted.lastIndexOf(' ');
    String fresh = wanted.substring(space + 1);
    if (!computed.get().formula().amounts().stream()
        .anyMatch(line -> line.ingredient().value().equals(old))) {
      return Outcome.unknown(Reason.MISSING_FIGURE, "`%s` weighs no `%s`", formula, old);
    }
    if (snapshot.library().find(Kind.MATERIAL, fresh).isEmpty()) {
      return Outcome.unknown(Reason.MISSING_COMPOSITION, "nobody has described `%s`", fresh);
    }
    Optional<String> amount =
        space < 0 ? Optional.empty() : Optional.of(wanted.substring(0, space).strip());
    List<TextEdit> edits =
        new Swap(snapshot, entry.get(), computed.get(), old, fresh, amount).edits();
    Document after = Rewriting.of(document.get(), edits).after();
    Snapshot then = snapshot.tried(snapshot.library().with(after));
    return Outcome.known(new WhatIf(
        "What if " + old + " of " + formula + " were " + wanted,
        LibraryComparison.of(snapshot, then),
        then));
  }

  /** As a page of Markdown. */
  public String markdown() {
    return "_Only shown: no text has been changed._\n\n" + ChangesMarkdown.of(title, comparison);
  }

  /** For the material under the cursor: each thing that the pantry says stands in for it. */
  static List<Refactoring> at(RefactoringSite site) {
    return site.amount()
        .map(index -> site.line(index).ingredient().value())
        .map(old -> new Shelf(site.snapshot())
            .standIns(old).stream()
                .map(standIn -> standIn.material().name())
                .distinct()
                .limit(2)
                .map(by -> Refactoring.opening(
                    ActionTitle.of("What if " + old + " were " + by, ": show what changes"),
                    new Refactoring.Page(OPEN, site.name(), Map.of("replace", old, "by", by))))
                .toList())
        .orElse(List.of());
  }

  /** The replacement as it would stand in the text. */
  private record Swap(
      Snapshot snapshot,
      Entry entry,
      ComputedFormula computed,
      String old,
      String fresh,
      Optional<String> amount) {

    List<TextEdit> edits() {
      boolean isFormula = entry.declaration().filter(Formula.class::isInstance).isPresent();
      return (isFormula ? inFormula() : inVariant())
          .stream().map(edit -> edit.shiftedBy(entry.placed().offset())).toList();
    }

    /** Every name, and the first amount; the others keep theirs. */
    private List<TextEdit> inFormula() {
      List<TextEdit> edits = new ArrayList<>();
      Symbols.of(snapshot, entry).stream()
          .filter(found -> found.symbol().equals(Symbol.global(Symbol.Kind.MATERIAL, old)))
          .map(Occurrence::span)
          .distinct()
          .forEach(name -> edits.add(new TextEdit(name, fresh)));
      lines()
          .limit(1)
          .forEach(i -> measure(i)
              .ifPresent(text -> edits.add(new TextEdit(
                  computed.amounts().lines().get(i).line().measure().span(), text))));
      return edits;
    }

    /** A further change at the end of the facts; changes apply in the order written. */
    private List<TextEdit> inVariant() {
      String text = entry.section().text();
      int first = lines().findFirst().orElse(0);
      String line = FACT.formatted(
          "replace", old + " by " + measure(first).orElse(written(first)) + " " + fresh);
      Span heading = entry.section().lines().get(0).span();
      int end = entry.section().lines().stream()
          .skip(1)
          .takeWhile(l -> !(l instanceof Line.SectionLine))
          .map(l -> l.span())
          .filter(span -> !span.isEmpty())
          .reduce(heading, (one, later) -> later)
          .end();
      int lineEnd = end;
      while (lineEnd < text.length()
          && text.charAt(lineEnd) != '\n'
          && text.charAt(lineEnd) != '\r') {
        lineEnd++;
      }
      return List.of(TextEdit.insert(lineEnd, "\n" + line));
    }

    private IntStream lines() {
      return IntStream.range(0, computed.amounts().lines().size())
          .filter(
              i -> computed.amounts().lines().get(i).line().ingredient().value().equals(old));
    }

    /** The amount asked for, or what the pantry says of the pair; without either the amount stays. */
    private Optional<String> measure(int index) {
      return amount.or(() -> new Shelf(snapshot)
          .standIns(old).stream()
              .filter(standIn -> standIn.material().name().equals(fresh))
              .findFirst()
              .flatMap(standIn -> share(index)
                  .map(share -> WrittenFigure.of(
                              share
                                  .multiply(WrittenFigure.exact(standIn.share().fraction()))
                                  .multiply(100),
                              BasisRefactoring.PERCENT_DECIMALS,
                              new BigFraction(1, 200))
                          .text()
                      + " % of charge")));
    }

    private Optional<BigFraction> share(int index) {
      LineAmount line = computed.amounts().lines().get(index);
      return line.line().measure().value() instanceof Measure.Share
          ? line.share().toOptional()
          : Optional.empty();
    }

    private String written(int index) {
      LineAmount line = computed.amounts().lines().get(index);
      return WrittenAmount.of(line.line());
    }
  }
}
