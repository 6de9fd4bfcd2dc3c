package dev.kettlemark.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.SampleTexts;
import dev.kettlemark.library.Document;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A right formula with one thing made wrong: that is found out, at its place. */
class MutatedSamplesTest {

  /**
   * One thing made wrong.
   *
   * @param rule what must be found
   * @param file of the sample library
   * @param changes pairs of what is written and what is written instead
   */
  record Mutation(String rule, String file, List<String> changes) {

    static Mutation of(String rule, String file, String... changes) {
      return new Mutation(rule, file, List.of(changes));
    }

    @Override
    public String toString() {
      return rule + " in " + file;
    }
  }

  static List<Mutation> mutations() {
    String meringue = "italian-meringue.kettle";
    String jelly = "raspberry-jelly.kettle";
    String marshmallow = "gelatine-marshmallow.kettle";
    String nougat = "egg-honey-nougat.kettle";
    return List.of(
        Mutation.of("agent-overdose", jelly, "1.20 %             pectin", "4.80 %  pectin"),
        Mutation.of(
            "gelling-agents-together",
            marshmallow,
            "1.80 %             gelatine-250",
            "5.00 % gelatine-250\n   1.00 % iota-carrageenan"),
        Mutation.of("unboiled-agent", marshmallow, "gelatine-250", "agar"),
        Mutation.of(
            "agent-too-cold", marshmallow, "gelatine-250", "iota-carrageenan", "78 °C", "65 °C"),
        Mutation.of(
            "agent-too-warm", marshmallow, "gelatine-250", "methylcellulose", "at 12-18 °C", ""),
        Mutation.of(
            "unsoaked-agent",
            marshmallow,
            "soak      for 20 min until bloomed",
            "mix       for 1 min"),
        Mutation.of("gel-without-mineral", jelly, "pectin-hm-slow", "pectin-lm"),
        Mutation.of(
            "acidless-pectin",
            jelly,
            "raspberry-puree",
            "mango-puree",
            "1.00 %             citric-acid-solution-50",
            "1.00 % invert-syrup",
            "citric-acid-solution-50",
            "invert-syrup"),
        Mutation.of("thin-pectin-mass", jelly, "cook      to 108 °C ± 1", "warm to 90 °C"),
        Mutation.of(
            "gel-boiled-in-acid",
            jelly,
            "pectin-hm-slow",
            "pectin-nh",
            "cook      to 108 °C ± 1",
            "cook to 106 °C",
            "mix       citric-acid-solution-50, cooked",
            "mix citric-acid-solution-50, cooked\n  cook to 108 °C"),
        Mutation.of(
            "acidity-not-stood",
            jelly,
            "expect    yield 71.5 % ± 2",
            "expect    acidity 4.5-5.0 pH"),
        Mutation.of("raw-fruit-on-protein", marshmallow, "vanilla-extract", "pineapple-puree-raw"),
        Mutation.of(
            "gums-that-gel-together",
            "heather-nougat.kettle",
            "add       0.30 % of liquid  xanthan-gum  in foam",
            "add 0.30 % of liquid xanthan-gum in foam\n"
                + "  add 0.10 % of liquid locust-bean-gum in foam"),
        Mutation.of(
            "spirit-on-gel",
            marshmallow,
            "gelatine-250",
            "iota-carrageenan",
            "0.50 %             vanilla-extract",
            "12.00 % rum",
            "vanilla-extract",
            "rum",
            "12.00 %             water",
            "8.00 % water"),
        Mutation.of("foam-powder-water", nougat, "0.95 %  ", "0.40 %  "),
        Mutation.of(
            "weight-for-weight",
            meringue,
            "whip      on medium for 6 min until stiff-peak",
            "whip      on medium for 6 min until stiff-peak\n\nvariant dry-meringue of italian-meringue\n"
                + "  replace   egg-white-pasteurised by 28.00 % egg-white-powder"),
        Mutation.of(
            "unset-foam",
            meringue,
            "28.00 %             egg-white-pasteurised",
            "1.50 % soy-whipping-protein\n  26.50 % water",
            "egg-white-pasteurised",
            "soy-whipping-protein",
            "whip      on medium for 6 min until stiff-peak",
            "whip on medium for 6 min until stiff-peak\n  pipe\n  dry for 3 h at 85 °C"),
        Mutation.of("bowl-overflow", marshmallow, "1500 g", "4500 g"),
        Mutation.of("whisk-out-of-reach", meringue, "1000 g", "300 g"),
        Mutation.of(
            "density-out-of-kind",
            meringue,
            "whip      on medium for 6 min until stiff-peak",
            "whip on medium for 6 min until stiff-peak\n  check density 1.05 g/mL"),
        Mutation.of(
            "overrun-against-density",
            meringue,
            "expect    density 0.30-0.45 g/mL",
            "expect density 0.40 g/mL\n  expect overrun 325 %"),
        Mutation.of(
            "early-density-check",
            nougat,
            "  fold      sea-salt",
            "  check density 0.85 g/mL\n  fold sea-salt"),
        Mutation.of("overfilled-cavity", "products.kettle", "12.0 g", "14.0 g"),
        Mutation.of("half-filled-cavity", "products.kettle", "12.0 g", "6.0 g"),
        Mutation.of("cut-off-weight", "products.kettle", "42.0 g", "60.0 g"),
        Mutation.of("cutting-waste", "orchard-bar.kettle", "100 x 23 mm", "110 x 21 mm"));
  }

  @ParameterizedTest
  @MethodSource("mutations")
  void isFoundOut(Mutation mutation) {
    List<Document> changed = new ArrayList<>();
    boolean isThere = false;
    for (Document document : SampleTexts.library()) {
      boolean isMeant = document.uri().endsWith(mutation.file());
      isThere |= isMeant;
      changed.add(
          isMeant ? Document.of(document.uri(), mutated(document, mutation.changes())) : document);
    }
    assertTrue(isThere, mutation.file());
    List<String> rules =
        Listing.findings(changed).stream().map(Listing.Shown::rule).distinct().toList();
    assertTrue(rules.contains(mutation.rule()), () -> mutation + " shows " + rules);
  }

  @ParameterizedTest
  @MethodSource("mutations")
  void isSilentBefore(Mutation mutation) {
    assertEquals(
        List.of(),
        Listing.findings(SampleTexts.library()).stream()
            .filter(shown -> shown.rule().equals(mutation.rule()))
            .toList());
  }

  private static String mutated(Document document, List<String> changes) {
    String text = document.text().source().text();
    for (int i = 0; i < changes.size(); i += 2) {
      String next = text.replace(changes.get(i), changes.get(i + 1));
      assertNotEquals(text, next, changes.get(i));
      text = next;
    }
    return text;
  }
}
