package dev.kettlemark.features;

import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * Where a material or a stage is used in the user's sections, what a variant takes over included.
 *
 * @param name of the material or stage
 * @param uses the sections whose own lines name it, each followed by those that it gets into through them
 * @param taken where a stage of that name is taken over
 */
public record WhereUsed(String name, List<Usage> uses, List<Usage> taken) {

  private static final int MOST_NAMED = 4;

  public WhereUsed {
    uses = List.copyOf(uses);
    taken = List.copyOf(taken);
  }

  public static WhereUsed of(Snapshot snapshot, String name) {
    UsageSearch search = new UsageSearch(snapshot);
    return new WhereUsed(name, search.all(name), search.stage(name));
  }

  /** The sections whose own lines name a material, in one sentence of Markdown. */
  static String sentence(Snapshot snapshot, String material) {
    List<UsageSearch.Named> users = new UsageSearch(snapshot).naming(material);
    List<String> formulas = names(users, use -> use.user() != Usage.User.PRODUCT);
    List<String> products = names(users, use -> use.user() == Usage.User.PRODUCT);
    int released =
        names(users, use -> use.user() != Usage.User.PRODUCT && use.released()).size();
    if (formulas.isEmpty() && products.isEmpty()) {
      return "No formula or product of this library uses it.";
    }
    String inFormulas = formulas.isEmpty()
        ? ""
        : count(formulas, "formula") + (released > 0 ? " (" + released + " released)" : "") + ": "
            + Markdown.some(formulas, MOST_NAMED);
    String inProducts = products.isEmpty()
        ? ""
        : count(products, "product") + ": " + Markdown.some(products, MOST_NAMED);
    String between = inFormulas.isEmpty() || inProducts.isEmpty() ? "" : "; ";
    return "Used in " + inFormulas + between + inProducts + ".";
  }

  /** {@code 3 formulas, 1 variant, 2 products}; empty where nothing uses it. */
  String counted() {
    List<String> told = new ArrayList<>();
    for (Usage.User user : Usage.User.values()) {
      List<String> names = names(uses.stream().filter(use -> use.user() == user).toList());
      if (!names.isEmpty()) {
        told.add(count(names, user.name().toLowerCase(Locale.ROOT)));
      }
    }
    return String.join(", ", told);
  }

  private static List<String> names(
      List<UsageSearch.Named> users, Predicate<UsageSearch.Named> which) {
    return users.stream().filter(which).map(UsageSearch.Named::name).distinct().toList();
  }

  private static List<String> names(List<Usage> uses) {
    return uses.stream().map(Usage::name).distinct().toList();
  }

  private static String count(List<String> names, String word) {
    return names.size() + " " + word + (names.size() == 1 ? "" : "s");
  }
}
