package dev.kettlemark.labelling;

import dev.kettlemark.model.House;
import dev.kettlemark.model.Located;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A market with labelling rules of its own. */
public enum Market {
  EU("the European Union"),
  US("the United States");

  private final String place;

  Market(String place) {
    this.place = place;
  }

  /** {@code the European Union}. */
  public String place() {
    return place;
  }

  /** The market that a word of the language names. */
  public static Optional<Market> ofWord(String word) {
    return Arrays.stream(values()).filter(market -> market.name().equals(word)).findFirst();
  }

  /** The markets that a kitchen sells to; all where it does not say. */
  public static List<Market> of(Optional<House> house) {
    List<Market> stated = stated(house);
    return stated.isEmpty() ? List.of(values()) : stated;
  }

  /** The markets that a kitchen names. */
  public static List<Market> stated(Optional<House> house) {
    return house.stream()
        .flatMap(h -> h.facts().wordsOf("market").stream())
        .map(Located::value)
        .flatMap(word -> ofWord(word).stream())
        .distinct()
        .toList();
  }
}
