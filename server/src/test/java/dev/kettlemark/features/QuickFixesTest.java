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

  private static List<Action> at(Span range) {
    return QuickFixes.at(FIXTURE.snapshot(), FIXTURE.document(), range).stream()
        .filter(action -> action.finding().rule().id().equals("missing-unit"))
        .toList();
  }
}
