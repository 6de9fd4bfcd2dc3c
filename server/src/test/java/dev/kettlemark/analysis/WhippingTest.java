package dev.kettlemark.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a {@code whip} without names acts on. */
class WhippingTest {

  @Test
  void aFoamIsWhippedFurtherWithoutWhatWaitsBesideIt() {
    StageResult body = stage("body", """
        formula nougat
          batch 1000 g
        stage foam
          20 % egg-white-pasteurised
          whip on medium until soft-peak
        stage body
          50 % honey
          30 % roasted-almond at 60 °C
          all of foam
          stream honey into foam
          whip on high for 3 min
          fold roasted-almond
        """);
    assertEquals(Set.of("foam", "honey"), namesBefore(body, 1));
    assertEquals(Set.of("foam", "honey", "roasted-almond"), namesBefore(body, 2));
  }

  @Test
  void theFirstWhipTakesAllThatTheStageHolds() {
    StageResult foam = stage("foam", """
        formula foam
          batch 1000 g
        stage foam
           5 % egg-white-powder
          95 % water
          whip on medium until soft-peak
        """);
    assertEquals(Set.of("egg-white-powder", "water"), namesBefore(foam, 0));
  }

  private static Set<String> namesBefore(StageResult stage, int step) {
    return StageParcel.namesOf(stage.steps().get(step).before());
  }

  private static StageResult stage(String name, String text) {
    Document document = Document.of("foam.kettle", text);
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    Snapshot snapshot = Snapshot.of(Library.of(all));
    return Formulas.computed(snapshot, document.entries().get(0))
        .flatMap(formula -> formula.process().stage(name))
        .orElseThrow();
  }
}
