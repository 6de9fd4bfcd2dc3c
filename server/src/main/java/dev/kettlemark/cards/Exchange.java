package dev.kettlemark.cards;

import dev.kettlemark.answers.Shelf;
import dev.kettlemark.model.Ingredient;
import dev.kettlemark.quantity.Outcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.hipparchus.fraction.BigFraction;

/**
 * A material of one formula and what stands for it in the other.
 *
 * @param first empty where nothing of the first formula does what the second does
 * @param function what they do; empty where nobody has described them
 */
public record Exchange(
    Optional<Amount> first, Optional<Amount> second, Optional<Function> function) {

  /** So much of a material, as a share of the charge. */
  public record Amount(String material, Outcome<BigFraction> share) {}

  /**
   * Pairs what is weighed into two formulas: what has the same name first, then what the pantry says stands
   * in for the other, then what does the same.
   */
  static List<Exchange> between(Side first, Side second) {
    return new Pairing(first, second).exchanges();
  }

  /** Whether one material stands for another. */
  public boolean isAnother() {
    return first.isPresent()
        && second.isPresent()
        && !first.get().material().equals(second.get().material());
  }

  private static final class Pairing {

    private final Side first;
    private final Side second;
    private final Map<String, Outcome<BigFraction>> here;
    private final Map<String, Outcome<BigFraction>> there;
    private final Set<String> left;
    private final Set<String> free;

    Pairing(Side first, Side second) {
      this.first = first;
      this.second = second;
      this.here = first.amounts();
      this.there = second.amounts();
      this.left = new LinkedHashSet<>(here.keySet());
      this.left.removeAll(there.keySet());
      this.free = new LinkedHashSet<>(there.keySet());
      this.free.removeAll(here.keySet());
    }

    List<Exchange> exchanges() {
      Map<String, String> standing = new HashMap<>();
      pair(standing, this::standsIn);
      pair(standing, this::doesTheSame);
      List<Exchange> exchanges = new ArrayList<>();
      here.keySet().forEach(name -> {
        String other = there.containsKey(name) ? name : standing.getOrDefault(name, "");
        exchanges.add(exchange(Optional.of(name), Optional.of(other).filter(o -> !o.isEmpty())));
      });
      free.forEach(name -> exchanges.add(exchange(Optional.empty(), Optional.of(name))));
      return exchanges;
    }

    private void pair(Map<String, String> standing, BiPredicate<String, String> fits) {
      for (String name : List.copyOf(left)) {
        free.stream().filter(other -> fits.test(name, other)).findFirst().ifPresent(other -> {
          standing.put(name, other);
          left.remove(name);
          free.remove(other);
        });
      }
    }

    private boolean standsIn(String name, String other) {
      return isStandIn(first, name, other) || isStandIn(second, other, name);
    }

    private static boolean isStandIn(Side side, String name, String by) {
      return new Shelf(side.snapshot()).standsIn(by, name);
    }

    private boolean doesTheSame(String name, String other) {
      Optional<Function> mine = Function.first(first.ingredient(name));
      return mine.isPresent() && mine.equals(Function.first(second.ingredient(other)));
    }

    private Exchange exchange(Optional<String> one, Optional<String> other) {
      Optional<Ingredient> mine = one.flatMap(first::ingredient);
      Optional<Ingredient> theirs = other.flatMap(second::ingredient);
      Optional<Function> function = mine.isPresent() && theirs.isPresent()
          ? Function.shared(mine.get(), theirs.get())
          : Function.first(mine.or(() -> theirs));
      return new Exchange(
          one.map(name -> new Amount(name, share(here, name))),
          other.map(name -> new Amount(name, share(there, name))),
          function);
    }

    private static Outcome<BigFraction> share(
        Map<String, Outcome<BigFraction>> amounts, String name) {
      return amounts.getOrDefault(name, Outcome.known(BigFraction.ZERO));
    }
  }
}
