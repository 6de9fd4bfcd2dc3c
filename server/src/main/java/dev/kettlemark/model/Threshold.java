package dev.kettlemark.model;

import dev.kettlemark.quantity.Band;
import dev.kettlemark.quantity.Mass;
import dev.kettlemark.quantity.Ratio;
import dev.kettlemark.quantity.Temperature;
import dev.kettlemark.quantity.TemperatureDifference;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.fraction.BigFraction;

/**
 * A limit that checks measure against and that a house may set for itself.
 *
 * <p>Here stand its word, what kind of figure it is, and what it is a limit of. Its usual value stands
 * with reason, source and date in the built-in file of thresholds.
 *
 * @param <T> the type of its value
 */
public final class Threshold<T> {

  public static final Threshold<Ratio> TOTAL_TOLERANCE =
      share("total-tolerance", "the most by which the lines of a formula may miss 100 %");

  public static final Threshold<Ratio> SMALL_POWDER_DOSE =
      share("small-powder-dose", "the share of the charge below which a powder must be weighed");

  public static final Threshold<Ratio> GUM_OVERDOSE = share(
      "gum-overdose",
      "the share of the highest usual dose of a gum above which it cannot be meant");

  public static final Threshold<Temperature> HOT_SYRUP = temperature(
      "hot-syrup", "the heat above which a syrup cooks the foaming agent that it is poured into");

  public static final Threshold<Band<Temperature>> USUAL_COOK = temperatures(
      "usual-cook",
      "the range in which a cook ends; a figure that lies there in the other scale is meant so");

  public static final Threshold<TemperatureDifference> SUGAR_STAGE_SLACK = difference(
      "sugar-stage-slack",
      "the farthest that a cook may end outside the sugar stage beside it, before it is an error");

  public static final Threshold<Ratio> BATCH_SHORTFALL = share(
      "batch-shortfall", "the share of the pieces' weight that a batch may lack, as rounding");

  public static final Threshold<Ratio> CRITICAL_WEIGHING_ERROR = share(
      "critical-weighing-error",
      "the most that one step of the scale may be of an amount that acts by its dose");

  public static final Threshold<Ratio> USUAL_WEIGHING_ERROR = share(
      "usual-weighing-error", "the most that one step of the scale may be of any other amount");

  public static final Threshold<Ratio> VOLUME_WEIGHT_GAP = share(
      "volume-weight-gap",
      "the most by which a millilitre of a liquid may differ from a gram before it must be weighed");

  public static final Threshold<Ratio> IMPOSSIBLE_DOSE = share(
      "impossible-dose", "the share of the highest usual dose above which nobody can mean it");

  public static final Threshold<Ratio> STARCH_SYRUP_SOLIDS =
      share("starch-syrup-solids", "the least solids that a starch syrup is sold with");

  public static final Threshold<TemperatureDifference> PROBE_ACCURACY =
      difference("probe-accuracy", "what a thermometer of the house may be off by");

  public static final Threshold<Ratio> PAN_RISE =
      share("pan-rise", "the share of its volume that a boiling syrup may rise to");

  public static final Threshold<Ratio> SCALE_UP = share(
      "scale-up", "the share of the batch made so far above which a boil behaves in another way");

  public static final Threshold<Mass> COATING_BATH =
      mass("coating-bath", "the least of a coating that can be tempered and worked with");

  public static final Threshold<Ratio> FOAM_FAT =
      share("foam-fat", "the share of foreign fat above which a protein foam whips badly");

  public static final Threshold<Ratio> FOAM_FAT_FATAL = share(
      "foam-fat-fatal", "the share of foreign fat above which a protein foam does not whip at all");

  public static final Threshold<Ratio> HEATED_GUM_CARRIER = share(
      "heated-gum-carrier",
      "the least share of its usual dry carrier that a gum needs if it is boiled later");

  public static final Threshold<Ratio> HINDERED_HYDRATION = share(
      "hindered-hydration",
      "the sugar in the water above which a gelling agent takes up water badly");

  public static final Threshold<Ratio> BLOCKED_HYDRATION = share(
      "blocked-hydration", "the sugar in the water above which no gelling agent takes up water");

  public static final Threshold<Duration> FOAM_STANDING =
      time("foam-standing", "the longest that a foam may stand still before it is deposited");

  public static final Threshold<TemperatureDifference> SETTING_MARGIN = difference(
      "setting-margin",
      "the margin above its setting point at which a gelling mass is deposited at the least");

  public static final Threshold<Band<Temperature>> FOAM_REHEAT =
      temperatures("foam-reheat", "the range in which a set foam loses its air as it is warmed");

  public static final Threshold<Band<Temperature>> CENTRE_FOR_COAT =
      temperatures("centre-for-coat", "the range in which a centre is coated");

  public static final Threshold<Duration> SETTING_TIME =
      time("setting-time", "the least time that a foam or a slow gel sets before it is cut");

  public static final Threshold<Duration> OVER_WHIPPING = time(
      "over-whipping", "the longest that egg white may be whipped fast before it turns grainy");

  public static final Threshold<Duration> SYRUP_WAIT =
      time("syrup-wait", "the longest that a cooked syrup may wait for the mass that it goes into");

  public static final Threshold<Mass> FASTEST_STREAM =
      mass("fastest-stream", "the most hot syrup that can be streamed into a foam in one second");

  public static final Threshold<Mass> SLOWEST_STREAM =
      mass("slowest-stream", "the least hot syrup that is streamed into a foam in one second");

  public static final Threshold<TemperatureDifference> INCLUSION_CHILL = difference(
      "inclusion-chill",
      "the most by which cold pieces may cool the mass that they are folded into");

  public static final Threshold<Ratio> GRAIN_PRONE = share(
      "grain-prone", "the share of sucrose in its solids above which a syrup grains from the wall");

  public static final Threshold<Ratio> HEAVY_FOLD = share(
      "heavy-fold",
      "the most of a mass that may be folded into a foam fast before it loses much air");
  public static final Threshold<Ratio> SOLIDS_GAP = share(
      "solids-gap",
      "the most percent points by which checked solids may differ from what the cook leaves");

  public static final Threshold<TemperatureDifference> ALTITUDE_OFFSET = difference(
      "altitude-offset",
      "the farthest a cook may lie off at the altitude of the house, before its text says for where it holds");

  public static final Threshold<Ratio> FRUCTOSE_SHARE = share(
      "fructose-share",
      "the share of fructose among its solids above which a syrup browns like honey");

  public static final Threshold<Temperature> FRUCTOSE_HEAT = temperature(
      "fructose-heat", "the heat above which a syrup rich in fructose turns dark and bitter");

  public static final Threshold<Temperature> MILK_HEAT =
      temperature("milk-heat", "the heat above which milk or other protein in a syrup scorches");

  public static final Threshold<Temperature> CHEWY_SYRUP = temperature(
      "chewy-syrup", "the heat above which no syrup of a foam is left that keeps it chewy");

  public static final Threshold<Ratio> WORTHWHILE_COOK_OFF = share(
      "worthwhile-cook-off", "the share of a pan that may boil away, before its water is too much");

  public static final Threshold<Temperature> TEMPER_LOST =
      temperature("temper-lost", "the heat above which cocoa butter loses its temper");

  public static final Threshold<Temperature> HOT_HOLD = temperature(
      "hot-hold", "the heat from which on a waiting syrup goes on boiling down and browning");

  public static final Threshold<Duration> LONG_HOT_HOLD =
      time("long-hot-hold", "the longest that a hot syrup may wait, before it is a mistake");

  public static final Threshold<Band<Temperature>> SETTING_ROOM =
      temperatures("setting-room", "the range of what a room or a cold store can be");

  public static final Threshold<Temperature> WATER_BATH =
      temperature("water-bath", "the most that a mass reaches in a water bath");

  public static final Threshold<Ratio> LEAST_DOCTOR = share(
      "least-doctor",
      "the least share of other saccharides than sucrose in a mass that must not grain");

  public static final Threshold<Ratio> LEAST_DOCTOR_IN_CHEW = share(
      "least-doctor-in-chew",
      "the least share of other saccharides than sucrose in anything chewy, however wet");

  public static final Threshold<Ratio> MOST_DOCTOR_IN_GLASS = share(
      "most-doctor-in-glass",
      "the most share of other saccharides than sucrose in a boiled sugar that snaps");

  public static final Threshold<Ratio> MOST_DOCTOR_IN_CHEW =
      share("most-doctor-in-chew", "the most share of other saccharides than sucrose in a chew");

  public static final Threshold<Ratio> MOST_DOCTOR_IN_GRAIN = share(
      "most-doctor-in-grain",
      "the most share of other saccharides than sucrose in a mass that is to grain");

  public static final Threshold<Band<Ratio>> CHEWY_MOISTURE =
      shares("chewy-moisture", "the usual water of a chew without air");

  public static final Threshold<Band<Ratio>> CHEWY_FOAM_MOISTURE =
      shares("chewy-foam-moisture", "the usual water of a chew with air, such as nougat");

  public static final Threshold<Ratio> SHELF_ACTIVITY = activity(
      "shelf-activity", "the water activity above which moulds and yeasts grow on the shelf");

  public static final Threshold<Duration> SHORT_SHELF = time(
      "short-shelf",
      "the longest that a piece above that water activity may stand in a room without a word");

  public static final Threshold<Duration> LONG_SHELF = time(
      "long-shelf",
      "the longest that a piece above that water activity may stand, before it is a mistake");

  public static final Threshold<Ratio> LAYER_GAP =
      activity("layer-gap", "the most by which the water activities of touching layers may differ");

  public static final Threshold<Ratio> STORE_GAP =
      activity("store-gap", "the most by which the air of a store may be damper than a bare piece");

  public static final Threshold<Band<Ratio>> FOAM_PROTEIN =
      shares("foam-protein", "the share of protein in the liquid that is whipped");

  public static final Threshold<Ratio> FAT_JUMP = share(
      "fat-jump",
      "the most percent points by which a replacement may raise the fat of the finished mass");

  public static final Threshold<Ratio> SWEETNESS_LOSS = share(
      "sweetness-loss",
      "the share of its sweetness that a variant may lose and still be called as sweet");

  // Gelling, thickening and whipping agents.
  public static final Threshold<Ratio> HIGH_DOSE = share(
      "high-dose",
      "the share of the highest usual dose of an agent above which it is told to be much");

  public static final Threshold<Ratio> AGENTS_TOGETHER = share(
      "agents-together",
      "the most that several gelling agents may add up to, each against its middle dose");

  public static final Threshold<Temperature> ENZYME_HEAT = temperature(
      "enzyme-heat", "the heat from which on the enzymes of raw fruit no longer digest protein");

  public static final Threshold<Ratio> ACID_GEL_SOLIDS = share(
      "acid-gel-solids", "the soluble solids below which a pectin that sets in acid gives no gel");

  public static final Threshold<Ratio> ACID_IN_BOIL =
      share("acid-in-boil", "the share of acid from which on a boil wears a gelling agent down");

  public static final Threshold<Ratio> LEAST_FOAM_WATER = share(
      "least-foam-water", "the least water on a whipping powder that stands in for fresh white");

  public static final Threshold<Ratio> MOST_FOAM_WATER = share(
      "most-foam-water", "the most water on a whipping powder that stands in for fresh white");

  public static final Threshold<Ratio> REPLACED_SOLIDS = share(
      "replaced-solids",
      "the most dry matter, against the other's, of an agent that replaces another weight for weight");

  // Aeration and deposit.
  public static final Threshold<Ratio> BOWL_FILL =
      share("bowl-fill", "the most that may be full of a bowl in which something is whipped");

  public static final Threshold<Ratio> DENSITY_SLACK = share(
      "density-slack",
      "the farthest that a checked density may lie outside the usual one of its kind");

  public static final Threshold<Ratio> OVERRUN_SLACK = share(
      "overrun-slack",
      "the farthest that an expected overrun may lie from that of the expected density");

  public static final Threshold<Ratio> CAVITY_FILL =
      share("cavity-fill", "the share below which a filled cavity looks half empty");

  public static final Threshold<Ratio> CUT_WEIGHT_ERROR =
      share("cut-weight-error", "the share by which a cut piece may miss its weight");

  public static final Threshold<Ratio> LATE_ADDITION =
      share("late-addition", "the share of a mass that may go in after its density is measured");

  public static final Threshold<Duration> LONG_WAIT =
      time("long-wait", "the wait from which on a sheet for homes must tell of it in advance");

  private static final List<Threshold<?>> ALL = List.of(
      TOTAL_TOLERANCE,
      SMALL_POWDER_DOSE,
      GUM_OVERDOSE,
      HOT_SYRUP,
      USUAL_COOK,
      SUGAR_STAGE_SLACK,
      BATCH_SHORTFALL,
      CRITICAL_WEIGHING_ERROR,
      USUAL_WEIGHING_ERROR,
      VOLUME_WEIGHT_GAP,
      IMPOSSIBLE_DOSE,
      STARCH_SYRUP_SOLIDS,
      PROBE_ACCURACY,
      PAN_RISE,
      SCALE_UP,
      COATING_BATH,
      FOAM_FAT,
      FOAM_FAT_FATAL,
      HEATED_GUM_CARRIER,
      HINDERED_HYDRATION,
      BLOCKED_HYDRATION,
      FOAM_STANDING,
      SETTING_MARGIN,
      FOAM_REHEAT,
      CENTRE_FOR_COAT,
      SETTING_TIME,
      OVER_WHIPPING,
      SYRUP_WAIT,
      FASTEST_STREAM,
      SLOWEST_STREAM,
      INCLUSION_CHILL,
      GRAIN_PRONE,
      HEAVY_FOLD,
      SOLIDS_GAP,
      ALTITUDE_OFFSET,
      FRUCTOSE_SHARE,
      FRUCTOSE_HEAT,
      MILK_HEAT,
      CHEWY_SYRUP,
      WORTHWHILE_COOK_OFF,
      TEMPER_LOST,
      HOT_HOLD,
      LONG_HOT_HOLD,
      SETTING_ROOM,
      WATER_BATH,
      LEAST_DOCTOR,
      LEAST_DOCTOR_IN_CHEW,
      MOST_DOCTOR_IN_GLASS,
      MOST_DOCTOR_IN_CHEW,
      MOST_DOCTOR_IN_GRAIN,
      CHEWY_MOISTURE,
      CHEWY_FOAM_MOISTURE,
      SHELF_ACTIVITY,
      SHORT_SHELF,
      LONG_SHELF,
      LAYER_GAP,
      STORE_GAP,
      FOAM_PROTEIN,
      FAT_JUMP,
      SWEETNESS_LOSS,
      HIGH_DOSE,
      AGENTS_TOGETHER,
      ENZYME_HEAT,
      ACID_GEL_SOLIDS,
      ACID_IN_BOIL,
      LEAST_FOAM_WATER,
      MOST_FOAM_WATER,
      REPLACED_SOLIDS,
      BOWL_FILL,
      DENSITY_SLACK,
      OVERRUN_SLACK,
      CAVITY_FILL,
      CUT_WEIGHT_ERROR,
      LATE_ADDITION,
      LONG_WAIT);

  /** What kind of figure a threshold is. */
  public enum Form {
    SHARE("a share, as in `5 %`", Unit.Dimension.SHARE, false),
    ACTIVITY("a water activity, as in `0.65 aw`", Unit.Dimension.ACTIVITY, false),
    SHARES("a range of shares, as in `5-15 %`", Unit.Dimension.SHARE, true),
    TEMPERATURE("a temperature, as in `95 °C`", Unit.Dimension.TEMPERATURE, false),
    DIFFERENCE("a difference of temperatures, as in `4 °C`", Unit.Dimension.TEMPERATURE, false),
    TEMPERATURES("a range of temperatures, as in `100-180 °C`", Unit.Dimension.TEMPERATURE, true),
    MASS("a weight, as in `10 g`", Unit.Dimension.MASS, false),
    TIME("a time, as in `90 s`", Unit.Dimension.TIME, false);

    private final String words;
    private final Unit.Dimension dimension;
    private final boolean range;

    Form(String words, Unit.Dimension dimension, boolean range) {
      this.words = words;
      this.dimension = dimension;
      this.range = range;
    }

    /** What it is and how it is written. */
    public String words() {
      return words;
    }

    /** Whether a figure is of this kind. */
    public boolean fits(Quantity figure) {
      return figure.measures(dimension)
          && figure.tolerance().isEmpty()
          && (range ? figure.low().compareTo(figure.high()) < 0 : !figure.isRange())
          && isPossible(figure);
    }

    /** Only temperatures may lie below zero; one below all heat is no figure at all. */
    private boolean isPossible(Quantity figure) {
      return this == TEMPERATURE || this == TEMPERATURES || figure.low().signum() >= 0;
    }
  }

  private final String word;
  private final Form form;
  private final String meaning;
  private final Function<Quantity, T> reading;

  private Threshold(String word, Form form, String meaning, Function<Quantity, T> reading) {
    this.word = word;
    this.form = form;
    this.meaning = meaning;
    this.reading = reading;
  }

  /** Every threshold, in the order of the documentation. */
  public static List<Threshold<?>> all() {
    return ALL;
  }

  public static List<String> words() {
    return ALL.stream().<String>map(Threshold::word).toList();
  }

  public static Optional<Threshold<?>> named(String word) {
    return ALL.stream().filter(threshold -> threshold.word.equals(word)).findFirst();
  }

  public String word() {
    return word;
  }

  public Form form() {
    return form;
  }

  /** What it is a limit of, one clause. */
  public String meaning() {
    return meaning;
  }

  /** The value of a figure of its form; empty for any other figure. */
  public Optional<T> of(Quantity figure) {
    return form.fits(figure) ? Optional.of(reading.apply(figure)) : Optional.empty();
  }

  static Threshold<Ratio> share(String word, String meaning) {
    return new Threshold<>(
        word, Form.SHARE, meaning, figure -> Ratio.ofFraction(base(figure).doubleValue()));
  }

  static Threshold<Ratio> activity(String word, String meaning) {
    return new Threshold<>(
        word, Form.ACTIVITY, meaning, figure -> Ratio.ofFraction(base(figure).doubleValue()));
  }

  static Threshold<Band<Ratio>> shares(String word, String meaning) {
    return new Threshold<>(
        word,
        Form.SHARES,
        meaning,
        figure -> Band.spanning(
            Ratio.ofFraction(figure.lowInBase().doubleValue()),
            Ratio.ofFraction(figure.highInBase().doubleValue())));
  }

  static Threshold<Temperature> temperature(String word, String meaning) {
    return new Threshold<>(word, Form.TEMPERATURE, meaning, figure -> celsius(figure.lowInBase()));
  }

  static Threshold<TemperatureDifference> difference(String word, String meaning) {
    return new Threshold<>(
        word,
        Form.DIFFERENCE,
        meaning,
        figure -> TemperatureDifference.ofCelsius(figure
            .low()
            .multiply(figure.unit().map(Unit::factor).orElse(BigFraction.ONE))
            .doubleValue()));
  }

  static Threshold<Band<Temperature>> temperatures(String word, String meaning) {
    return new Threshold<>(
        word,
        Form.TEMPERATURES,
        meaning,
        figure -> Band.spanning(celsius(figure.lowInBase()), celsius(figure.highInBase())));
  }

  static Threshold<Mass> mass(String word, String meaning) {
    return new Threshold<>(
        word, Form.MASS, meaning, figure -> Mass.ofGrams(base(figure).doubleValue()));
  }

  static Threshold<Duration> time(String word, String meaning) {
    return new Threshold<>(
        word,
        Form.TIME,
        meaning,
        figure -> Duration.ofMillis(Math.round(base(figure).doubleValue() * 1000)));
  }

  private static BigFraction base(Quantity figure) {
    return figure.lowInBase();
  }

  private static Temperature celsius(BigFraction degrees) {
    return Temperature.ofCelsius(degrees.doubleValue());
  }
}
