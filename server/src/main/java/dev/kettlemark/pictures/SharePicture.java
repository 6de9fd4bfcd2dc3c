package dev.kettlemark.pictures;

import dev.kettlemark.analysis.ComputedFormula;
import dev.kettlemark.analysis.StageResult;
import dev.kettlemark.model.Composition;
import dev.kettlemark.quantity.Display;
import dev.kettlemark.quantity.Outcome;
import dev.kettlemark.quantity.Ratio;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What each stage leaves, as bars of a hundred percent by what it is made of. */
final class SharePicture {

  private static final double WIDTH = 640;
  private static final double MARGIN = 8;
  private static final double BAR = 26;
  private static final double LINE = 16;
  private static final double SWATCH = 14;
  private static final double GAP = 10;

  /** What would be told as 0.0 % is neither told nor drawn. */
  private static final double SEEN = 0.0005;

  /** From the foot of a line of text to the line its letters stand on. */
  private static final double BASE = 4;

  private final List<StageResult> stages;
  private final Svg svg;
  private double y = MARGIN;

  private SharePicture(List<StageResult> stages, Svg svg) {
    this.stages = stages;
    this.svg = svg;
  }

  static Picture of(ComputedFormula computed) {
    String name = computed.formula().name().value();
    SharePicture picture =
        new SharePicture(computed.process().stages(), new Svg(PictureKind.SHARES, name));
    return picture.drawn("What " + computed.formula().title().orElse(name) + " is made of");
  }

  private Picture drawn(String title) {
    List<ShareKind> kinds = Stream.of(ShareKind.values()).filter(this::appears).toList();
    kinds.forEach(kind -> svg.pattern(kind.word(), kind.size(), kind.tile()));
    legend(kinds);
    for (int i = 0; i < stages.size(); i++) {
      stage(i);
    }
    String words = stages.stream()
        .map(stage -> heading(stage) + ": " + makeup(stage) + ".")
        .collect(Collectors.joining(" "));
    return svg.picture(title, words, WIDTH + 2 * MARGIN, y + MARGIN);
  }

  private boolean appears(ShareKind kind) {
    return stages.stream()
        .flatMap(stage -> stage.left().composition().toOptional().stream())
        .anyMatch(composition -> kind.of(composition) >= SEEN);
  }

  private void legend(List<ShareKind> kinds) {
    double x = MARGIN;
    for (ShareKind kind : kinds) {
      double room = SWATCH + BASE + TextWidth.of(kind.word(), TextWidth.SMALL) + 2 * GAP;
      if (x + room > WIDTH + MARGIN && x > MARGIN) {
        x = MARGIN;
        y += LINE + BASE;
      }
      svg.filled(kind.word(), x, y, SWATCH, SWATCH);
      svg.text("small", x + SWATCH + BASE, y + SWATCH - BASE / 2, kind.word());
      x += room;
    }
    y += LINE + GAP;
  }

  private void stage(int index) {
    StageResult stage = stages.get(index);
    svg.open("stage", "stage-" + index);
    for (String line : TextWidth.wrapped(heading(stage), TextWidth.HEAD, WIDTH)) {
      y += LINE;
      svg.text("head", MARGIN, y - BASE, line);
    }
    stage.left().composition().toOptional().ifPresent(this::bar);
    for (String line : TextWidth.wrapped(makeup(stage), TextWidth.SMALL, WIDTH)) {
      y += LINE;
      svg.text("small", MARGIN, y - BASE, line);
    }
    y += GAP;
    svg.close();
  }

  private void bar(Composition composition) {
    double x = MARGIN;
    for (ShareKind kind : ShareKind.values()) {
      double share = kind.of(composition);
      if (share >= SEEN) {
        svg.filled(kind.word(), x, y, share * WIDTH, BAR);
        x += share * WIDTH;
      }
    }
    y += BAR;
  }

  private String heading(StageResult stage) {
    boolean last = stage.equals(stages.get(stages.size() - 1));
    return StageNames.title(stage) + (last ? ", the finished mass" : "") + ", "
        + StageNames.mass(stage);
  }

  private static String makeup(StageResult stage) {
    return stage.left().composition().fold(SharePicture::words, SharePicture::unknown);
  }

  private static String words(Composition composition) {
    List<String> parts = new ArrayList<>();
    for (ShareKind kind : ShareKind.values()) {
      double share = kind.of(composition);
      if (share >= SEEN) {
        parts.add(kind.word() + " " + Display.estimate(Ratio.ofFraction(share)));
      }
    }
    return String.join(", ", parts);
  }

  private static String unknown(Outcome.Unknown<Composition> unknown) {
    return "what it is made of is unknown: " + unknown.because();
  }
}
