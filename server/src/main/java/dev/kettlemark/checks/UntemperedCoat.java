package dev.kettlemark.checks;

import dev.kettlemark.analysis.StageParcel;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.model.State;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.TemperatureDifference;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Reports a coat of cocoa butter that reaches the centre untempered.
 *
 * <p>Which ingredient must be tempered is a fact of the pantry.
 */
public final class UntemperedCoat implements Rule {

  private static final RuleInfo INFO =
      RuleInfo.error("untempered-coat", "a coat with cocoa butter is used untempered");

  /** A tempered coat is used this much below the temperature at which its crystals melt. */
  private static final TemperatureDifference BELOW_MELTING = TemperatureDifference.ofCelsius(2.5);

  private static final Set<String> COATING = Set.of("enrobe", "dip", "bottom");

  @Override
  public RuleInfo info() {
    return INFO;
  }

  @Override
  public List<Finding> check(Subject subject) {
    List<DoneStep> coatings = subject.formula().stream()
        .flatMap(DoneStep::of)
        .filter(step -> step.is(COATING))
        .toList();
    return coatings.isEmpty()
        ? List.of()
        : check(subject, coatings, WeighedIn.of(coatings.get(0).formula()));
  }

  private static List<Finding> check(Subject subject, List<DoneStep> coatings, WeighedIn weighed) {
    return coatings.stream()
        .flatMap(
            step -> untempered(step, weighed)
                .map(coat -> finding(subject, step, coat.parcel, coat.ingredient))
                .stream())
        .toList();
  }

  private record Coat(StageParcel parcel, Ingredient ingredient) {}

  private static Optional<Coat> untempered(DoneStep step, WeighedIn weighed) {
    return step.before().stream()
        .filter(parcel -> !parcel.has(State.TEMPERED) && !parcel.isAerated())
        .flatMap(parcel -> coat(step, parcel, weighed).stream())
        .findFirst();
  }

  /** What must be tempered in a mass, if it makes up most of it; a centre may hold a little. */
  private static Optional<Coat> coat(DoneStep step, StageParcel parcel, WeighedIn weighed) {
    List<WeighedIn.Held> held = weighed.in(step.stageIndex(), parcel);
    double all = held.stream().mapToDouble(one -> one.mass().grams()).sum();
    List<WeighedIn.Held> coating = held.stream().filter(UntemperedCoat::isCoat).toList();
    double coat = coating.stream().mapToDouble(one -> one.mass().grams()).sum();
    return coat > all / 2
        ? coating.get(0).ingredient().map(ingredient -> new Coat(parcel, ingredient))
        : Optional.empty();
  }

  private static boolean isCoat(WeighedIn.Held held) {
    return held.hasRole("coating")
        && held.ingredient().filter(i -> i.agent().needs().contains("temper")).isPresent();
  }

  private static Finding finding(
      Subject subject, DoneStep step, StageParcel parcel, Ingredient ingredient) {
    String name = ingredient.name().value();
    Finding finding = INFO.at(
            step.step().word().span(), "`%s` is used as a coat and was never tempered", name)
        .because(
            "cocoa butter that is not tempered stays soft, sticks to the mould, and blooms grey")
        .withFixes(fix(subject, step, parcel, ingredient).stream().toList());
    return OtherPlace.fact(finding, subject, name, "tempers");
  }

  private static Optional<Fix> fix(
      Subject subject, DoneStep step, StageParcel parcel, Ingredient ingredient) {
    Optional<String> named = step.stage().stage().amounts().stream()
        .map(line -> line.ingredient().value())
        .filter(parcel::holds)
        .findFirst()
        .or(() -> step.stage().stage().takes().stream()
            .map(take -> take.stage().value())
            .filter(parcel::holds)
            .findFirst());
    return named
        .filter(name -> subject.isWrittenHere(step.step().span()))
        .flatMap(name -> ingredient.agent().melts().map(melts -> {
          String to = Display.celsius(melts.minus(BELOW_MELTING));
          String line = WrittenLines.step("temper", name + " to " + to);
          return new Fix(
              "Temper it to " + to + " first",
              List.of(WrittenLines.of(subject).above(step.step().span(), line)));
        }));
  }
}
