package dev.kettlemark.checks;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Length;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.science.StandardAtmosphere;
import dev.kettlemark.science.SyrupBoiling;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reports a sheet for homes that gives cook temperatures and not for which altitude they hold.
 *
 * <p>The note that its fix writes is computed for the charge of the pan.
 */
public final class SheetWithoutAltitude implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.hint("sheet-without-altitude", "a sheet does not say for which altitude it cooks");

  private static final Pattern TOLD =
      Pattern.compile("(?i)\\b(altitude|elevation|sea level|above the sea)\\b");

  /** Most kitchens of this world lie below the last of them. */
  private static final List<Integer> METRES = List.of(500, 1000, 1500, 2000, 2500);

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    return ShownSheet.of(subject)
        .filter(sheet -> sheet.isFor("home") && sheet.isEnglish())
        .filter(
            sheet -> sheet.notes().noneMatch(note -> TOLD.matcher(note.value()).find()))
        .flatMap(sheet -> table(sheet).map(table -> finding(sheet, table)))
        .stream()
        .toList();
  }

  private static Finding finding(ShownSheet sheet, String table) {
    return INFO.at(
            sheet.name().span(),
            "`%s` is cooked to a temperature, and no note speaks of altitude",
            sheet.name().value())
        .because("water boils cooler in the mountains, so the same figure leaves a harder mass")
        .withFix(sheet.addNote("Add a note with the temperatures at other altitudes", table));
  }

  /** What each cook becomes higher up; empty where nothing is cooked or it cannot be told. */
  private static Optional<String> table(ShownSheet sheet) {
    List<String> cooks = sheet.formulas().stream()
        .flatMap(formula -> CookStep.of(formula).flatMap(cook -> row(formula, cook).stream()))
        .toList();
    return cooks.isEmpty()
        ? Optional.empty()
        : Optional.of("At another altitude: " + String.join("; ", cooks) + ".");
  }

  private static Optional<String> row(ComputedFormula formula, CookStep cook) {
    Temperature written =
        Temperature.ofCelsius(cook.target().value().middleInBase().doubleValue());
    return cook.charge()
        .map(charge -> METRES.stream()
            .flatMap(metres -> StandardAtmosphere.pressureAt(Length.ofMetres(metres))
                .flatMap(there -> SyrupBoiling.sameSolids(
                    charge.composition(), written, formula.kitchen().pressure(), there))
                .toOptional()
                .map(local -> "%s at %d m".formatted(bothScales(local), metres))
                .stream())
            .collect(Collectors.joining(", ")))
        .filter(table -> !table.isEmpty())
        .map(table -> "cook " + cook.stage().name().value() + " to " + table);
  }

  /** The second scale says the same as the first, rounded as it is. */
  private static String bothScales(Temperature temperature) {
    Temperature rounded = Temperature.ofCelsius(Math.rint(temperature.celsius()));
    return Display.celsius(rounded) + " (" + Display.fahrenheit(rounded) + ")";
  }
}
