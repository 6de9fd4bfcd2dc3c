package dev.kettlemark.model;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A constituent that the models tell apart.
 *
 * <p>Sugars count as anhydrous; the water of a hydrate counts as water.
 */
public enum Component {
  WATER("water", Family.WATER),
  SUCROSE("sucrose", Family.SUGAR),
  GLUCOSE("glucose", Family.SUGAR),
  FRUCTOSE("fructose", Family.SUGAR),
  GALACTOSE("galactose", Family.SUGAR),
  MALTOSE("maltose", Family.SUGAR),
  LACTOSE("lactose", Family.SUGAR),
  TREHALOSE("trehalose", Family.SUGAR),
  MALTOTRIOSE("maltotriose", Family.OLIGOSACCHARIDE),
  /** Saccharides of four and more glucose units, as in glucose syrup. */
  HIGHER_SACCHARIDES("higher-saccharides", Family.OLIGOSACCHARIDE),
  STARCH("starch", Family.STARCH),
  SORBITOL("sorbitol", Family.POLYOL),
  MANNITOL("mannitol", Family.POLYOL),
  XYLITOL("xylitol", Family.POLYOL),
  MALTITOL("maltitol", Family.POLYOL),
  ISOMALT("isomalt", Family.POLYOL),
  LACTITOL("lactitol", Family.POLYOL),
  ERYTHRITOL("erythritol", Family.POLYOL),
  GLYCEROL("glycerol", Family.POLYOL),
  PROTEIN("protein", Family.PROTEIN),
  FAT("fat", Family.FAT),
  FIBRE("fibre", Family.FIBRE),
  /** Organic acids, as citric acid. */
  ACID("acid", Family.ACID),
  /** Sodium chloride. */
  SALT("salt", Family.MINERAL),
  /** Minerals other than sodium chloride. */
  ASH("ash", Family.MINERAL),
  ETHANOL("ethanol", Family.ETHANOL),
  /** Whatever the analysis left unnamed. */
  OTHER("other", Family.OTHER);

  /** What a component counts as on a label and in a mixing rule. */
  public enum Family {
    WATER,
    /** Mono- and disaccharides: Regulation (EU) No 1169/2011, annex I, point 8. */
    SUGAR,
    /** Saccharides of three and more units that dissolve. */
    OLIGOSACCHARIDE,
    STARCH,
    POLYOL,
    PROTEIN,
    FAT,
    FIBRE,
    ACID,
    MINERAL,
    ETHANOL,
    OTHER
  }

  private static final Map<String, Component> BY_WORD = Arrays.stream(values())
      .collect(Collectors.toUnmodifiableMap(Component::word, Function.identity()));

  private final String word;
  private final Family family;

  Component(String word, Family family) {
    this.word = word;
    this.family = family;
  }

  /** Returns the component that a word of the language names. */
  public static Optional<Component> ofWord(String word) {
    return Optional.ofNullable(BY_WORD.get(word));
  }

  /** Returns the word of the language. */
  public String word() {
    return word;
  }

  public Family family() {
    return family;
  }

  /** Whether it is a saccharide or polyol that dissolves, and so belongs to the syrup of a confection. */
  public boolean isSweet() {
    return switch (family) {
      case SUGAR, OLIGOSACCHARIDE, POLYOL -> true;
      default -> false;
    };
  }
}
