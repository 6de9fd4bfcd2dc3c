package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class NavigationTest {

  private static final String LIBRARY = """
      --- house.kettle
      house quay
        bowl planetary-5 holds 4.8 L
        frame slab-400 measures 400 x 300 x 15 mm
      --- nougat.kettle
      # foam and honey stand here as plain words
      formula nougat "honey foam"
        basis liquid = honey in foam
      stage foam in planetary-5
        10 % honey
        0.3 % of liquid guar-gum
        whip
      stage body in planetary-5
        all of foam
        20 % of foam hazelnut-flour
        fold hazelnut-flour into foam while whisking on low
        deposit body into slab-400
      variant nougat-plant of nougat
        replace honey by 10 % agave-syrup
        add 0.1 % of liquid guar-gum in foam
      stage foam again
        blend guar-gum, agave-syrup
      trial T-1 of nougat on 2026-03-01 at quay
        lot honey "7"
        measured 143 °C end of foam
      sheet home of nougat for chef
      """;

  @Test
  void goesFromAUseToTheDeclaration() {
    checkDefinition("stage body\n  all of fo<|>am", "nothing");
    checkDefinition(marked("at qu", "ay"), "house.kettle 1:7 quay");
    checkDefinition(marked("variant nougat-plant of nou", "gat"), "nougat.kettle 2:9 nougat");
    checkDefinition(marked("in fo", "am\nstage foam again"), "nougat.kettle 4:7 foam");
    checkDefinition(marked("end of fo", "am"), "nougat.kettle 4:7 foam");
    checkDefinition(marked("0.1 % of liq", "uid"), "nougat.kettle 3:9 liquid");
    checkDefinition(marked("into slab", "-400"), "house.kettle 3:9 slab-400");
    checkDefinition(marked("sheet home of nou", "gat"), "nougat.kettle 2:9 nougat");
  }

  @Test
  void goesToThePantryAndToItsOverride() {
    FeatureFixture pantry = FeatureFixture.of("formula f\nstage a\n  1 g hon<|>ey\n");
    String found =
        pantry.draw(Navigation.definition(pantry.snapshot(), pantry.document(), pantry.offset()));
    assertEquals("kettlemark-pantry:", found.substring(0, found.indexOf('/')));
    FeatureFixture own =
        FeatureFixture.of("formula f\nstage a\n  1 g hon<|>ey\n--- own.kettle\ningredient honey\n");
    assertEquals(
        "own.kettle 1:12 honey",
        own.draw(
            Navigation.definition(own.snapshot(), own.document(), own.offset()).get(0)));
  }

  @Test
  void findsEveryUseAcrossVariantsAndTrials() {
    FeatureFixture fixture = FeatureFixture.of(marked("stage fo", "am in"));
    assertEquals(
        """
        nougat.kettle 4:7 foam
        nougat.kettle 3:27 foam
        nougat.kettle 9:10 foam
        nougat.kettle 10:11 foam
        nougat.kettle 11:28 foam
        nougat.kettle 15:35 foam
        nougat.kettle 16:7 foam
        nougat.kettle 20:26 foam""",
        fixture.draw(
            Navigation.references(fixture.snapshot(), fixture.document(), fixture.offset(), true)));
  }

  @Test
  void leavesTheDeclarationOutWhenAsked() {
    FeatureFixture fixture = FeatureFixture.of(marked("bowl planetary", "-5"));
    assertEquals(
        "nougat.kettle 4:15 planetary-5\nnougat.kettle 8:15 planetary-5",
        fixture.draw(Navigation.references(
            fixture.snapshot(), fixture.document(), fixture.offset(), false)));
  }

  @Test
  void highlightsOneDocument() {
    FeatureFixture fixture = FeatureFixture.of(marked("10 % ho", "ney"));
    assertEquals(
        "honey honey honey honey",
        Navigation.highlights(fixture.snapshot(), fixture.document(), fixture.offset()).stream()
            .map(found -> fixture.text(found.span()))
            .collect(Collectors.joining(" ")));
  }

  @Test
  void tellsStagesOfTwoFormulasApart() {
    FeatureFixture fixture = FeatureFixture.of("""
        formula one
        stage fo<|>am
          1 g water
        formula two
        stage foam
          1 g water
        """);
    assertEquals(
        "first.kettle 2:7 foam",
        fixture.draw(
            Navigation.references(fixture.snapshot(), fixture.document(), fixture.offset(), true)));
  }

  private static String marked(String before, String behind) {
    String whole = before + behind;
    if (!LIBRARY.contains(whole)) {
      throw new IllegalArgumentException("no " + whole);
    }
    return LIBRARY.replace(whole, before + "<|>" + behind);
  }

  private static void checkDefinition(String marked, String expected) {
    FeatureFixture fixture = FeatureFixture.of(marked);
    String found = fixture.draw(
        Navigation.definition(fixture.snapshot(), fixture.document(), fixture.offset()));
    assertEquals(expected, found.isEmpty() ? "nothing" : found);
  }
}
