package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.library.Place;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class FeedingTest {

  private static final String LIBRARY = """
      formula praline
        batch 500 g
      stage paste
        50 % white-sugar
        50 % almond-paste
        mix

      formula nougat
        batch 1000 g
      stage foam
        10 % water
        20 % praline
      stage syrup
        70 % white-sugar
      stage body
        all of foam
        part 1/2 of syrup
        part 1/2 of syrup
        mix

      variant soft of nougat
        add 5 % honey in foam
      stage body again
        whip

      product bar
        centre 20 g nougat
        coat 5 g praline
      """;

  private static String into(String marked) {
    FeatureFixture fixture = FeatureFixture.of(marked);
    Node node =
        Feeding.at(fixture.snapshot(), fixture.document(), fixture.offset()).orElseThrow();
    return drawn(fixture, Feeding.into(fixture.snapshot(), node.symbol()));
  }

  private static String from(String marked) {
    FeatureFixture fixture = FeatureFixture.of(marked);
    Node node =
        Feeding.at(fixture.snapshot(), fixture.document(), fixture.offset()).orElseThrow();
    return drawn(fixture, Feeding.from(fixture.snapshot(), node.symbol()));
  }

  /** {@code body (nougat · 1000 g left) 16, 17}: name, detail, lines. */
  private static String drawn(FeatureFixture fixture, List<Node.Link> links) {
    return links.stream()
        .map(link -> link.node().symbol().name() + " (" + link.node().detail() + ") "
            + link.lines().stream()
                .map(place -> line(fixture, place))
                .collect(Collectors.joining(", ")))
        .collect(Collectors.joining("\n"));
  }

  private static String line(FeatureFixture fixture, Place place) {
    return String.valueOf(fixture
            .snapshot()
            .library()
            .document(place.uri())
            .orElseThrow()
            .text()
            .source()
            .lineAt(place.span().start())
        + 1);
  }

  private static String at(String before, String behind) {
    String joined = before + behind;
    int place = LIBRARY.indexOf(joined);
    if (place < 0) {
      throw new AssertionError(joined);
    }
    return LIBRARY.substring(0, place + before.length()) + "<|>"
        + LIBRARY.substring(place + before.length());
  }

  @Test
  void aStageFeedsTheStagesThatTakeIt() {
    // 30 % and 70 % of 1000 g, by hand; nothing boils off without a cook.
    assertEquals("body (nougat · 1000.0 g left) 17, 18", into(at("stage syr", "up")));
    assertEquals("body (nougat · 1000.0 g left) 16", into(at("all of fo", "am")));
  }

  @Test
  void theLastStageFeedsItsFormula() {
    assertEquals("nougat (1000.0 g finished) 15", into(at("stage bo", "dy\n  all")));
  }

  @Test
  void aFormulaFeedsStagesAndProducts() {
    assertEquals(
        "foam (nougat · 300.0 g left) 12\nbar (25.0 g a piece) 28",
        into(at("formula pra", "line")));
  }

  @Test
  void aStageTakesStagesAndMaterials() {
    assertEquals("""
        foam (nougat · 300.0 g left) 16
        syrup (nougat · 700.0 g left) 17, 18""", from(at("stage bo", "dy\n  all")));
    assertEquals("""
        water (100.0 g taken) 11
        praline (200.0 g taken) 12""", from(at("stage fo", "am")));
  }

  @Test
  void aFormulaTakesItsLastStageAndAProductItsParts() {
    assertEquals("body (nougat · 1000.0 g left) 15", from(at("formula nou", "gat")));
    assertEquals(
        "nougat (1000.0 g finished) 27\npraline (500.0 g finished) 28",
        from(at("product ba", "r")));
  }

  @Test
  void aVariantTakesWhatItAddsAndTheStageOfItsParent() {
    List<String> taken =
        from(at("variant so", "ft")).lines().map(l -> l.split(" ")[0]).toList();
    assertEquals(List.of("honey", "body"), taken);
  }

  @Test
  void variantsHangBelowTheirParent() {
    FeatureFixture fixture = FeatureFixture.of(at("formula nou", "gat"));
    Node nougat =
        Variants.at(fixture.snapshot(), fixture.document(), fixture.offset()).orElseThrow();
    assertEquals(
        List.of("soft"),
        Variants.of(fixture.snapshot(), nougat.symbol()).stream()
            .map(node -> node.symbol().name())
            .toList());
    FeatureFixture variant = FeatureFixture.of(at("variant so", "ft"));
    Node soft =
        Variants.at(variant.snapshot(), variant.document(), variant.offset()).orElseThrow();
    assertEquals(
        "nougat",
        Variants.parent(variant.snapshot(), soft.symbol())
            .orElseThrow()
            .symbol()
            .name());
  }

  @Test
  void aStageIsWrittenAgainInVariants() {
    FeatureFixture fixture = FeatureFixture.of(at("stage bo", "dy\n  all"));
    assertEquals(
        "first.kettle 23:7 body",
        fixture.draw(
            Variants.implementations(fixture.snapshot(), fixture.document(), fixture.offset())));
    FeatureFixture parent = FeatureFixture.of(at("formula nou", "gat"));
    assertEquals(
        "first.kettle 21:9 soft",
        parent.draw(
            Variants.implementations(parent.snapshot(), parent.document(), parent.offset())));
  }
}
