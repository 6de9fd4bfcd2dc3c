package dev.kettlemark.pictures;

import java.util.List;
import java.util.stream.Stream;

/**
 * A box of the flow: a stage, or something that goes into the formula or is made of it.
 *
 * @param id told apart from all others of the picture
 * @param kind what it stands for
 * @param title its name, which stands on top
 * @param lines what stands below
 * @param words the same as a sentence
 */
record FlowNode(String id, Kind kind, String title, List<BoxLine> lines, String words) {

  private static final double WIDEST_TEXT = 240;
  private static final double PADDING = 10;

  /** What a box stands for. */
  enum Kind {
    STAGE("stage", ""),
    /** Something that another formula makes. */
    MADE("made", "dashed"),
    /** A piece that is sold. */
    PRODUCT("product", "thick"),
    /** A coat, layer or wafer of a piece. */
    PART("part", "dotted");

    private final String word;
    private final String border;

    Kind(String word, String border) {
      this.word = word;
      this.border = border;
    }

    String word() {
      return word;
    }

    String border() {
      return border;
    }
  }

  FlowNode {
    Stream<BoxLine> head =
        TextWidth.wrapped(title, TextWidth.HEAD, WIDEST_TEXT).stream().map(BoxLine::head);
    lines =
        Stream.concat(head, lines.stream().map(line -> line.fit(WIDEST_TEXT))).toList();
  }

  double width() {
    return lines.stream().mapToDouble(BoxLine::width).max().orElse(0) + 2 * PADDING;
  }

  double height() {
    return lines.stream().mapToDouble(line -> line.look().height()).sum() + 2 * PADDING;
  }

  static double padding() {
    return PADDING;
  }
}
