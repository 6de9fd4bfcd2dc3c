package dev.kettlemark;

import dev.kettlemark.model.Component;
import dev.kettlemark.model.FactForms;
import dev.kettlemark.model.FactWord;
import dev.kettlemark.model.Form;
import dev.kettlemark.model.State;
import dev.kettlemark.model.Threshold;
import dev.kettlemark.model.Unit;
import dev.kettlemark.model.Verb;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.reading.Reading;
import dev.kettlemark.reading.ReadingProblem;
import dev.kettlemark.science.SugarStage;
import dev.kettlemark.syntax.ParsedText;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.syntax.SyntaxProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The lists of the language reference, written from the program's own words. */
final class LanguageTables {

  /** The fact words of each section, by the heading it has in the reference. */
  static final Map<String, Set<String>> FACTS = sections();

  private static final Map<Verb.Effect, String> EFFECTS = Map.of(
      Verb.Effect.MERGE, "brings together",
      Verb.Effect.COOK, "cooks",
      Verb.Effect.BOIL, "boils",
      Verb.Effect.HEAT, "changes heat",
      Verb.Effect.AERATE, "beats air in",
      Verb.Effect.WAIT, "waits",
      Verb.Effect.SHAPE, "shapes",
      Verb.Effect.NONE, "leaves as is");

  private static final Map<State.Line, String> LINES = Map.of(
      State.Line.MIX, "wetting and dissolving",
      State.Line.FOAM, "foam",
      State.Line.SYRUP, "syrup",
      State.Line.SETTING, "setting and drying",
      State.Line.COAT, "coat");

  private LanguageTables() {}

  /** Every list by the name that its marker comment has. */
  static Map<String, String> all() {
    Map<String, String> tables = new LinkedHashMap<>();
    tables.put("mistakes", mistakes());
    tables.put("units", units());
    tables.put("thresholds", thresholds());
    tables.put("components", components());
    tables.put("verbs", verbs());
    String meaning = "Meaning; where it is missing";
    tables.put("facts-house", forms("Fact", meaning, FactForms.HOUSE));
    tables.put("facts-ingredient", forms("Fact", meaning, FactForms.INGREDIENT));
    tables.put("facts-formula", forms("Fact", meaning, FactForms.FORMULA));
    tables.put("changes", forms("Change", "Does", FactForms.VARIANT_CHANGE));
    tables.put("facts-product", forms("Fact", meaning, FactForms.PRODUCT));
    tables.put("facts-trial", forms("Fact", meaning, FactForms.TRIAL));
    tables.put("facts-sheet", forms("Fact", "Meaning", FactForms.SHEET));
    tables.put("states", states());
    tables.put("sugar-stages", sugarStages());
    tables.put("words", words());
    tables.put("facts", facts());
    return tables;
  }

  private static Map<String, Set<String>> sections() {
    Map<String, Set<String>> sections = new LinkedHashMap<>();
    sections.put("House", FactWord.HOUSE);
    sections.put("Ingredient", FactWord.INGREDIENT);
    sections.put("Formula", FactWord.FORMULA);
    sections.put("Variant", FactWord.VARIANT_CHANGE);
    sections.put("Product", FactWord.PRODUCT);
    sections.put("Trial", FactWord.TRIAL);
    sections.put("Sheet", FactWord.SHEET);
    return sections;
  }

  /** A line with a mistake, what stands around it, and the line as it is meant. */
  private record Mistake(String above, String written, String mended) {

    private static final String FORMULA = "formula some-formula\n";
    private static final String STAGE = FORMULA + "stage pot\n";

    /** The program's own words for it. */
    String message() {
      Section section = ParsedText.of(above + written + "\n").sections().get(0).section();
      return Stream.concat(
              section.problems().stream().map(SyntaxProblem::message),
              Reading.of(section).problems().stream().map(ReadingProblem::message))
          .findFirst()
          .orElse("nothing is wrong with it");
    }
  }

  private static final List<Mistake> MISTAKES = List.of(
      new Mistake(Mistake.STAGE, "note \"soft", "note \"soft\""),
      new Mistake(Mistake.FORMULA, "version 2 on 2026-02-30", "version 2 on 2026-03-02"),
      new Mistake(Mistake.STAGE, "% white-sugar", "36.00 % white-sugar"),
      new Mistake(Mistake.STAGE, "cook to 143 °C +-", "cook to 143 °C +- 1"),
      new Mistake(Mistake.STAGE, "blend agar,", "blend agar, caster-sugar"),
      new Mistake(Mistake.STAGE, "part of foam", "part 1/2 of foam"),
      new Mistake(Mistake.STAGE, "2-3 % agar", "2.50 % agar"),
      new Mistake(Mistake.STAGE, "5 °C agar", "5 g agar"),
      new Mistake(Mistake.STAGE, "5.00 % brown sugar", "5.00 % brown-sugar"),
      new Mistake(Mistake.STAGE, "5.00 %", "5.00 % agar"),
      new Mistake(Mistake.STAGE, "foldd nuts", "fold nuts"),
      new Mistake(Mistake.STAGE, "on low", "whip on low"),
      new Mistake(Mistake.FORMULA, "5.00 % agar", "stage pot"),
      new Mistake(Mistake.FORMULA, "bacth 900 g", "batch 900 g"),
      new Mistake("", "batch 900 g", "formula some-formula"));

  private static String mistakes() {
    return table(
        List.of("Written", "Told", "Mended"),
        MISTAKES.stream()
            .map(mistake ->
                List.of(code(mistake.written()), mistake.message(), code(mistake.mended()))));
  }

  private static String units() {
    return table(
        List.of("Unit", "Also written", "Measures", "Is exactly"),
        Arrays.stream(Unit.values())
            .map(unit -> List.of(
                code(unit.symbol()),
                codes(unit.spellings().stream().skip(1)),
                unit.dimension().name().toLowerCase(Locale.ROOT),
                factor(unit))));
  }

  private static String factor(Unit unit) {
    String base = switch (unit.dimension()) {
      case SHARE, HUMIDITY -> " of the whole";
      case MASS -> " g";
      case VOLUME -> " mL";
      case TIME -> " s";
      case LENGTH -> " m";
      case TEMPERATURE -> " °C as a difference";
      case COUNT -> " piece";
      case DENSITY -> " g/mL";
      case ACIDITY -> " pH";
      case ACTIVITY -> " aw";
    };
    String numerator = grouped(unit.factor().getNumerator().toString());
    String denominator = grouped(unit.factor().getDenominator().toString());
    return numerator + (denominator.equals("1") ? "" : " / " + denominator) + base;
  }

  /** Digits in threes, divided by no-break spaces; points and commas are for decimals. */
  private static String grouped(String digits) {
    return digits.replaceAll("\\B(?=(\\d{3})+$)", "\u00a0");
  }

  private static String thresholds() {
    return table(
        List.of("Word", "Is"),
        Threshold.all().stream()
            .map(threshold -> List.of(code(threshold.word()), threshold.meaning())));
  }

  private static String components() {
    return table(
        List.of("Component", "Counts as"),
        Arrays.stream(Component.values())
            .map(component -> List.of(code(component.word()), plain(component.family()))));
  }

  private static String verbs() {
    return table(
        List.of("Verb", "Takes", "What it does to the mass", "Meaning"),
        Arrays.stream(Verb.values())
            .map(verb -> List.of(
                code(verb.word()),
                verb.form().written(),
                named(EFFECTS, verb.effect()),
                verb.meaning())));
  }

  private static String forms(String head, String meaning, List<Form> forms) {
    return table(
        List.of(head, "Form", meaning),
        forms.stream().map(form -> List.of(code(form.word()), form.written(), form.meaning())));
  }

  private static String states() {
    return Arrays.stream(State.Line.values())
        .flatMap(line -> Arrays.stream(State.values())
            .filter(state -> state.line() == line)
            .sorted((one, other) -> one.reaches(other) ? other.reaches(one) ? 0 : 1 : -1))
        .map(state -> List.of(code(state.word()), named(LINES, state.line()), state.look()))
        .collect(Collectors.collectingAndThen(
            Collectors.toList(),
            rows -> table(List.of("State", "Group", "At the bench"), rows.stream())));
  }

  private static String sugarStages() {
    return table(
        List.of("Word", "°C", "°F as printed", "At the bench"),
        Arrays.stream(SugarStage.values())
            .map(stage -> List.of(
                code(stage.word()),
                range(stage.range().low().celsius(), stage.range().high().celsius()),
                range(
                    stage.rangePrintedInFahrenheit().low().fahrenheit(),
                    stage.rangePrintedInFahrenheit().high().fahrenheit()),
                stage.look())));
  }

  private static String range(double low, double high) {
    long from = Math.round(low);
    long to = Math.round(high);
    return from == to ? "" + from : from + "–" + to;
  }

  private static String words() {
    Map<List<Vocabulary.Term>, List<String>> facts = Vocabulary.facts().stream()
        .collect(Collectors.groupingBy(Vocabulary::of, LinkedHashMap::new, Collectors.toList()));
    return facts.entrySet().stream()
        .map(list -> codes(list.getValue().stream()) + ":\n\n"
            + table(
                List.of("Word", "Meaning"),
                list.getKey().stream().map(term -> List.of(code(term.word()), term.meaning()))))
        .collect(Collectors.joining("\n"));
  }

  private static String facts() {
    Map<String, List<String>> sections = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    FACTS.forEach((section, words) -> words.forEach(word -> sections
        .computeIfAbsent(word, key -> new ArrayList<>())
        .add(section.toLowerCase(Locale.ROOT))));
    FactWord.STAGE.forEach(
        word -> sections.computeIfAbsent(word, key -> new ArrayList<>()).add("stage"));
    return table(
        List.of("Fact", "Sections"),
        sections.entrySet().stream()
            .map(entry -> List.of(code(entry.getKey()), String.join(", ", entry.getValue()))));
  }

  private static String table(List<String> heads, Stream<List<String>> rows) {
    Function<List<String>, String> line = cells -> "| " + String.join(" | ", cells) + " |\n";
    return line.apply(heads)
        + "|---".repeat(heads.size())
        + "|\n"
        + rows.map(line).collect(Collectors.joining());
  }

  private static String code(String word) {
    return "`" + word + "`";
  }

  private static String codes(Stream<String> words) {
    return words.map(LanguageTables::code).collect(Collectors.joining(", "));
  }

  private static String plain(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static <K> String named(Map<K, String> names, K key) {
    return names.getOrDefault(key, "?");
  }
}
