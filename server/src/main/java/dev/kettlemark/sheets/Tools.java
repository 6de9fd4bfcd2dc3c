package dev.kettlemark.sheets;

import dev.kettlemark.model.House;
import dev.kettlemark.quantity.Mass;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bowls, pans, moulds and frames of a house, by their own names or by ordinary ones. */
final class Tools {

  private Tools() {}

  static boolean isTool(House house, String name) {
    return house.vessel(name).isPresent()
        || house.mould(name).isPresent()
        || house.frame(name).isPresent();
  }

  /** What a step calls it: a home cook has no tool of that name. */
  static Phrase name(House house, String name, SheetReader reader) {
    if (reader != SheetReader.HOME) {
      return Phrase.given(name);
    }
    return house
        .vessel(name)
        .map(vessel -> Phrase.words("name." + kind(vessel)))
        .or(() -> house.mould(name).map(mould -> Phrase.words("name.mould")))
        .orElseGet(() -> Phrase.words("name.frame"));
  }

  /** A bowl with a whisk is a mixer. */
  private static String kind(House.Vessel vessel) {
    return vessel.kind().equals("bowl") && vessel.whips().isPresent() ? "mixer" : vessel.kind();
  }

  /** A tool with its size, as a list of equipment has it. */
  static Phrase described(House house, String name, SheetReader reader) {
    List<Phrase> all = new ArrayList<>();
    String id = "equipment." + name;
    all.add(Phrase.words("tool." + wordOf(house, name)));
    if (reader != SheetReader.HOME) {
      all.add(Phrase.words("tool.id", Phrase.given(name)));
    }
    house.vessel(name).ifPresent(vessel -> vessel(id, vessel, reader, all));
    house
        .mould(name)
        .ifPresent(mould -> all.add(Phrase.words(
            "tool.mould.size",
            count(id + ".cavities", mould.pieces()),
            millilitres(id + ".cavity", mould.cavity().millilitres()))));
    house
        .frame(name)
        .ifPresent(frame -> all.add(Phrase.words(
            "tool.frame.size",
            millimetres(id + ".length", frame.length()),
            millimetres(id + ".width", frame.width()),
            millimetres(id + ".height", frame.height()))));
    return Phrase.together(all.toArray(Phrase[]::new));
  }

  /** A home cook has other vessels than the house; what they must hold is told by {@link HomeVessels}. */
  private static void vessel(String id, House.Vessel vessel, SheetReader reader, List<Phrase> all) {
    if (reader == SheetReader.HOME) {
      return;
    }
    vessel
        .holds()
        .ifPresent(volume ->
            all.add(Phrase.words("tool.holds", millilitres(id + ".holds", volume.millilitres()))));
    vessel
        .whips()
        .filter(band -> reader != SheetReader.CHEF)
        .ifPresent(band -> all.add(Phrase.words(
            "tool.whips",
            grams(id + ".whips.least", band.low()),
            grams(id + ".whips.most", band.high()))));
  }

  private static String wordOf(House house, String name) {
    Optional<House.Vessel> vessel = house.vessel(name);
    return vessel
        .map(Tools::kind)
        .or(() -> house.mould(name).map(mould -> "mould"))
        .orElse("frame");
  }

  private static Phrase count(String id, int count) {
    return Phrase.value(SheetFigure.written(id, SheetUnit.NUMBER, count, 0));
  }

  private static Phrase millilitres(String id, double millilitres) {
    int decimals = millilitres < 100 ? 1 : 0;
    return Phrase.value(SheetFigure.written(id, SheetUnit.MILLILITRE, millilitres, decimals));
  }

  private static Phrase millimetres(String id, double millimetres) {
    return Phrase.value(SheetFigure.written(id, SheetUnit.MILLIMETRE, millimetres, 0));
  }

  private static Phrase grams(String id, Mass mass) {
    return Phrase.value(SheetFigure.written(id, SheetUnit.GRAM, mass.grams(), 0));
  }
}
