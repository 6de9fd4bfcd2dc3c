package dev.kettlemark.model;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The step verbs: what each does to the mass, and what a reader should know of it. */
public enum Verb {
  WEIGH(Effect.NONE, "[NAME, …]", "weigh what the stage lists"),
  SIFT(Effect.NONE, "NAME, … [into NAME]", "pass a powder through a sieve"),
  BLEND(Effect.MERGE, "NAME, … [until STATE]", "mix dry powders evenly, so that a gum cannot lump"),
  DISPERSE(
      Effect.MERGE,
      "NAME, … in NAME [while stirring] [until STATE]",
      "spread a powder in a liquid without lumps"),
  SPRINKLE(
      Effect.MERGE,
      "NAME, … into NAME [over TIME] [while whisking on SPEED]",
      "let a powder fall slowly onto a stirred liquid"),
  HYDRATE(
      Effect.MERGE,
      "[NAME, …] [above TEMPERATURE] [for TIME] [until STATE]",
      "give a gum or protein the time and heat to take up water"),
  SOAK(
      Effect.MERGE,
      "[NAME, …] [in NAME] [for TIME] [until STATE]",
      "let gelatine or a powder swell in cold liquid"),
  STAND(Effect.WAIT, "[for TIME] [at TEMPERATURE] [until STATE]", "leave it alone for a time"),
  BOIL(
      Effect.BOIL,
      "[NAME, …] [under lid] [to TEMPERATURE] [for TIME] [until STATE]",
      "bring to the boil; water leaves unless a lid is on"),
  COOK(
      Effect.COOK,
      "[NAME, …] [to TEMPERATURE ± TOLERANCE] [until STATE] [at PLACE] [while stirring]",
      "boil off water up to a temperature"),
  WARM(
      Effect.HEAT,
      "[NAME, …] to TEMPERATURE [on HEAT] [for TIME] [until STATE] [while stirring]",
      "bring to a temperature below the boil"),
  COOL(
      Effect.HEAT,
      "[NAME, …] to TEMPERATURE [for TIME] [while whisking on SPEED]",
      "let fall to a temperature"),
  HOLD(
      Effect.HEAT,
      "[NAME, …] at TEMPERATURE [on HEAT] [for TIME]",
      "keep at a temperature for a time"),
  WHIP(Effect.AERATE, "[NAME, …] [on SPEED] [for TIME] [until STATE]", "beat air in"),
  STREAM(
      Effect.MERGE,
      "NAME into NAME [over TIME] [while whisking on SPEED]",
      "pour in a thin even stream while the whisk runs"),
  POUR(Effect.MERGE, "NAME, … into NAME [over TIME] [while whisking on SPEED]", "pour in at once"),
  FOLD(
      Effect.MERGE,
      "NAME, … [into NAME] [while whisking on SPEED]",
      "work in gently, so that the air stays"),
  MIX(
      Effect.MERGE,
      "[NAME, …] [for TIME] [until STATE] [while whisking on SPEED]",
      "stir together"),
  KEEP(Effect.NONE, "ACTION [until STEP]", "hold a state or go on with an action until later"),
  DEPOSIT(
      Effect.SHAPE,
      "[NAME] [into MOULD] [between NAME] [above TEMPERATURE] [within TIME]",
      "fill into moulds, frames or starch"),
  PIPE(Effect.SHAPE, "[NAME] [into MOULD] [above TEMPERATURE] [within TIME]", "press out of a bag"),
  SPREAD(
      Effect.SHAPE,
      "[NAME] [into FRAME] [above TEMPERATURE] [within TIME]",
      "spread to an even layer"),
  SET(
      Effect.WAIT,
      "[for TIME] [at TEMPERATURE] [below HUMIDITY] [until STATE]",
      "leave until it keeps its shape"),
  REST(
      Effect.WAIT,
      "[for TIME] [at TEMPERATURE] [below HUMIDITY] [until STATE]",
      "leave to even out"),
  CUT(Effect.SHAPE, "[NAME] LENGTH x WIDTH mm [at TEMPERATURE]", "cut into pieces"),
  TEMPER(
      Effect.HEAT,
      "NAME to TEMPERATURE [on HEAT] [until STATE]",
      "bring cocoa butter to its stable crystal"),
  BOTTOM(Effect.SHAPE, "[NAME] with NAME", "give the underside a coat"),
  ENROBE(Effect.SHAPE, "[NAME] with NAME", "coat all round"),
  DIP(Effect.SHAPE, "[NAME] in NAME", "dip into a coat"),
  DUST(Effect.SHAPE, "[NAME] with NAME, …", "cover with a fine powder"),
  DRY(
      Effect.WAIT,
      "[for TIME] [at TEMPERATURE] [below HUMIDITY] [until STATE]",
      "let water leave in warm air"),
  PACK(Effect.SHAPE, "[NAME] [in NAME] [within TIME] [below HUMIDITY]", "pack against moisture"),
  CHECK(Effect.MEASURE, "QUANTITY FIGURE [of NAME]", "measure and compare"),
  NEVER(Effect.NONE, "ACTION \"why\"", "what must not be done");

  /** What a verb does in the process model. */
  public enum Effect {
    /** Brings parcels together. */
    MERGE,
    /** Boils off water up to the temperature written. */
    COOK,
    /** Boils; without a lid and a target the water lost is not modelled. */
    BOIL,
    /** Changes the temperature only. */
    HEAT,
    /** Beats air in. */
    AERATE,
    /** Waits. */
    WAIT,
    /** Measures; a density that is checked is the one that the mass is brought to. */
    MEASURE,
    /** Gives a shape. */
    SHAPE,
    /** Leaves the mass as it is. */
    NONE
  }

  private static final Map<String, Verb> BY_WORD =
      Arrays.stream(values()).collect(Collectors.toMap(Verb::word, Function.identity()));

  private final Effect effect;
  private final String takes;
  private final String meaning;

  Verb(Effect effect, String takes, String meaning) {
    this.effect = effect;
    this.takes = takes;
    this.meaning = meaning;
  }

  public static Optional<Verb> of(String word) {
    return Optional.ofNullable(BY_WORD.get(word));
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  public Effect effect() {
    return effect;
  }

  /** What usually stands behind it; what may be left out stands in brackets. */
  public Form form() {
    return new Form(word(), "`" + takes + "`", meaning);
  }

  /** One clause that a cook understands. */
  public String meaning() {
    return meaning;
  }
}
