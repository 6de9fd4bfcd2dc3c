package dev.kettlemark.features;

import dev.kettlemark.model.Located;
import java.util.List;
import java.util.Map;

/** Offers to hold a variant against its parent. */
public final class CompareOffer {

  /** The command with which a client of ours opens the page. */
  public static final String OPEN = "kettlemark.compare.open";

  private CompareOffer() {}

  /** For a variant: the page that tells whether it stands for its parent one-to-one. */
  static List<Refactoring> at(RefactoringSite site) {
    return site.variant().flatMap(variant -> variant.parent()).map(Located::value).stream()
        .map(parent -> Refactoring.opening(
            ActionTitle.of("Compare with " + parent, ": is it one-to-one?"),
            new Refactoring.Page(OPEN, site.name(), Map.of("with", parent))))
        .toList();
  }
}
