package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Experiment.StepPlace;
import dev.kettlemark.answers.Change;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.AmountLine;
import dev.kettlemark.model.Connective;
import dev.kettlemark.model.Located;
import dev.kettlemark.model.Quantity;
import dev.kettlemark.model.Stage;
import dev.kettlemark.model.Statement;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Variant;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.syntax.Line;
import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.Span;
import dev.kettlemark.text.TextEdit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Writes the changes of an answer into a formula's text, and nothing but them. */
final class AnswerEdits {

  /** The samples' own columns; the formatter moves a line to those of its neighbours. */
  private static final String AMOUNT = "  %5s %-14s%s";

  private static final String STEP = "  %-10s%s";

  private final Snapshot snapshot;
  private final Entry entry;
  private final ComputedFormula formula;
  private final String text;

  AnswerEdits(Snapshot snapshot, Entry entry, ComputedFormula formula) {
    this.snapshot = snapshot;
    this.entry = entry;
    this.formula = formula;
    this.text = entry.section().text();
  }

  /** The edits in the document's offsets; empty where a change touches what a parent wrote. */
  Optional<List<TextEdit>> of(List<Change> changes) {
    List<TextEdit> edits = new ArrayList<>();
    for (Change change : changes) {
      Optional<List<TextEdit>> own = of(change);
      if (own.isEmpty()) {
        return Optional.empty();
      }
      edits.addAll(own.get());
    }
    hydration(changes).ifPresent(edits::add);
    return Optional.of(
        edits.stream().map(edit -> edit.shiftedBy(entry.placed().offset())).toList());
  }

  private Optional<List<TextEdit>> of(Change change) {
    if (change instanceof Change.Cook cook) {
      return own(step(cook.place()).span()).map(span -> cook(cook));
    }
    if (change instanceof Change.Weigh weigh) {
      AmountLine line = line(weigh.line());
      return own(line.span())
          .flatMap(span -> number(span, line.measure().span().start()))
          .map(number -> List.of(figure(number, weigh.figure().text())));
    }
    if (change instanceof Change.Replace replace) {
      return replace(replace);
    }
    if (change instanceof Change.Add add) {
      String added = AMOUNT.formatted(
          add.figure().text(), add.figure().unit().symbol(), add.material().name());
      return lastAmount(formula.formula().stages().get(add.stage()))
          .map(span -> List.of(below(span, added)));
    }
    return note((Change.Warm) change).map(List::of);
  }

  private List<TextEdit> cook(Change.Cook cook) {
    Statement step = step(cook.place());
    Optional<Located<Quantity>> written = Stream.of(Connective.TO, Connective.AT, Connective.BELOW)
        .flatMap(word -> step.figure(word, Unit.Dimension.TEMPERATURE).stream())
        .findFirst();
    Optional<Span> number =
        written.flatMap(figure -> number(step.span(), figure.span().start()));
    if (number.isEmpty()) {
      return List.of(target(step, "to " + Display.celsius(cook.target())));
    }
    boolean isFahrenheit = written
        .flatMap(figure -> figure.value().unit())
        .filter(Unit.FAHRENHEIT::equals)
        .isPresent();
    return List.of(new TextEdit(number.get(), degrees(cook.target(), isFahrenheit)));
  }

  /** A step without a temperature gets one before its other clauses. */
  private static TextEdit target(Statement step, String clause) {
    int behind = step.objects().stream()
        .mapToInt(object -> object.span().end())
        .max()
        .orElse(step.word().span().end());
    return step.clauses().stream().mapToInt(other -> other.span().start()).min().stream()
        .mapToObj(start -> TextEdit.insert(start, clause + " "))
        .findFirst()
        .orElseGet(() -> TextEdit.insert(behind, " " + clause));
  }

  private static String degrees(Temperature target, boolean isFahrenheit) {
    return Display.trimmed(isFahrenheit ? target.fahrenheit() : target.celsius(), 1);
  }

  /** The amount, its name, and the name wherever else the formula speaks of what is gone. */
  private Optional<List<TextEdit>> replace(Change.Replace replace) {
    AmountLine line = line(replace.line());
    String old = line.ingredient().value();
    String fresh = replace.material().name();
    boolean isLeft = formula.formula().amounts().stream()
        .anyMatch(other ->
            !other.span().equals(line.span()) && other.ingredient().value().equals(old));
    Optional<Span> number = own(line.span())
        .filter(span -> !variantsName(old))
        .flatMap(span -> number(span, line.measure().span().start()));
    return number.map(span -> {
      List<TextEdit> edits = new ArrayList<>();
      edits.add(figure(span, replace.figure().text()));
      Stream<Span> names = isLeft
          ? Stream.of(line.ingredient().span())
          : Symbols.of(snapshot, entry).stream()
              .filter(found -> found.symbol().equals(Symbol.global(Symbol.Kind.MATERIAL, old)))
              .map(Occurrence::span);
      names.distinct().forEach(name -> edits.add(new TextEdit(name, fresh)));
      return edits;
    });
  }

  /** Whether a variant of this formula speaks of a material, and would find it no more. */
  private boolean variantsName(String material) {
    Set<String> family = new HashSet<>(Set.of(formula.formula().name().value()));
    List<Entry> variants = snapshot.library().entries(Kind.MATERIAL).stream()
        .filter(other -> other.declaration().filter(Variant.class::isInstance).isPresent())
        .toList();
    boolean grew = true;
    while (grew) {
      grew = variants.stream()
          .filter(other -> parent(other).filter(family::contains).isPresent())
          .map(other -> other.declaration().orElseThrow().name().value())
          .map(family::add)
          .reduce(false, Boolean::logicalOr);
    }
    Symbol symbol = Symbol.global(Symbol.Kind.MATERIAL, material);
    return variants.stream()
        .filter(other -> parent(other).filter(family::contains).isPresent())
        .flatMap(other -> Symbols.of(snapshot, other).stream())
        .anyMatch(found -> found.symbol().equals(symbol));
  }

  private static Optional<String> parent(Entry entry) {
    return entry
        .declaration()
        .flatMap(d -> d instanceof Variant variant ? variant.parent() : Optional.empty())
        .map(Located::value);
  }

  /** A powder that comes with water of its own must be wetted before anything else is done with it. */
  private Optional<TextEdit> hydration(List<Change> changes) {
    Optional<Change.Replace> powder = changes.stream()
        .flatMap(c -> c instanceof Change.Replace replace ? Stream.of(replace) : Stream.empty())
        .findFirst();
    Optional<Change.Add> water = changes.stream()
        .flatMap(c -> c instanceof Change.Add add ? Stream.of(add) : Stream.empty())
        .findFirst();
    if (powder.isEmpty() || water.isEmpty()) {
      return Optional.empty();
    }
    Stage stage = formula.formula().stages().get(water.get().stage());
    String step = STEP.formatted(
        "disperse",
        powder.get().material().name() + " in " + water.get().material().name()
            + " until hydrated");
    return stage.steps().stream()
        .map(Statement::span)
        .filter(span -> own(span).isPresent())
        .min(Comparator.comparingInt(Span::start))
        .map(span -> above(span, step));
  }

  private Optional<TextEdit> note(Change.Warm warm) {
    String note = STEP.formatted(
        "note",
        "\"Warm " + warm.vessel() + " to " + Display.celsius(warm.temperature())
            + " before the hot mass goes in.\"");
    return formula.formula().stages().stream()
        .filter(
            stage -> stage.vessel().filter(v -> v.value().equals(warm.vessel())).isPresent())
        .flatMap(stage -> stage.steps().stream().limit(1))
        .map(Statement::span)
        .filter(span -> own(span).isPresent())
        .reduce((one, later) -> later)
        .map(span -> above(span, note));
  }

  private Optional<Span> own(Span span) {
    return formula.formula().inherits(span) ? Optional.empty() : Optional.of(span);
  }

  private AmountLine line(int index) {
    return formula.amounts().lines().get(index).line();
  }

  private Statement step(StepPlace place) {
    return formula.formula().stages().get(place.stage()).steps().get(place.step());
  }

  /** The number, without its unit, of the figure that starts at a place of a line. */
  private Optional<Span> number(Span line, int start) {
    return entry.section().lines().stream()
        .filter(candidate -> candidate.span().equals(line))
        .flatMap((Line found) -> Pointed.figures(found))
        .filter(figure -> figure.span().start() == start)
        .map(figure -> figure.numberSpan())
        .findFirst();
  }

  /** A number in the columns of the old one: it ends where that ended, as far as there is room. */
  private TextEdit figure(Span number, String fresh) {
    int start = number.start();
    int room = fresh.length() - number.length();
    while (room > 0
        && start > 1
        && text.charAt(start - 1) == ' '
        && text.charAt(start - 2) == ' ') {
      start--;
      room--;
    }
    String padding = " ".repeat(Math.max(0, number.length() - fresh.length()));
    return new TextEdit(new Span(start, number.end()), padding + fresh);
  }

  private Optional<Span> lastAmount(Stage stage) {
    return stage.amounts().stream()
        .map(AmountLine::span)
        .filter(span -> own(span).isPresent())
        .max(Comparator.comparingInt(Span::start));
  }

  private TextEdit below(Span line, String content) {
    int next = LineEnds.next(text, line.end());
    String lineBreak = lineBreak();
    return next < 0
        ? TextEdit.insert(text.length(), lineBreak + content)
        : TextEdit.insert(next, content + lineBreak);
  }

  private TextEdit above(Span line, String content) {
    int start =
        Math.max(text.lastIndexOf('\n', line.start()), text.lastIndexOf('\r', line.start())) + 1;
    return TextEdit.insert(start, content + lineBreak());
  }

  private String lineBreak() {
    return LineEnds.of(text);
  }
}
