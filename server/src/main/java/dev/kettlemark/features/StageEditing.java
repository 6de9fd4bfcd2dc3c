package dev.kettlemark.features;

import dev.kettlemark.model.Formula;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Operand;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.syntax.SectionWord;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The stages of a formula's text: their lines, and the names that their steps speak of. */
final class StageEditing {

  private final RefactoringSite site;
  private final Formula formula;

  StageEditing(RefactoringSite site, Formula formula) {
    this.site = site;
    this.formula = formula;
  }

  /** The stage that the cursor's line stands in, its heading included. */
  Optional<Integer> stageAt(int offset) {
    Optional<Integer> found = Optional.empty();
    for (int i = 0; i < formula.stages().size(); i++) {
      if (formula.stages().get(i).span().start() <= offset) {
        found = Optional.of(i);
      }
    }
    return found;
  }

  /** The stage whose heading is selected, and nothing else. */
  Optional<Integer> headingAt() {
    return stageAt(site.lines().end())
        .filter(i -> site.lines().contains(formula.stages().get(i).span()))
        .filter(i -> !site.hasSelection());
  }

  /** From the heading's line to the line at which the next stage starts, comments above it left out. */
  Span block(int index) {
    int start = site.lineStart(formula.stages().get(index).span().start());
    int end = index + 1 < formula.stages().size()
        ? site.lineStart(formula.stages().get(index + 1).span().start())
        : site.text().length();
    return new Span(start, withoutComments(start, end));
  }

  /** Where a new stage goes that stands above another: above the comments of its heading too. */
  int above(int index) {
    int heading = site.lineStart(formula.stages().get(index).span().start());
    return withoutComments(0, heading);
  }

  /** The end of a stretch without the comments at its end that stand at the margin. */
  private int withoutComments(int start, int end) {
    int stop = end;
    while (stop > start) {
      int line = site.lineStart(stop - 1);
      if (line < start || !site.text().startsWith("#", line)) {
        break;
      }
      stop = line;
    }
    return stop;
  }

  /** The lines of a stage below its heading, whole, without blank ones at the end. */
  List<Span> lines(int index) {
    Span block = block(index);
    List<Span> lines = new ArrayList<>();
    int offset = site.nextLine(formula.stages().get(index).span().end());
    while (offset < block.end()) {
      int next = Math.min(block.end(), site.nextLine(offset));
      if (next <= offset) {
        break;
      }
      lines.add(new Span(offset, next));
      offset = next;
    }
    return lines;
  }

  /** What stands on a whole line. */
  Optional<Line> on(Span wholeLine) {
    return site.entry().section().lines().stream()
        .filter(line -> !(line instanceof Line.EmptyLine))
        .filter(line ->
            wholeLine.start() <= line.span().start() && line.span().start() < wholeLine.end())
        .findFirst();
  }

  /** A whole line with its line end, also at the end of a text without one. */
  String text(Span wholeLine) {
    String text = wholeLine.of(site.text());
    return text.endsWith("\n") || text.endsWith("\r") ? text : text + site.lineBreak();
  }

  static boolean isWeighed(Line line) {
    return line instanceof Line.AmountLine
        || line instanceof Line.SufficientLine
        || line instanceof Line.TakeLine;
  }

  static boolean isHeading(Line line) {
    return line instanceof Line.SectionLine heading && heading.keyword() == SectionWord.STAGE;
  }

  /** What stands in a stage from its amounts and takes, in order. */
  static List<String> contents(Stage stage) {
    return Stream.concat(
            stage.amounts().stream().map(line -> line.ingredient().value()),
            stage.takes().stream().map(take -> take.stage().value()))
        .distinct()
        .toList();
  }

  /** The names a step speaks of. */
  static Set<String> names(Statement step) {
    return step.names().stream()
        .map(Located::value)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static Stream<String> name(Located<Operand> operand) {
    return operand.value() instanceof Operand.Name name ? Stream.of(name.word()) : Stream.empty();
  }

  /**
   * A step that speaks of other names: each list of names is written anew where one of them changes.
   *
   * @param names the names that stand for one
   */
  static List<TextEdit> renamed(Statement step, Function<String, List<String>> names) {
    List<TextEdit> edits = new ArrayList<>();
    list(step.objects(), names).ifPresent(edits::add);
    step.clauses().forEach(clause -> list(clause.operands(), names).ifPresent(edits::add));
    return edits;
  }

  private static Optional<TextEdit> list(
      List<Located<Operand>> operands, Function<String, List<String>> names) {
    List<Located<Operand>> named =
        operands.stream().filter(o -> o.value() instanceof Operand.Name).toList();
    List<String> old = named.stream().flatMap(StageEditing::name).toList();
    Set<String> fresh = new LinkedHashSet<>();
    old.forEach(name -> fresh.addAll(names.apply(name)));
    return named.isEmpty() || old.equals(List.copyOf(fresh))
        ? Optional.empty()
        : Optional.of(new TextEdit(
            named.get(0).span().to(named.get(named.size() - 1).span()), String.join(", ", fresh)));
  }

  /** A text with those edits that fall into a stretch of the section. */
  String edited(Span wholeLine, List<TextEdit> edits) {
    List<TextEdit> inside = edits.stream()
        .filter(edit -> wholeLine.contains(edit.span()))
        .map(edit -> edit.shiftedBy(-wholeLine.start()))
        .toList();
    return TextEdit.applyAll(text(wholeLine), inside);
  }

  /** Why a stage cannot be taken apart: who else speaks of it; empty where nobody does. */
  Optional<String> spokenOf(String stage) {
    Symbol symbol = new Symbol(Symbol.Kind.STAGE, site.name(), stage);
    return site.snapshot().library().ownDocuments().stream()
        .flatMap(document -> Symbols.in(site.snapshot(), document))
        .filter(found -> found.symbol().equals(symbol) && !found.entry().equals(site.entry()))
        .flatMap(found -> found.entry().declaration().stream())
        .findFirst()
        .map(other -> "`" + other.name().value() + "` speaks of stage `" + stage + "`");
  }

  /** Why the stages of a formula cannot be changed: it has variants; empty where it has none. */
  Optional<String> inherited() {
    return site.variants().stream()
        .findFirst()
        .map(variant -> "variant `" + variant + "` is made of these stages");
  }

  /** The one stage that takes all of another; empty where it is taken in parts, twice or not at all. */
  Optional<Integer> taker(int index) {
    String name = formula.stages().get(index).name().value();
    List<Integer> takers = new ArrayList<>();
    for (int i = 0; i < formula.stages().size(); i++) {
      formula.stages().get(i).takes().stream()
          .filter(take -> take.stage().value().equals(name))
          .map(take -> take.share().doubleValue() == 1)
          .forEach(isAll -> takers.add(isAll ? 1 : -1));
    }
    boolean isOnce = takers.size() == 1 && takers.get(0) > 0;
    return isOnce
        ? Stream.iterate(0, i -> i + 1)
            .limit(formula.stages().size())
            .filter(i -> formula.stages().get(i).takes().stream()
                .anyMatch(take -> take.stage().value().equals(name)))
            .findFirst()
            .filter(i -> i > index)
        : Optional.empty();
  }

  /** A name that no stage, basis or material of the formula bears. */
  String freeName(String wanted) {
    return Stream.iterate(1, count -> count + 1)
        .map(count -> count == 1 ? wanted : wanted + "-" + count)
        .filter(name -> formula.stage(name).isEmpty()
            && formula.basis(name).isEmpty()
            && formula.amounts().stream()
                .noneMatch(line -> line.ingredient().value().equals(name)))
        .findFirst()
        .orElseThrow();
  }
}
