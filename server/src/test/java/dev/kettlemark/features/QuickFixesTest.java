package dev.kettlemark.features;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.features.QuickFixes.Action;
import dev.kettlemark.text.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

class QuickFixesTest {

  private static final FeatureFixture FIXTURE = FeatureFixture.of("""
      ingredient further-up
        contains 100 % water

      formula f
        percent of charge
      stage a
        4<|>0 further-up
        60 % water
      """);

  @Test
  void mendsWhereTheFindingStandsInTheWholeText() {
    Action first = at(Span.at(FIXTURE.offset())).get(0);
    assertEquals("Add `%`", first.title());
    assertEquals(true, first.preferred());
    assertEquals("missing-unit", first.finding().rule().id());
    assertEquals("40", FIXTURE.text(first.span()));
    assertEquals(
        FIXTURE.document().text().source().text().replace("40 further-up", "40 % further-up"),
        FIXTURE
            .document()
            .text()
            .source()
            .with(first.edits().getOrDefault(FIXTURE.document().uri(), List.of()))
            .text());
  }

  @Test
  void offersNothingElsewhere() {
    assertEquals(List.of(), at(Span.at(3)));
  }

  @Test
  void offersToAcceptWhatIsFoundOncePerRule() {
    List<Action> offers = QuickFixes.acceptances(
        FIXTURE.snapshot(),
        FIXTURE.document(),
        new Span(0, FIXTURE.document().text().source().length()));
    List<String> titles = offers.stream().map(Action::title).toList();
    assertEquals(titles.stream().distinct().toList(), titles);
    Action offer = offers.stream()
        .filter(action -> action.finding().rule().id().equals("missing-unit"))
        .findFirst()
        .orElseThrow();
    assertEquals("Accept `missing-unit` with a reason", offer.title());
    assertEquals(false, offer.preferred());
    assertEquals(
        FIXTURE.document().text().source().text() + "  accept    missing-unit \"reason\"\n",
        FIXTURE
            .document()
            .text()
            .source()
            .with(offer.edits().getOrDefault(FIXTURE.document().uri(), List.of()))
            .text());
  }

  private static List<Action> at(Span range) {
    return QuickFixes.at(FIXTURE.snapshot(), FIXTURE.document(), range).stream()
        .filter(action -> action.finding().rule().id().equals("missing-unit"))
        .toList();
  }
}
