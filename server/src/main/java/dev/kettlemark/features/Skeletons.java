package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import java.util.List;
import java.util.stream.Stream;

/** Whole sections to fill in, with the places to fill marked as editors know them. */
final class Skeletons {

  private static final String FORMULA = """
      formula ${1:name} "${2:Display name}"
        code      ${3:XX-001}
        version   1  on ${4:2026-01-01}
        status    draft
        percent   of charge
        batch     ${5:1000} g
        texture   ${6:chewy}
        caution   ${7:hot-sugar}

      stage ${8:syrup}
        ${9:60.00} %             ${10:white-sugar}
         q.s.               water
        cook      to ${11:118} °C ± 1$0
      """;

  private static final String STAGE = """
      stage ${1:name}
        ${2:10.00} %             ${3:white-sugar}
        ${4:mix}$0
      """;

  private static final String INGREDIENT = """
      ingredient ${1:name} "${2:Display name}"
        role      ${3:flavour}
        form      ${4:powder}
        contains  ${5:5.00} % water, ${6:95.00} % other  from "${7:source}"
        allergen  ${8:milk}
        suits     vegan, vegetarian
        use       ${9:0.1-1} % of charge  from "${10:source}"
        gluten    ${11:unknown}$0
      """;

  private static final String VARIANT = """
      variant ${1:name} "${2:Display name}" of ${3:parent}
        code      ${4:XX-002}
        replace   ${5:honey}  by ${6:10.00} % ${7:other}$0
      """;

  private static final String PRODUCT = """
      product ${1:name} "${2:Display name}"
        centre    ${3:12.0} g              ${4:formula}
        coat      ${5:25} % of finished    ${6:couverture}
        make      ${7:100} pieces
        loss      ${8:4} % of centre
        shelf     ${9:3} months at 15-18 °C below 55 %RH$0
      """;

  private static final String TRIAL = """
      trial ${1:T-001} of ${2:formula} on ${3:2026-01-01} at ${4:house}
        batch     ${5:1000} g
        measured  ${6:118.0} °C    end of ${7:syrup}
        verdict   "${8:what came of it}"$0
      """;

  private static final String SHEET = """
      sheet ${1:name} of ${2:formula} for ${3:chef} in ${4:en-GB}
        note      "${5:what the reader must know}"$0
      """;

  private static final String HOUSE = """
      house ${1:name} "${2:Display name}"
        altitude    ${3:0} m
        scale       ${4:bench}  reads ${5:1} g  to ${6:6000} g
        bowl        ${7:mixer}  holds ${8:5} L
        market      ${9:EU}$0
      """;

  private Skeletons() {}

  /**
   * The sections that may start at the margin.
   *
   * @param inFormula whether a stage may start here too
   */
  static List<Offer> of(boolean inFormula) {
    List<Offer> sections = List.of(
        skeleton("formula", "what is weighed and how it is made", FORMULA),
        skeleton("variant", "a formula by its changes to another", VARIANT),
        skeleton("ingredient", "a material of the pantry", INGREDIENT),
        skeleton("product", "a piece that is sold", PRODUCT),
        skeleton("trial", "a batch that was made, and what was measured", TRIAL),
        skeleton("sheet", "a formula or product for one reader", SHEET),
        skeleton("house", "the kitchen and its tools", HOUSE));
    if (!inFormula) {
      return sections;
    }
    return Stream.concat(
            Stream.of(skeleton("stage", "a part of the formula: weighed, then worked", STAGE)),
            sections.stream())
        .toList();
  }

  private static Offer skeleton(String word, String detail, String text) {
    return new Offer(word, Kind.SKELETON, detail, "", text.stripTrailing(), false);
  }
}
