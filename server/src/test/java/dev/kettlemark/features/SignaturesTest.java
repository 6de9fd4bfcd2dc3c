package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.model.FactForms;
import dev.kettlemark.model.Form;
import dev.kettlemark.model.Verb;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SignaturesTest {

  private static final String STAGE = "formula f\nstage s\n";

  /** The active way to write the line, with the part at the cursor between arrows. */
  private static String shown(String marked) {
    FeatureFixture fixture = FeatureFixture.of(marked);
    return Signatures.at(fixture.document(), fixture.offset())
        .map(help -> drawn(help.signatures().get(help.active())))
        .orElse("nothing");
  }

  private static String drawn(Signatures.Signature one) {
    return one.active()
        .map(i -> one.parameters().get(i))
        .map(part -> one.label().substring(0, part.start()) + "→"
            + one.label().substring(part.start(), part.end()) + "←"
            + one.label().substring(part.end()))
        .orElse(one.label());
  }

  @Test
  void marksTheClauseAtTheCursor() {
    assertEquals(
        "whip →[NAME, …]← [on SPEED] [for TIME] [until STATE]", shown(STAGE + "  whip <|>"));
    assertEquals(
        "whip [NAME, …] →[on SPEED]← [for TIME] [until STATE]", shown(STAGE + "  whip on <|>"));
    assertEquals(
        "whip [NAME, …] [on SPEED] →[for TIME]← [until STATE]",
        shown(STAGE + "  whip on high for 3 <|> until soft-peak"));
    assertEquals(
        "warm [NAME, …] →to TEMPERATURE← [on HEAT] [for TIME] [until STATE] [while stirring]",
        shown(STAGE + "  warm agar to <|>"));
  }

  @Test
  void aSpeedBehindWhileBelongsToWhatGoesOnMeanwhile() {
    assertEquals(
        "fold NAME, … [into NAME] →[while whisking on SPEED]←",
        shown(STAGE + "  fold nuts into foam while whisking on <|>"));
  }

  @Test
  void aClauseThatAVerbUsuallyLacksIsNoPartOfIt() {
    assertEquals("weigh [NAME, …]", shown(STAGE + "  weigh agar under <|>"));
  }

  @Test
  void showsWhatAFactTakes() {
    assertEquals(
        "scale NAME →reads STEP← to CAPACITY", shown("house h\n  scale fine reads 0.01 <|>"));
    assertEquals("status →WORD←", shown("formula f\n  status <|>"));
    assertEquals("expect →density 0.80-0.95 g/mL←", shown("formula f\n  expect density <|>"));
    assertEquals("replace OLD →by 14.00 % NEW←", shown("variant v of f\n  replace honey by <|>"));
    assertEquals("accept →RULE \"why\"←", shown(STAGE + "  accept <|>"));
  }

  @Test
  void saysNothingWhereThereIsNothingToSay() {
    for (String marked : List.of(
        STAGE + "  whi<|>",
        STAGE + "  <|>",
        STAGE + "  12 % <|>",
        STAGE + "  foldd <|>",
        STAGE + "  whip # on <|>",
        STAGE + "  never stir \"it <|>\"",
        "formula <|>",
        "<|>")) {
      assertEquals("nothing", shown(marked), marked);
    }
  }

  @Test
  void thePartsOfEveryFormLieInOrderInItsLabel() {
    Set<String> seen = new HashSet<>();
    Stream.of(
            Arrays.stream(Verb.values()).map(Verb::form),
            Stream.of(
                    FactForms.HOUSE,
                    FactForms.INGREDIENT,
                    FactForms.FORMULA,
                    FactForms.VARIANT_CHANGE,
                    FactForms.PRODUCT,
                    FactForms.TRIAL,
                    FactForms.SHEET)
                .flatMap(List::stream))
        .flatMap(forms -> forms)
        .forEach(form -> {
          assertFalse(form.alternatives().isEmpty(), form.word());
          form.alternatives().forEach(SignaturesTest::checkParts);
          seen.add(form.word());
        });
    assertTrue(seen.size() > 100, seen.size() + " words");
  }

  private static void checkParts(Form.Alternative way) {
    int end = way.label().indexOf(' ');
    assertFalse(way.parts().isEmpty(), way.label());
    for (Form.Part part : way.parts()) {
      assertTrue(end < part.start() && part.start() < part.end(), way.label());
      end = part.end();
    }
    assertEquals(way.label().length(), end, way.label());
  }
}
