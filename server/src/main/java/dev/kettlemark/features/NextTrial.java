package dev.kettlemark.features;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.CookedStage;
import dev.kettlemark.analysis.FormulaVersion;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.analysis.Prediction;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.analysis.StepResult;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.TrialQuantity;
import dev.kettlemark.analysis.TrialReading;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Lookup;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.text.LineEnds;
import dev.kettlemark.text.TextEdit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A trial section for the next batch of a formula.
 *
 * <p>Every reading that can be predicted stands in it as a comment with its prediction, to be written
 * over and let stand as a line once it is measured; nothing predicted can pass for something measured.
 *
 * @param name the trial's own name, free in the library
 * @param text the section, ending with a line end
 */
public record NextTrial(String name, String text) {

  private static final Pattern NUMBERED = Pattern.compile("(.*?)(\\d+)");

  private static final String FACT = "  %-10s%s";

  /** A commented line in the columns of a fact. */
  private static final String BLANK = "  # measured  %-12s%-34s  %s";

  /** What is asked of the model: a figure of any size, only its unit counts. */
  private record Asked(TrialQuantity quantity, String words) {}

  /** The next trial of a formula or variant, with the predictions of its own batch. */
  public static Optional<NextTrial> of(Snapshot snapshot, String formula) {
    return snapshot
        .library()
        .find(Kind.MATERIAL, formula)
        .flatMap(entry -> Formulas.computed(snapshot, entry)
            .map(computed -> of(snapshot, entry, formula, computed)));
  }

  private static NextTrial of(
      Snapshot snapshot, Entry entry, String formula, ComputedFormula computed) {
    String name = freeName(snapshot, formula);
    List<String> lines = new ArrayList<>();
    lines.add("trial " + name + " of " + formula + day(snapshot)
        + snapshot
            .library()
            .houseFor(entry.uri())
            .flatMap(Entry::declaration)
            .map(house -> " at " + house.name().value())
            .orElse(""));
    FormulaVersion.of(computed.formula().facts())
        .flatMap(FormulaVersion::number)
        .ifPresent(number ->
            lines.add(FACT.formatted("version", Display.trimmed(number.doubleValue(), 3))));
    computed
        .amounts()
        .charge()
        .ifPresent(grams ->
            lines.add(FACT.formatted("batch", Display.trimmed(grams.doubleValue(), 2) + " g")));
    lines.addAll(readings(snapshot, formula, computed, lines));
    return new NextTrial(name, String.join("\n", lines) + "\n");
  }

  /** Without a day that is known, the user writes it. */
  private static String day(Snapshot snapshot) {
    LocalDate today = Lookup.today().ask(snapshot);
    return today.equals(LocalDate.MIN) ? "" : " on " + today;
  }

  /** The last numbered trial of the formula, or else of the library, counted on. */
  private static String freeName(Snapshot snapshot, String formula) {
    Stream<String> own = names(snapshot.library().trialsOf(formula));
    Stream<String> all = names(snapshot.library().entries(Kind.TRIAL));
    String last = Stream.concat(all, own)
        .filter(name -> NUMBERED.matcher(name).matches())
        .filter(name -> name.length() < 40)
        .reduce((one, later) -> later)
        .orElse("T-000");
    Matcher parts = NUMBERED.matcher(last);
    if (!parts.matches() || parts.group(2).length() > 9) {
      return free(snapshot, "T-", 3, 1);
    }
    return free(
        snapshot, parts.group(1), parts.group(2).length(), Integer.parseInt(parts.group(2)) + 1);
  }

  private static Stream<String> names(List<Entry> trials) {
    return trials.stream()
        .flatMap(entry -> entry.declaration().stream())
        .map(trial -> trial.name().value());
  }

  private static String free(Snapshot snapshot, String prefix, int digits, int from) {
    return Stream.iterate(from, count -> count + 1)
        .map(count ->
            prefix + "0".repeat(Math.max(0, digits - Integer.toString(count).length())) + count)
        .filter(name -> snapshot.library().find(Kind.TRIAL, name).isEmpty())
        .findFirst()
        .orElseThrow();
  }

  private static List<String> readings(
      Snapshot snapshot, String formula, ComputedFormula computed, List<String> head) {
    List<Asked> asked = computed.process().stages().stream()
        .flatMap(stage -> asked(computed, stage))
        .distinct()
        .toList();
    String questions = "trial question of " + formula + "\n"
        + String.join("\n", head.subList(1, head.size())) + "\n"
        + String.join(
            "\n",
            asked.stream()
                .map(one ->
                    FACT.formatted("measured", "1 " + one.quantity().unit() + " " + one.words()))
                .toList());
    Document document = Document.of("question:trial", questions);
    Snapshot with = snapshot.tried(snapshot.library().with(document));
    return document.entries().stream()
        .flatMap(entry -> with.result(Trials.COMPARED, entry).stream())
        .map(TrialComparison::readings)
        .filter(readings -> readings.size() == asked.size())
        .findFirst()
        .map(readings -> Stream.iterate(0, i -> i + 1)
            .limit(asked.size())
            .flatMap(i -> line(asked.get(i), readings.get(i)).stream())
            .toList())
        .orElse(List.of());
  }

  private static Stream<Asked> asked(ComputedFormula computed, StageResult stage) {
    List<Asked> asked = new ArrayList<>();
    String name = stage.name();
    boolean isLast = computed.process().last().filter(stage::equals).isPresent();
    if (CookedStage.lastCook(stage).isPresent()) {
      asked.add(new Asked(TrialQuantity.END, "end of " + name));
      asked.add(new Asked(TrialQuantity.WEIGHT, "weight of " + name));
    }
    stage.steps().stream()
        .filter(step -> step.merged().isPresent())
        .map(StepResult::step)
        .filter(step -> !step.objectNames().isEmpty())
        .map(step -> step.word().value() + " " + step.objectNames().get(0).value())
        .distinct()
        .forEach(step -> asked.add(new Asked(TrialQuantity.TEMPERATURE, step + " of " + name)));
    if (isLast) {
      asked.add(new Asked(TrialQuantity.DENSITY, "density of " + name));
      asked.add(new Asked(TrialQuantity.ACTIVITY, name + " at 24 h"));
      asked.add(new Asked(TrialQuantity.WEIGHT, "weight of " + name));
    }
    return asked.stream();
  }

  private static Optional<String> line(Asked asked, TrialReading reading) {
    TrialQuantity quantity = reading.measurement().quantity();
    Outcome<String> predicted = reading.predicted().map(prediction -> shown(quantity, prediction));
    return quantity == TrialQuantity.OTHER
        ? Optional.empty()
        : predicted
            .toOptional()
            .map(shown -> BLANK
                .formatted("? " + quantity.unit(), asked.words(), "predicted " + shown)
                .stripTrailing());
  }

  private static String shown(TrialQuantity quantity, Prediction prediction) {
    String low = quantity.figure(prediction.band().low());
    String high = quantity.figure(prediction.band().high());
    return low.equals(high)
        ? quantity.shown(prediction.best())
        : low + "–" + high + " " + quantity.unit();
  }

  /** Where the section goes: behind the formula's last trial, or else behind the formula itself. */
  static Optional<Refactoring> at(RefactoringSite site) {
    return of(site.snapshot(), site.name()).map(trial -> {
      Entry behind = site.snapshot().library().trialsOf(site.name()).stream()
          .reduce((one, later) -> later)
          .orElse(site.entry());
      return Refactoring.of(
          ActionTitle.of(
              "Begin trial " + trial.name(), " of " + site.name(), " with its predictions"),
          Refactoring.Kind.EXTRACT,
          behind.uri(),
          List.of(trial.behind(behind)));
    });
  }

  /** The edit that writes the section behind another. */
  public TextEdit behind(Entry entry) {
    String written = entry.section().text();
    int end = written.stripTrailing().length();
    String lineBreak = LineEnds.of(written);
    String section = lineBreak + lineBreak + text.stripTrailing().replace("\n", lineBreak);
    boolean isOpen = end == written.length();
    return TextEdit.insert(entry.placed().offset() + end, isOpen ? section + lineBreak : section);
  }
}
