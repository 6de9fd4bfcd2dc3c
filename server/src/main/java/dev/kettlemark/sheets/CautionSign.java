package dev.kettlemark.sheets;

import java.util.Map;
import java.util.Optional;

/**
 * A small drawing beside a caution, so that the eye finds it again.
 *
 * <p>The drawings are our own and follow no standard of safety signs: they have no triangle and no crossed ring, and
 * the text beside them is the information. They are lines in the colour of the text, so that grey print and forced
 * colours keep them.
 */
final class CautionSign {

  private static final String FRAME = "<rect x=\"1\" y=\"1\" width=\"26\" height=\"26\" rx=\"5\"/>";

  /** Each by the word of its caution, on a square of 28. */
  private static final Map<String, String> DRAWINGS = Map.ofEntries(
      // A thermometer that is full, and a drop.
      Map.entry(
          "hot-sugar",
          "<path d=\"M9 7a2 2 0 0 1 4 0v9a4 4 0 1 1-4 0zM11 10v8\"/>"
              + "<circle cx=\"11\" cy=\"19.5\" r=\"1.8\" fill=\"currentColor\"/>"
              + "<path d=\"M20 9c1.7 2.3 2.8 3.7 2.8 5.2a2.8 2.8 0 0 1-5.6 0c0-1.5 1.1-2.9 2.8-5.2z\"/>"),
      // A pan under wavy lines.
      Map.entry(
          "steam",
          "<path d=\"M6 16h16v4a3 3 0 0 1-3 3H9a3 3 0 0 1-3-3zM4 18h2M22 18h2\"/>"
              + "<path d=\"M10 13c-1.5-2 1.5-3 0-5.5M14 13c-1.5-2 1.5-3 0-5.5M18 13c-1.5-2 1.5-3 0-5.5\"/>"),
      // A whisk that turns.
      Map.entry(
          "mixer-guard",
          "<path d=\"M14 4v6M14 10c-5 2-5 10 0 14c5-4 5-12 0-14zM14 10v14\"/>"
              + "<path d=\"M5 14c0-3 1.5-5 3-6M8.5 10.5v-2.8h-2.8M23 14c0 3-1.5 5-3 6M19.5 17.5v2.8h2.8\"/>"),
      // A heap under dust.
      Map.entry(
          "powder-dust",
          "<path d=\"M4 23c3-1 5-8 10-8s7 7 10 8z\"/><g fill=\"currentColor\" stroke=\"none\">"
              + "<circle cx=\"8\" cy=\"11\" r=\"1.2\"/><circle cx=\"12\" cy=\"7\" r=\"1.2\"/>"
              + "<circle cx=\"15\" cy=\"11.5\" r=\"1.2\"/><circle cx=\"18\" cy=\"6.5\" r=\"1.2\"/>"
              + "<circle cx=\"21\" cy=\"11\" r=\"1.2\"/></g>"),
      // A cracked egg.
      Map.entry(
          "raw-egg",
          "<path d=\"M14 5c4 0 7 6 7 10.5a7 7 0 0 1-14 0c0-4.5 3-10.5 7-10.5z\"/>"
              + "<path d=\"M7.3 14l2.7 2 2.7-3 2.7 3 2.7-3 2.6 2\"/>"),
      // An infant in a cell of the comb.
      Map.entry(
          "honey-infant",
          "<path d=\"M14 4l8.5 5v10l-8.5 5-8.5-5v-10z\"/><circle cx=\"14\" cy=\"14.5\" r=\"4.5\"/>"
              + "<path d=\"M12.3 16.2c1 1 2.4 1 3.4 0M14 10c-.8-1 .2-2 1.2-1.7\"/>"
              + "<g fill=\"currentColor\" stroke=\"none\"><circle cx=\"12.4\" cy=\"13.9\" r=\".8\"/>"
              + "<circle cx=\"15.6\" cy=\"13.9\" r=\".8\"/></g>"),
      // A hazelnut.
      Map.entry(
          "nut",
          "<path d=\"M6 12.5c0-4 3.5-6.5 8-6.5s8 2.5 8 6.5c-2.7 1.2-5.3 1.2-8 0c-2.7 1.2-5.3 1.2-8 0z\"/>"
              + "<path d=\"M7.5 13.5c.5 5 3.5 8 6.5 10c3-2 6-5 6.5-10\"/>"),
      // A head from the side with a piece in its throat.
      Map.entry(
          "choking",
          "<path d=\"M9 24v-5c-3-1.5-4-4-4-7c0-4.5 3.5-7.5 8-7.5c4.5 0 7.5 3 7.5 6.5l2 4h-2v3c0 1.5-1 2-2.5 2h-2v4\"/>"
              + "<circle cx=\"12.5\" cy=\"18\" r=\"2.2\" fill=\"currentColor\"/>"),
      // A stemmed glass.
      Map.entry(
          "alcohol",
          "<path d=\"M9 5h10l-.8 6.5a4.2 4.2 0 0 1-8.4 0zM9.5 9.5h9M14 16v7M10 23h8\"/>"),
      // A winding way with an arrow out.
      Map.entry(
          "laxative",
          "<path d=\"M8 6h11a2.5 2.5 0 0 1 0 5h-10a2.5 2.5 0 0 0 0 5h9c2 0 2 1.5 2 3v4M17 20.5l3 3 3-3\"/>"),
      // A child that jumps.
      Map.entry(
          "child-activity",
          "<circle cx=\"14\" cy=\"7.5\" r=\"2.5\"/><path d=\"M8 9l6 3.5 6-3.5M14 12.5v5M14 17.5l-4 3.5 1 2M14 17.5l4 3.5-1 2M4.5 14l2 1.5-2 1.5M23.5 14l-2 1.5 2 1.5\"/>"),
      // A mitten.
      Map.entry(
          "protection",
          "<path d=\"M9 24v-9c0-6 .5-10 4-10s4 4 4 8c1.2-2.5 4-2.5 4 0l-3 6v5zM9 20h9\"/>"));

  private CautionSign() {}

  /** The drawing of a caution as an SVG element that readers by ear pass over; none for other words. */
  static Optional<Element> of(String caution) {
    return Optional.ofNullable(DRAWINGS.get(caution))
        .map(drawing -> Element.of("span").with("class", "sign").picture(svg(drawing)));
  }

  private static String svg(String drawing) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 28 28\" width=\"28\" height=\"28\" aria-hidden=\"true\""
        + " focusable=\"false\" fill=\"none\" stroke=\"currentColor\" stroke-width=\"1.7\" stroke-linecap=\"round\""
        + " stroke-linejoin=\"round\">" + FRAME + drawing + "</svg>\n";
  }
}
