package dev.kettlemark.model;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The states that a mass can reach, each with what it looks like at the bench. */
public enum State {
  WET_MIX(Line.MIX, 1, "all powder is wet, no dry pockets"),
  LUMP_FREE(Line.MIX, 2, "smooth between the fingers, no lumps"),
  HYDRATED(Line.MIX, 3, "swollen and even, no grains left"),
  BLOOMED(Line.MIX, 3, "gelatine swollen soft right through"),
  DISSOLVED(Line.MIX, 4, "clear on the spoon, no crystals on the wall"),
  FOAM(Line.FOAM, 1, "large uneven bubbles, flows"),
  SOFT_PEAK(Line.FOAM, 2, "a peak that bends over when the whisk is lifted"),
  FIRM_PEAK(Line.FOAM, 3, "a peak that stands with a bent tip"),
  STIFF_PEAK(Line.FOAM, 4, "a peak that stands straight; glossy, not grainy"),
  RIBBON(Line.FOAM, 2, "falls from the whisk in a ribbon that stays a moment"),
  THREAD(Line.SYRUP, 1, "draws a thin thread between two fingers"),
  SOFT_BALL(Line.SYRUP, 2, "a drop in cold water forms a soft ball that flattens"),
  FIRM_BALL(Line.SYRUP, 3, "a drop in cold water forms a ball that keeps its shape"),
  HARD_BALL(Line.SYRUP, 4, "a drop in cold water forms a hard ball that still gives"),
  SOFT_CRACK(Line.SYRUP, 5, "a drop in cold water draws into threads that bend"),
  HARD_CRACK(Line.SYRUP, 6, "a drop in cold water snaps clean"),
  LIGHT_CARAMEL(Line.SYRUP, 7, "straw to light amber"),
  CARAMEL(Line.SYRUP, 8, "amber, smells of caramel"),
  CLEAR(Line.MIX, 4, "see-through, no haze"),
  GELLED(Line.SETTING, 2, "keeps its shape and springs back"),
  SET(Line.SETTING, 3, "keeps its shape when cut"),
  COOL(Line.SETTING, 1, "no longer warm to the hand"),
  DRY(Line.SETTING, 4, "does not stick to a dry finger"),
  TEMPERED(Line.COAT, 1, "sets glossy on a knife within minutes"),
  TACKY(Line.SETTING, 1, "sticks to the finger without coming off"),
  SKINNED(Line.SETTING, 2, "has a dry skin, soft below");

  /** The ways that a mass goes; ranks compare only within one. */
  public enum Line {
    MIX,
    FOAM,
    SYRUP,
    SETTING,
    COAT
  }

  private static final Map<String, State> BY_WORD =
      Arrays.stream(values()).collect(Collectors.toMap(State::word, Function.identity()));

  private final Line line;
  private final int rank;
  private final String look;

  State(Line line, int rank, String look) {
    this.line = line;
    this.rank = rank;
    this.look = look;
  }

  public static Optional<State> of(String word) {
    return Optional.ofNullable(BY_WORD.get(word));
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  public Line line() {
    return line;
  }

  /** What it looks like at the bench. */
  public String look() {
    return look;
  }

  /** Whether a mass in this state has come at least as far as another on the same way. */
  public boolean reaches(State other) {
    return line == other.line && rank >= other.rank;
  }
}
