package dev.kettlemark.checks;

import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reports a gelatine that does not say how strong it gels. */
public final class GelatineWithoutBloom implements Rule {

  private static final RuleInfo INFO = RuleInfo.warning(
      "gelatine-without-bloom", "a gelatine does not say its strength, so its dose is a guess");

  /** Grades as they are sold; common practice, no source. */
  private static final List<String> GRADES = List.of("150", "200", "250");

  private static final Pattern GRADE = Pattern.compile("(?<!\\d)([1-3]\\d0)(?!\\d)");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject)
        .filter(GelatineWithoutBloom::tells)
        .map(own -> finding(subject, own))
        .stream()
        .toList();
  }

  /** Whether an ingredient is told of here, so that no other rule needs to speak of it. */
  static boolean tells(Ingredient own) {
    return own.hasRole("gelling")
        && isGelatine(own)
        && own.facts().first("bloom").isEmpty();
  }

  /** A gel that is called so but suits vegans is another one. */
  private static boolean isGelatine(Ingredient own) {
    Stream<String> names = Stream.concat(
        Stream.of(own.name().value(), own.title().orElse("")),
        own.facts().all("label").flatMap(label -> label.text().map(Located::value).stream()));
    return !own.facts().says("suits", "vegan")
        && names.anyMatch(name -> name.toLowerCase(Locale.ROOT).contains("gelatin"));
  }

  private static Finding finding(Subject subject, Ingredient own) {
    Columns columns = new Columns(subject.section());
    Finding finding = INFO.at(
            own.name().span(), "`%s` has no `bloom`", own.name().value())
        .because("for the same gel 250 bloom takes 23–40 % less than 150 bloom; the rules of the"
            + " trade, square root or linear, disagree on how much");
    for (String grade : grades(own)) {
      finding = finding.withFix(new Fix(
          "Add `bloom " + grade + "`",
          List.of(columns.addFact(Optional.of("density"), "bloom", grade))));
    }
    return finding;
  }

  /** The grade in its name, or else the usual ones. */
  private static List<String> grades(Ingredient own) {
    Matcher grade = GRADE.matcher(own.name().value() + " " + own.title().orElse(""));
    return grade.find() ? List.of(grade.group(1)) : GRADES;
  }
}
