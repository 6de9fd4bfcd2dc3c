package dev.kettlemark.model;

import java.util.List;

/** What each fact takes, in the order of the documentation: the only list of them. */
public final class FactForms {

  /** The facts of a house. */
  public static final List<Form> HOUSE = List.of(
      new Form(
          "altitude", "`120 m`", "height above sea level, for the boiling point of water; 0 m"),
      new Form(
          "scale",
          "`NAME reads STEP to CAPACITY`",
          "smallest step and largest load; without scales amounts are shown to 0.01 g"),
      new Form("thermometer", "`NAME reads STEP to LIMIT`", "kept for the reader"),
      new Form(
          "bowl",
          "`NAME holds V whips LOW-HIGH weighs M`",
          "volume, the masses the whisk can whip, its own mass for the heat balance; each may be missing"),
      new Form("pan", "`NAME holds V whips LOW-HIGH weighs M`", "a vessel to cook in"),
      new Form("mould", "`NAME has N pieces of V`", "cavities of one volume"),
      new Form("frame", "`NAME measures L x W x H mm`", "inner measures"),
      new Form(
          "tool", "names", "what stands in the kitchen besides and has no figures, such as a rack"),
      new Form("market", "words", "whose labelling rules matter"),
      new Form("allergens-on-site", "words", "what traces may come from"),
      new Form(
          "language", "one word", "in which names and notes are written, such as `de`; English"),
      new Form("currency", "one word", "in which prices are, such as `EUR`"),
      new Form(
          "price", "`NAME 1.10 per kg`", "what it pays for a material, whatever the pantry says"),
      new Form("room", "`at 19-22 °C below 50 %RH`", "the temperature of what stands about; 21 °C"),
      new Form(
          "threshold",
          "`WORD FIGURE \"why\" [from \"source\"] [on DATE]`",
          "a limit of the checks, see below; the usual one"),
      new Form("note", "quotes", "anything"));

  /** The facts of an ingredient. */
  public static final List<Form> INGREDIENT = List.of(
      new Form("role", "words", "what it is there for"),
      new Form("form", "one word", "how it comes"),
      new Form("contains", "`17.80 % water, …`", "its composition by mass; several lines add up"),
      new Form(
          "saturates",
          "`3.80 %`",
          "the saturated fatty acids among its fat, by its mass; labels ask for them, and `0 %` is said, not left out"),
      new Form("DE", "`42`", "dextrose equivalent of a starch syrup"),
      new Form("bloom", "`200`", "gel strength of gelatine"),
      new Form(
          "density",
          "`1.42 g/mL`, `0.51 g/mL bulk`",
          "true density, or as poured with `bulk`; without it volumes have no weight"),
      new Form(
          "use",
          "`0.1-0.5 % of liquid`",
          "the usual dose and what it is of; several lines for several bases"),
      new Form("needs", "words", "what it needs to work"),
      new Form(
          "disperses",
          "`with 5 parts sugar`, `in cold liquid`, `in hot liquid`",
          "how to keep it from lumping"),
      new Form("hydrates", "`above 85 °C for 2 min below 40 % solids`", "when it takes up water"),
      new Form("activates", "`above 55 °C`", "from when on it works"),
      new Form("coagulates", "`above 62 °C`, `no`", "when it sets for good by heat"),
      new Form("sets", "`below 40 °C`", "when it gels"),
      new Form("melts", "`above 34 °C`", "when it turns liquid"),
      new Form(
          "tempers",
          "`at 31-32 °C`",
          "where a coat is in temper, and its cocoa butter sets glossy"),
      new Form("reversible", "`yes`, `no`", "whether a gel melts again"),
      new Form(
          "gels-with", "names", "with which other agents it gels, though alone it only thickens"),
      new Form(
          "tolerates", "`4-10 pH`, `over-whipping yes`, `ethanol below 15 %`", "what it stands"),
      new Form(
          "allergen",
          "words; `sulphite at 100 ppm`",
          "the allergens it is or holds; for sulphites also how much, so that the dose in the food can be told; see [Labels](#labels)"),
      new Form("may-contain", "words", "traces the supplier warns of"),
      new Form("gluten", "one word", "`no`, `yes` or `unknown`"),
      new Form("traits", "words", "what the checks should know of it"),
      new Form("suits", "words", "diets; vegan implies vegetarian, and both are written"),
      new Form("label", "quotes", "its name in a list of ingredients"),
      new Form(
          "names",
          "quotes; `in de \"Kristallzucker\"`",
          "other names, separated by commas; or its name in another language, for sheets"),
      new Form(
          "price",
          "`1.10 per kg`",
          "what it costs, in the currency of the house; for `L` by its density"),
      new Form("supplier", "quotes", "kept for the reader"),
      new Form("status", "one word", "`discontinued`: no longer sold"),
      new Form(
          "reviewed",
          "`on DATE [every 12 months]`",
          "when its figures were last looked at, and when they are to be looked at again"),
      new Form("stands-in-for", "`NAME at 75 %`", "replaces another, by that share of its mass"),
      new Form("caution", "words", "what it can do to people"),
      new Form("note", "quotes", "anything"));

  /** The facts of a formula and of a variant. */
  public static final List<Form> FORMULA = List.of(
      new Form("code", "one word", "the number it is filed under"),
      new Form(
          "version",
          "`3  on 2026-04-14`",
          "counts its changes; whether a change has got a new number cannot be told from one state of a library"),
      new Form("status", "one word", "how far it has come"),
      new Form("author", "quotes", "who answers for it; stands at the head of its sheets"),
      new Form("percent", "`of charge`, `of finished`, `of NAME`", "what a bare `%` is of; charge"),
      new Form(
          "batch",
          "`1500 g`",
          "the charge, all that is weighed in; without it the formula is followed through with 1000 g"),
      new Form("basis", "`liquid = water in foam, rose-water`", "declares a basis"),
      new Form("texture", "one word", "what it should be like"),
      new Form(
          "expect",
          "`yield 87 % +- 2`, `moisture 8 % +- 1`, `water-activity 0.50-0.66`, `density 0.80-0.95 g/mL`, `overrun 50-70 %`, `acidity 3.2-3.5 pH`",
          "what comes out at the bench, held against what the models allow; a density also fills moulds and frames"),
      new Form(
          "claim",
          "words; `less-sugar of NAME`",
          "what may be said of it; a claim of less names what it compares with; see [Labels](#labels)"),
      new Form("caution", "words", "what it can do to people"),
      new Form(
          "accept",
          "`RULE \"why\"`, `RULE \"why\" until 2027-03-01`",
          "a finding that is known and wanted, see below"),
      new Form("makes", "`37 pieces of 42 g with 4 % loss`", "what the batch is for"),
      new Form(
          "names",
          "`in de \"Weißer Nougat\"`",
          "its display name in another language, for sheets; in a stage, that of the stage"),
      new Form("note", "quotes; `in de \"…\"`", "anything; in another language, for sheets"));

  /** The changes of a variant. */
  public static final List<Form> VARIANT_CHANGE = List.of(
      new Form(
          "replace",
          "`OLD by 14.00 % NEW`",
          "takes the first line of OLD away and puts NEW in its place"),
      new Form("drop", "`NAME`", "takes the first line of a name away"),
      new Form("add", "`0.20 % NAME in STAGE`", "adds a line at the end of a stage's amounts"),
      new Form("change", "`2.20 % NAME in STAGE`", "gives the first line of a name another amount"),
      new Form(
          "withdraw", "`FACT WORD`, `FACT`", "takes a word of a fact away, or the whole fact"));

  /** The facts of a product. */
  public static final List<Form> PRODUCT = List.of(
      new Form("code", "one word", "the number it is filed under"),
      new Form(
          "version",
          "`3  on 2026-04-14`",
          "counts its changes; whether a change has got a new number cannot be told from one state of a library"),
      new Form("status", "one word", "how far it has come"),
      new Form("author", "quotes", "as in a formula"),
      new Form("centre", "`9.0 g NAME`", "what one piece holds; needed"),
      new Form("layer", "`6 g NAME`, `10 % of centre NAME`", "further parts of a piece"),
      new Form("filling", "`6 g NAME`, `10 % of centre NAME`", "further parts of a piece"),
      new Form("wafer", "`6 g NAME`, `10 % of centre NAME`", "further parts of a piece"),
      new Form("coat", "`28 % of finished NAME`", "what covers it"),
      new Form("make", "`60 pieces in TOOL`", "how many"),
      new Form("loss", "`4 % of centre`", "share of the centre's mass that stays behind; 0 %"),
      new Form(
          "spare",
          "`50 % NAME`",
          "needed on top but comes back, such as a coating bath; without a name it is the coat's"),
      new Form("claim", "words", "as in formulas and ingredients"),
      new Form("caution", "words", "as in formulas and ingredients"),
      new Form("may-contain", "words", "as in formulas and ingredients"),
      new Form("shelf", "`3 months at 15-18 °C below 55 %RH`", "how long and where it keeps"),
      new Form("pack", "words or quotes", "how it is packed"),
      new Form("names", "`in de \"Karamellkuppel\"`", "as in a formula"),
      new Form("accept", "`RULE \"why\"`", "as in a formula"),
      new Form("note", "quotes", "anything"));

  /** The facts of a trial. */
  public static final List<Form> TRIAL = List.of(
      new Form("version", "`3`", "which version was made; the day tells"),
      new Form("batch", "`2000 g`", "what was weighed in; the formula's batch"),
      new Form("lot", "`NAME \"lot\"`", "which lot of a material"),
      new Form("changed", "quotes", "what was done otherwise than written"),
      new Form("measured", "`FIGURE WHAT [of STAGE] [at TIME]`", "a reading"),
      new Form(
          "scored",
          "`7 of 10 WHAT [by 4]`",
          "a judgement by people, of how many, and what of; `by 4` says how many tasted"),
      new Form(
          "kept",
          "`12 weeks at 16-18 °C below 55 %RH \"still chewy\"`",
          "how long the batch was stored and was still good, and where; sheets tell it beside the shelf life"),
      new Form("verdict", "quotes", "what to do next"),
      new Form("photo", "quotes", "where the picture is"),
      new Form("note", "quotes", "anything"));

  /** The facts of a sheet. */
  public static final List<Form> SHEET = List.of(
      new Form(
          "version",
          "`3`",
          "for which version of what it shows it was issued; not judged without it"),
      new Form("title", "quotes", "its heading"),
      new Form("show", "words", "what stands beside grams and °C"),
      new Form("makes", "`20 pieces`", "for how many"),
      new Form("note", "quotes", "a word to the reader"));

  private FactForms() {}
}
