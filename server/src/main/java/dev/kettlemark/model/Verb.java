package dev.kettlemark.model;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The step verbs: what each does to the mass, and what a reader should know of it. */
public enum Verb {
  WEIGH(Effect.NONE, "weigh what the stage lists"),
  SIFT(Effect.NONE, "pass a powder through a sieve"),
  BLEND(Effect.MERGE, "mix dry powders evenly, so that a gum cannot lump"),
  DISPERSE(Effect.MERGE, "spread a powder in a liquid without lumps"),
  SPRINKLE(Effect.MERGE, "let a powder fall slowly onto a stirred liquid"),
  HYDRATE(Effect.MERGE, "give a gum or protein the time and heat to take up water"),
  SOAK(Effect.MERGE, "let gelatine or a powder swell in cold liquid"),
  STAND(Effect.WAIT, "leave it alone for a time"),
  BOIL(Effect.BOIL, "bring to the boil; water leaves unless a lid is on"),
  COOK(Effect.COOK, "boil off water up to a temperature"),
  WARM(Effect.HEAT, "bring to a temperature below the boil"),
  COOL(Effect.HEAT, "let fall to a temperature"),
  HOLD(Effect.HEAT, "keep at a temperature for a time"),
  WHIP(Effect.AERATE, "beat air in"),
  STREAM(Effect.MERGE, "pour in a thin even stream while the whisk runs"),
  POUR(Effect.MERGE, "pour in at once"),
  FOLD(Effect.MERGE, "work in gently, so that the air stays"),
  MIX(Effect.MERGE, "stir together"),
  KEEP(Effect.NONE, "hold a state or go on with an action until later"),
  DEPOSIT(Effect.SHAPE, "fill into moulds, frames or starch"),
  PIPE(Effect.SHAPE, "press out of a bag"),
  SPREAD(Effect.SHAPE, "spread to an even layer"),
  SET(Effect.WAIT, "leave until it keeps its shape"),
  REST(Effect.WAIT, "leave to even out"),
  CUT(Effect.SHAPE, "cut into pieces"),
  TEMPER(Effect.HEAT, "bring cocoa butter to its stable crystal"),
  BOTTOM(Effect.SHAPE, "give the underside a coat"),
  ENROBE(Effect.SHAPE, "coat all round"),
  DIP(Effect.SHAPE, "dip into a coat"),
  DUST(Effect.SHAPE, "cover with a fine powder"),
  DRY(Effect.WAIT, "let water leave in warm air"),
  PACK(Effect.SHAPE, "pack against moisture"),
  CHECK(Effect.MEASURE, "measure and compare"),
  NEVER(Effect.NONE, "what must not be done");

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
  private final String meaning;

  Verb(Effect effect, String meaning) {
    this.effect = effect;
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

  /** One clause that a cook understands. */
  public String meaning() {
    return meaning;
  }
}
