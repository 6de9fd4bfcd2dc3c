package dev.kettlemark.features;

import dev.kettlemark.library.Origin;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;

/**
 * One place at which something is used.
 *
 * @param user what kind of section uses it
 * @param released whether that section is released
 * @param part the stage, or the part of a product
 * @param path from what is used up to the section, both ends included
 * @param place the line of the section
 * @param share as weighed in, as a share of the charge; of a product, of the finished piece
 * @param grams as weighed in for the batch; of a product, for all pieces
 */
public record Usage(
    User user,
    boolean released,
    String part,
    List<String> path,
    Origin place,
    Outcome<Ratio> share,
    Outcome<Mass> grams) {

  /** What can use something. */
  public enum User {
    FORMULA,
    VARIANT,
    PRODUCT
  }

  public Usage {
    path = List.copyOf(path);
  }

  /** The section that uses it. */
  public String name() {
    return path.get(path.size() - 1);
  }

  /** Whether the section's own line names it. */
  public boolean isDirect() {
    return path.size() == 2;
  }

  /** The same use seen from something that is in what is used. */
  Usage above(List<String> below, Outcome<Ratio> otherShare, Outcome<Mass> otherGrams) {
    List<String> longer = new ArrayList<>(below);
    longer.add(name());
    return new Usage(user, released, part, longer, place, otherShare, otherGrams);
  }
}
