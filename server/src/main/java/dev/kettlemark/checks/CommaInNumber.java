package dev.kettlemark.checks;

import dev.kettlemark.model.Unit;
import dev.kettlemark.syntax.Figures;
import dev.kettlemark.syntax.Lexeme;
import dev.kettlemark.syntax.Section;
import dev.kettlemark.text.Excerpt;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reports a comma inside a number.
 *
 * <p>{@code 1,200} is twelve hundred in London and one and a fifth in Lyon: a factor of a thousand.
 */
public final class CommaInNumber implements Rule {

  private static final RuleInfo INFO = RuleInfo.error(
      "comma-in-number",
      "a comma in a number is a thousands mark to one reader, a point to another");

  private static final String GROUPS = "[1-9][0-9]{0,2}(,[0-9]{3})+(\\.[0-9]+)?";

  /** A figure or a range whose commas can be thousands marks. */
  private static final Pattern THOUSANDS = Pattern.compile(GROUPS + "([^0-9.,]+" + GROUPS + ")?");

  private static final Pattern TRAILING_ZEROS = Pattern.compile("(\\.[0-9]*?)0+(?![0-9])");
  private static final Pattern LONE_POINT = Pattern.compile("\\.(?![0-9])");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    Section section = subject.section();
    if (section.keyword().isEmpty() || section.text().indexOf(',') < 0) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < section.lexemes().size(); i++) {
      Lexeme lexeme = section.lexemes().get(i);
      if (lexeme.kind() == Lexeme.Kind.NUMBER) {
        String number = lexeme.span().of(section.text());
        if (number.indexOf(',') >= 0) {
          findings.add(finding(lexeme.span(), number, unitBehind(section, i)));
        }
      }
    }
    return findings;
  }

  private static Finding finding(Span span, String number, Optional<Unit> unit) {
    String shown = Excerpt.of(number);
    List<String> readings = readings(number, unit);
    Finding finding = readings.size() == 2
        ? INFO.at(span, "%s is %s or %s", shown, readings.get(0), readings.get(1))
            .because("a comma is a thousands mark to one reader and a decimal point to another")
        : INFO.at(span, "%s has a comma; a figure has a point and no thousands mark", shown)
            .because("a comma separates facts and names");
    String behind = unit.map(u -> " " + u.symbol()).orElse("");
    return finding.withFixes(readings.stream()
        .map(reading -> Fix.replace("Write `" + reading + behind + "`", span, reading))
        .toList());
  }

  /** What the figure can mean, the likelier reading first; nothing where no reading is a number. */
  private static List<String> readings(String number, Optional<Unit> unit) {
    List<String> readings = new ArrayList<>();
    boolean grouped = THOUSANDS.matcher(number).matches();
    boolean oneComma = number.indexOf(',') == number.lastIndexOf(',');
    if (grouped) {
      readings.add(number.replace(",", ""));
    }
    if (number.indexOf('.') >= 0 && number.indexOf('.') < number.indexOf(',') && oneComma) {
      readings.add(number.replace(".", "").replace(',', '.'));
    } else if (number.indexOf('.') < 0) {
      String point = number.replace(',', '.');
      readings.add(grouped ? withoutZeros(point) : withZero(point));
    }
    readings.removeIf(reading -> !Figures.hasValue(reading));
    if (readings.size() == 2
        && unit.filter(u -> u == Unit.PERCENT || u == Unit.GRAM_PER_MILLILITRE).isPresent()) {
      return List.of(readings.get(1), readings.get(0));
    }
    return readings;
  }

  private static String withoutZeros(String number) {
    return LONE_POINT.matcher(TRAILING_ZEROS.matcher(number).replaceAll("$1")).replaceAll("");
  }

  private static String withZero(String number) {
    return number.startsWith(".") ? "0" + number : number;
  }

  private static Optional<Unit> unitBehind(Section section, int index) {
    if (index + 1 >= section.lexemes().size()) {
      return Optional.empty();
    }
    Lexeme next = section.lexemes().get(index + 1);
    return next.kind() == Lexeme.Kind.UNIT
        ? Unit.of(next.span().of(section.text()))
        : Optional.empty();
  }
}
