package dev.kettlemark.labelling;

import dev.kettlemark.library.Origin;
import dev.kettlemark.quantity.Remark;
import java.util.List;

/**
 * Whether a claim may be made in a market.
 *
 * @param claim the word of the language
 * @param grounds what speaks against it; none where it holds
 */
public record ClaimAnswer(String claim, Market market, Law law, List<Ground> grounds) {

  public ClaimAnswer {
    grounds = List.copyOf(grounds);
  }

  /** What kind of thing speaks against a claim. */
  public enum Kind {
    /** What is in it breaks the claim. */
    CONTAINED,
    /** Traces break it; only claims that something is absent. */
    TRACES,
    /** The house handles what the claim says is absent. */
    ON_SITE,
    /** Somebody has not said what decides. */
    UNSTATED,
    /** The claim compares, and with nothing. */
    NO_REFERENCE
  }

  /**
   * One thing that speaks against a claim.
   *
   * @param what one plain clause in lower case
   * @param places where it comes from, the section's own place first
   */
  public record Ground(Kind kind, Remark what, List<Origin> places) {

    public Ground {
      places = List.copyOf(places);
    }

    /** The clause in English. */
    public String text() {
      return what.english();
    }
  }

  public Standing standing() {
    if (grounds.isEmpty()) {
      return Standing.HOLDS;
    }
    boolean isBroken = grounds.stream()
        .anyMatch(ground -> ground.kind() == Kind.CONTAINED || ground.kind() == Kind.TRACES);
    return isBroken ? Standing.BROKEN : Standing.UNKNOWN;
  }

  /** The grounds of one kind. */
  public List<Ground> of(Kind kind) {
    return grounds.stream().filter(ground -> ground.kind() == kind).toList();
  }
}
