package dev.kettlemark.checks;

import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.Located;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reports an ingredient that is sold in grades and does not say which.
 *
 * <p>What it is follows from its name or its name on a label.
 */
public final class MissingGrade implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.warning("missing-grade", "an ingredient is sold in grades and does not say which");

  private static final String FAT = "fat";

  private static final Pattern NUMBER_BEHIND = Pattern.compile("-(\\d{2,3})$");

  /**
   * A kind of ingredient and what tells its grades apart.
   *
   * @param words of which one stands in its name or label
   * @param role which it must have, since the words mean other things too; empty for any
   * @param fact the fact that gives the grade; {@code fat} is a word of {@code contains}
   * @param lowest the lowest grade that a name may end in
   * @param highest the highest one
   * @param grade what it is called
   * @param why what goes wrong with another grade
   */
  private record Kind(
      Set<String> words,
      String role,
      String fact,
      int lowest,
      int highest,
      String grade,
      String why) {

    static Kind byFat(Set<String> words, String role) {
      return new Kind(
          words,
          role,
          FAT,
          0,
          0,
          "fat behind `contains`",
          "another grade flows, whips or sets otherwise");
    }
  }

  /** Grades in the trade; common practice, no source. */
  private static final List<Kind> KINDS = List.of(
      new Kind(
          Set.of("gelatine", "gelatin"),
          "",
          "bloom",
          50,
          325,
          "gel strength, such as `bloom 200`",
          "between 150 and 250 bloom the dose differs by a third"),
      new Kind(
          Set.of("glucose syrup", "corn syrup", "starch syrup"),
          "",
          "DE",
          20,
          97,
          "dextrose equivalent, such as `DE 42`",
          "another grade sweetens, thickens and draws water otherwise"),
      Kind.byFat(Set.of("couverture", "chocolate"), "coating"),
      Kind.byFat(Set.of("cream"), "dairy"),
      Kind.byFat(Set.of("cocoa powder"), ""));

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return OwnIngredient.of(subject).stream()
        .filter(own -> !GelatineWithoutBloom.tells(own))
        .flatMap(own -> KINDS.stream()
            .filter(kind -> isOf(own, kind) && !isGraded(own, kind))
            .limit(1)
            .map(kind -> finding(subject, own, kind)))
        .toList();
  }

  private static boolean isOf(Ingredient own, Kind kind) {
    return (kind.role().isEmpty() || own.hasRole(kind.role()))
        && names(own).stream()
            .anyMatch(name -> kind.words().stream()
                .anyMatch(word -> (" " + name + " ").contains(" " + word + " ")));
  }

  /** Its name and its name on a label, words apart; a label that lists several things names none. */
  private static List<String> names(Ingredient own) {
    List<String> names = new ArrayList<>();
    names.add(own.name().value().toLowerCase(Locale.ROOT).replace('-', ' '));
    own.facts()
        .first("label")
        .flatMap(label -> label.text())
        .map(text -> text.value().toLowerCase(Locale.ROOT))
        .filter(text -> !text.contains(",") && !text.contains("("))
        .ifPresent(names::add);
    return names;
  }

  private static boolean isGraded(Ingredient own, Kind kind) {
    return kind.fact().equals(FAT)
        ? own.facts().says("contains", FAT)
        : own.facts().first(kind.fact()).isPresent();
  }

  private static Finding finding(Subject subject, Ingredient own, Kind kind) {
    Finding finding = INFO.at(
            own.name().span(), "`%s` does not give its %s", own.name().value(), kind.grade())
        .because(kind.why());
    return finding.withFixes(grade(own.name(), kind)
        .map(grade -> new Fix(
            "Add `" + kind.fact() + " " + grade + "`, as its name says",
            List.of(new Columns(subject.section()).addFact(Optional.empty(), kind.fact(), grade))))
        .stream()
        .toList());
  }

  /** The grade that a name ends in, as in {@code gelatine-180}. */
  private static Optional<String> grade(Located<String> name, Kind kind) {
    Matcher matcher = NUMBER_BEHIND.matcher(name.value());
    Predicate<String> fits = figure ->
        Integer.parseInt(figure) >= kind.lowest() && Integer.parseInt(figure) <= kind.highest();
    return matcher.find() ? Optional.of(matcher.group(1)).filter(fits) : Optional.empty();
  }
}
