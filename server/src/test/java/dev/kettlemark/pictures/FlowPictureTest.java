package dev.kettlemark.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.Formulas;
import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.model.Stage;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class FlowPictureTest {

  private static final String INSIDE = """
      formula paste
        percent of charge
        batch 500 g

      stage stirred
        60 % white-sugar
        q.s. water
        mix

      formula bar
        percent of charge
        batch 1000 g

      stage mass
        25 % paste at 40 °C
        q.s. oat-flake
        mix

      product bar-piece "Bar with a name so long that nobody could set it in a single line of a box"
        centre 30 g bar
        coat 20 % of finished couverture-milk-38
        make 10 pieces
      """;

  @Test
  void everyStageAndEveryTakingIsThere() {
    Snapshot samples = Drawn.samples();
    for (Entry entry : Drawn.formulas(samples)) {
      ComputedFormula computed = Formulas.computed(samples, entry).orElseThrow();
      Picture picture = Pictures.of(samples, entry, PictureKind.FLOW).orElseThrow();
      Element root = Drawn.root(picture);
      List<Stage> stages = computed.formula().stages();
      assertEquals(stages.size(), Drawn.groups(root, "stage").size(), picture.title());
      int takes = stages.stream().mapToInt(stage -> stage.takes().size()).sum();
      int made = (int) computed.amounts().lines().stream()
          .filter(line -> StageBox.isMade(computed, line))
          .count();
      int parts =
          Drawn.groups(root, "product").size() + Drawn.groups(root, "part").size();
      int arrows = Drawn.groups(root, "arrow").size();
      assertTrue(arrows >= takes + made, picture.title());
      assertEquals(parts == 0, arrows == takes + made, picture.title());
      stages.forEach(stage -> assertTrue(
          picture.words().contains(stage.title().orElse(stage.name().value())), picture.words()));
    }
  }

  /** By hand: 25 % of 1000 g; and 30 g are the eighty percent of a piece of 37.5 g, so 7.5 g of coat. */
  @Test
  void formulasInsideAndProductsAreThere() {
    Picture picture = Drawn.picture(Drawn.text(INSIDE), "bar", PictureKind.FLOW);
    Element root = Drawn.root(picture);
    assertEquals(1, Drawn.groups(root, "made").size());
    assertEquals(1, Drawn.groups(root, "product").size());
    assertEquals(1, Drawn.groups(root, "part").size());
    assertEquals(3, Drawn.groups(root, "arrow").size());
    assertTrue(picture.words().contains("paste goes into mass: 250 g, at 40 °C."), picture.words());
    assertTrue(picture.words().contains("coat, 7.50 g a piece"), picture.words());
  }

  @Test
  void boxesAndLabelsDoNotOverlap() {
    for (Snapshot each : List.of(Drawn.samples(), Drawn.text(INSIDE))) {
      for (Entry entry : Drawn.formulas(each)) {
        ComputedFormula computed = Formulas.computed(each, entry).orElseThrow();
        layoutIsClear(FlowLayout.of(FormulaFlow.of(computed, Pictures.products(each, computed))));
      }
    }
  }

  @Test
  void textsStayInTheirBoxes() {
    Snapshot samples = Drawn.samples();
    for (Entry entry : Drawn.formulas(samples)) {
      Element root = Drawn.root(Pictures.of(samples, entry, PictureKind.FLOW).orElseThrow());
      for (String kind : List.of("stage", "made", "product", "part")) {
        Drawn.groups(root, kind).forEach(FlowPictureTest::textsAreInside);
      }
    }
  }

  private static void textsAreInside(Element group) {
    Element box = Drawn.named(group, "rect").get(0);
    double right = Drawn.number(box, "x") + Drawn.number(box, "width");
    double foot = Drawn.number(box, "y") + Drawn.number(box, "height");
    for (Element text : Drawn.named(group, "text")) {
      double size = switch (text.getAttribute("class")) {
        case "head" -> TextWidth.HEAD;
        case "small" -> TextWidth.SMALL;
        default -> TextWidth.PLAIN;
      };
      double end = Drawn.number(text, "x") + TextWidth.of(text.getTextContent(), size);
      assertTrue(end <= right, text.getTextContent());
      assertTrue(Drawn.number(text, "y") < foot, text.getTextContent());
    }
  }

  private static void layoutIsClear(FlowLayout layout) {
    List<Rectangle2D> places = new ArrayList<>();
    for (FlowLayout.Box box : layout.boxes()) {
      places.add(new Rectangle2D.Double(
          box.x(), box.y(), box.node().width(), box.node().height()));
    }
    int boxes = places.size();
    for (FlowLayout.Arrow arrow : layout.arrows()) {
      places.add(new Rectangle2D.Double(
          arrow.label().x(),
          arrow.label().y(),
          arrow.arrow().labelWidth(),
          arrow.arrow().labelHeight()));
    }
    Rectangle2D frame = new Rectangle2D.Double(0, 0, layout.width(), layout.height());
    for (int i = 0; i < places.size(); i++) {
      assertTrue(frame.contains(places.get(i)));
      for (int j = 0; j < i; j++) {
        assertFalse(places.get(i).intersects(places.get(j)), places.get(i) + " " + places.get(j));
      }
    }
    layout.arrows().forEach(arrow -> arrowIsClear(arrow, places.subList(boxes, places.size())));
  }

  /** No arrow is drawn through a label. */
  private static void arrowIsClear(FlowLayout.Arrow arrow, List<Rectangle2D> labels) {
    for (int i = 1; i < arrow.line().size(); i++) {
      Point from = arrow.line().get(i - 1);
      Point to = arrow.line().get(i);
      Line2D line = new Line2D.Double(from.x(), from.y(), to.x(), to.y());
      labels.forEach(label -> assertFalse(line.intersects(label), arrow.arrow().toString()));
    }
  }
}
