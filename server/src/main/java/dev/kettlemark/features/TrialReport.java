package dev.kettlemark.features;

import dev.kettlemark.analysis.HouseCorrections;
import dev.kettlemark.analysis.TrialComparison;
import dev.kettlemark.analysis.Trials;
import dev.kettlemark.library.Kind;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Trial;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Trials beside what was predicted for them, and what they say of the kitchens they were made in.
 *
 * @param trials in order of day
 * @param houses one for each kitchen in which one of them was made
 */
public record TrialReport(List<Item> trials, List<HouseItem> houses) {

  public TrialReport {
    trials = List.copyOf(trials);
    houses = List.copyOf(houses);
  }

  /**
   * A trial.
   *
   * @param compared empty where its formula is not known
   */
  public record Item(Trial trial, Optional<TrialComparison> compared) {}

  /**
   * What the trials of a kitchen say.
   *
   * @param name of the house; empty where there is none
   * @param kitchen what holds for all its formulas
   * @param formulas what holds for one formula only, by its name
   */
  public record HouseItem(
      Optional<String> name, HouseCorrections kitchen, Map<String, HouseCorrections> formulas) {}

  /**
   * The report of a library.
   *
   * @param formula only its trials; empty for all
   */
  public static TrialReport of(Snapshot snapshot, Optional<String> formula) {
    List<Item> items = snapshot.library().entries(Kind.TRIAL).stream()
        .flatMap(entry -> Trials.trial(entry).stream()
            .map(trial -> new Item(trial, snapshot.result(Trials.COMPARED, entry))))
        .filter(item -> formula.isEmpty() || TrialWords.formula(item.trial()).equals(formula))
        .sorted(Comparator.comparing(TrialReport::day))
        .toList();
    Map<Optional<String>, List<TrialComparison>> byHouse = items.stream()
        .flatMap(item -> item.compared().stream())
        .collect(
            Collectors.groupingBy(TrialReport::house, LinkedHashMap::new, Collectors.toList()));
    return new TrialReport(
        items,
        byHouse.entrySet().stream()
            .map(house -> item(house.getKey(), house.getValue()))
            .toList());
  }

  private static HouseItem item(Optional<String> name, List<TrialComparison> trials) {
    Map<String, HouseCorrections> formulas = new LinkedHashMap<>();
    trials.stream()
        .collect(Collectors.groupingBy(
            trial -> trial.formula().formula().name().value(),
            LinkedHashMap::new,
            Collectors.toList()))
        .forEach((formula, own) -> formulas.put(formula, only(HouseCorrections.of(own), true)));
    return new HouseItem(name, only(HouseCorrections.of(trials), false), formulas);
  }

  private static HouseCorrections only(HouseCorrections all, boolean perFormula) {
    return new HouseCorrections(all.corrections().stream()
        .filter(correction -> correction.quantity().isPerFormula() == perFormula)
        .toList());
  }

  private static Optional<String> house(TrialComparison trial) {
    return trial.formula().kitchen().house().map(house -> house.name().value());
  }

  /** Days compare as they are written; a trial without one comes first. */
  private static String day(Item item) {
    return item.trial().day().map(LocalDate::toString).orElse("");
  }
}
