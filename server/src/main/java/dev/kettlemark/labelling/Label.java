package dev.kettlemark.labelling;

import dev.kettlemark.model.Facts;
import dev.kettlemark.model.House;
import java.util.List;
import java.util.Optional;

/**
 * What the label of a formula or product must and may say.
 *
 * <p>Two labels are the same only if they are one object.
 */
public final class Label {

  /** What stands on every draft. */
  public static final String DRAFT = "Draft. Check it against current local law.";

  private final String name;
  private final String shownName;
  private final Facts facts;
  private final Optional<House> house;
  private final Makeup makeup;
  private final Allergens allergens;
  private final List<Diet.Answer> diets;
  private final List<ClaimAnswer> claims;
  private final List<CautionNeed> cautions;

  Label(
      String name,
      String shownName,
      Facts facts,
      Optional<House> house,
      Makeup makeup,
      Allergens allergens,
      List<Diet.Answer> diets,
      List<ClaimAnswer> claims,
      List<CautionNeed> cautions) {
    this.name = name;
    this.shownName = shownName;
    this.facts = facts;
    this.house = house;
    this.makeup = makeup;
    this.allergens = allergens;
    this.diets = List.copyOf(diets);
    this.claims = List.copyOf(claims);
    this.cautions = List.copyOf(cautions);
  }

  public String name() {
    return name;
  }

  /** The display name, or the name where there is none. */
  public String shownName() {
    return shownName;
  }

  /** The facts that the section states; for a variant, with its parent's. */
  public Facts facts() {
    return facts;
  }

  public Optional<House> house() {
    return house;
  }

  /** The markets that matter: the house's, or all. */
  public List<Market> markets() {
    return Market.of(house);
  }

  public Makeup makeup() {
    return makeup;
  }

  public Allergens allergens() {
    return allergens;
  }

  public List<Diet.Answer> diets() {
    return diets;
  }

  /** Each claim that the section makes, by each market, in the order written. */
  public List<ClaimAnswer> claims() {
    return claims;
  }

  /** Every caution that it ought to carry, stated or not. */
  public List<CautionNeed> cautions() {
    return cautions;
  }
}
