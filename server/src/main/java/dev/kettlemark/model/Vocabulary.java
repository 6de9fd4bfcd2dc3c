package dev.kettlemark.model;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The words that facts take, each with what it means: the only list of them.
 *
 * <p>A fact that is not listed takes names, figures or texts of its own.
 */
public final class Vocabulary {

  /** A word and one clause that a cook understands. */
  public record Term(String word, String meaning) {}

  private static final List<Term> ROLE = List.of(
      new Term("sweetening", "a sugar or a sweetener"),
      new Term("doctor", "keeps sucrose from graining"),
      new Term("whipping", "makes foam and carries it"),
      new Term("gelling", "sets to a gel"),
      new Term("thickening", "makes a liquid viscous"),
      new Term("acidulant", "makes sour, sets high methoxyl pectin"),
      new Term("mineral", "a buffer or a salt that a gel needs"),
      new Term("salt", "makes salty"),
      new Term("fat", "a fat or an oil"),
      new Term("dairy", "made of milk"),
      new Term("nut", "a nut or a peanut, whole, ground or as paste"),
      new Term("seed", "a seed, whole or ground"),
      new Term("fruit", "fruit in any form"),
      new Term("flavour", "there for its taste"),
      new Term("colour", "there for its colour"),
      new Term("leavening", "makes gas"),
      new Term("emulsifier", "binds fat and water"),
      new Term("coating", "covers a piece"),
      new Term("wafer", "a sheet that a slab lies between"),
      new Term("water", "brings water and little else"),
      new Term("humectant", "holds water and keeps soft"),
      new Term("bulking", "gives body"),
      new Term("starch", "a starch or a starchy flour"),
      new Term("protein", "there for its protein"),
      new Term("alcohol", "there for its spirit"),
      new Term("dusting", "keeps pieces from sticking"),
      new Term("inclusion", "stays in pieces that are seen and chewed"));

  private static final List<Term> FORM = List.of(
      new Term("liquid", "poured like water"),
      new Term("syrup", "poured, but thick and sticky"),
      new Term("powder", "fine and dusty"),
      new Term("crystals", "grains that flow"),
      new Term("paste", "spread, not poured"),
      new Term("solid", "lumps, kernels or blocks"),
      new Term("pieces", "cut to size"),
      new Term("sheet", "flat and thin"));

  private static final List<Term> NEEDS = List.of(
      new Term("soak", "swells in cold liquid before it is warmed"),
      new Term("boil", "works only if boiled"),
      new Term("acid", "sets only in acid"),
      new Term("calcium", "sets only with calcium"),
      new Term("potassium", "sets only with potassium"),
      new Term("temper", "keeps its gloss only if it is tempered"));

  private static final List<Term> TRAITS = List.of(
      new Term("volatile", "its aroma leaves with steam"),
      new Term("animal", "made of an animal's body"),
      new Term("raw-animal", "of animal origin and not heat-treated"),
      new Term("pasteurised", "heated enough to kill germs"),
      new Term("heat-treated", "roasted, baked or toasted"),
      new Term("protease", "its enzyme digests gelatine and egg"),
      new Term("cold-swelling", "thickens without heat"),
      new Term("heat-activated", "works only after heating"),
      new Term("refined-with-animal-aid", "an animal product was used to make it"),
      new Term("crystalline", "dry crystals that must dissolve"),
      new Term("added-sugar", "counts as added sugar"),
      new Term("fruit-sugar", "its sugars are those of the fruit"),
      new Term("polyol", "a sugar alcohol"),
      new Term("potassium-source", "brings potassium"),
      new Term("calcium-source", "brings calcium"));

  private static final List<Term> ALLERGEN = List.of(
      new Term("egg", "eggs"),
      new Term("milk", "milk, lactose included"),
      new Term("soy", "soya beans"),
      new Term("wheat", "wheat"),
      new Term("gluten", "wheat, rye, barley or oats"),
      new Term("peanut", "peanuts"),
      new Term("almond", "almonds"),
      new Term("hazelnut", "hazelnuts"),
      new Term("walnut", "walnuts"),
      new Term("cashew", "cashews"),
      new Term("pecan", "pecans"),
      new Term("brazil-nut", "Brazil nuts"),
      new Term("pistachio", "pistachios"),
      new Term("macadamia", "macadamias"),
      new Term("pine-nut", "pine nuts, an allergen in some markets only"),
      new Term("sesame", "sesame seed"),
      new Term("fish", "fish"),
      new Term("crustacean", "crustaceans"),
      new Term("mollusc", "molluscs"),
      new Term("celery", "celery"),
      new Term("mustard", "mustard"),
      new Term("lupin", "lupin"),
      new Term("sulphite", "sulphites above 10 mg/kg as sulphur dioxide"));

  private static final List<Term> SUITS = List.of(
      new Term("vegan", "nothing of animals"),
      new Term("vegetarian", "nothing of an animal's body"));

  private static final List<Term> GLUTEN = List.of(
      new Term("no", "none by nature"),
      new Term("yes", "holds gluten"),
      new Term("unknown", "ask the supplier"));

  private static final List<Term> YES_NO =
      List.of(new Term("yes", "it does"), new Term("no", "it does not"));

  private static final List<Term> CAUTION = List.of(
      new Term("hot-sugar", "hot sugar sticks to the skin and burns deeply"),
      new Term("steam", "water on hot sugar scalds with steam"),
      new Term("mixer-guard", "hands, sleeves and tools stay out of the running mixer"),
      new Term("powder-dust", "fine powder; do not breathe the dust"),
      new Term("raw-egg", "raw egg; not for the very young, old, pregnant or ill"),
      new Term("honey-infant", "honey is not for infants under 12 months"),
      new Term("nut", "holds nuts or peanuts, which some people must not touch"),
      new Term("choking", "hard or round pieces can choke a small child"),
      new Term("alcohol", "holds spirit"),
      new Term("laxative", "much of it at once acts as a laxative"),
      new Term("child-activity", "holds colours that may make children restless"));

  private static final List<Term> TEXTURE = List.of(
      new Term("brittle", "glassy, snaps"),
      new Term("hard", "a glass or a dense solid that is sucked or bitten through"),
      new Term("chewy", "tough and elastic"),
      new Term("short", "breaks without pulling, finely grained"),
      new Term("soft", "gives to the lips"),
      new Term("gelled", "springs back"),
      new Term("dry", "loose or pressed, not sticky"));

  private static final List<Term> STATUS = List.of(
      new Term("draft", "written, not made yet"),
      new Term("bench", "made at the bench, still changing"),
      new Term("released", "may leave the kitchen; changes need a new version"),
      new Term("withdrawn", "not to be made any more"),
      new Term("discontinued", "an ingredient that is no longer sold"));

  private static final List<Term> CLAIM = List.of(
      new Term("vegan", "nothing of animals"),
      new Term("vegetarian", "nothing of an animal's body"),
      new Term("gluten-free", "no more than 20 mg/kg gluten"),
      new Term("nut-free", "no nut and no peanut"),
      new Term("peanut-free", "no peanut"),
      new Term("egg-free", "no egg"),
      new Term("milk-free", "no milk and no lactose"),
      new Term("dairy-free", "the same as milk-free"),
      new Term("soy-free", "no soya"),
      new Term("no-added-sugar", "nothing added that counts as sugar"),
      new Term("less-sugar", "at least 30 % less sugar than what is named behind of"),
      new Term("low-sugar", "no more than 5 g sugars in 100 g"),
      new Term("sugar-free", "no more than 0.5 g sugars in 100 g"),
      new Term("high-protein", "protein gives at least 20 % of the energy"),
      new Term("high-fibre", "at least 6 g fibre in 100 g"),
      new Term("alcohol-free", "no spirit and nothing made with it"),
      new Term("halal", "a certifying body says so; nothing here checks it"),
      new Term("kosher", "a certifying body says so; nothing here checks it"),
      new Term("as-sweet", "as sweet as the formula it comes from, or the one behind of"));

  private static final List<Term> MARKET = List.of(
      new Term("EU", "the rules of the European Union"),
      new Term("US", "the rules of the United States"));

  private static final List<Term> SHOW = List.of(
      new Term("volumes", "cups and spoons beside grams"),
      new Term("fahrenheit", "°F beside °C"),
      new Term("label", "the draft of the list of ingredients and the nutrition, for a chef"),
      new Term("costs", "what the materials cost, for a chef"));

  /** Codes of ISO 4217; others are kept as they are written. */
  private static final List<Term> CURRENCY = List.of(
      new Term("EUR", "euro"),
      new Term("GBP", "pound sterling"),
      new Term("USD", "US dollar"),
      new Term("CHF", "Swiss franc"),
      new Term("SEK", "Swedish krona"),
      new Term("DKK", "Danish krone"),
      new Term("PLN", "Polish złoty"),
      new Term("CAD", "Canadian dollar"),
      new Term("AUD", "Australian dollar"));

  private static final List<Term> LANGUAGE =
      List.of(new Term("en", "English"), new Term("de", "German"), new Term("fr", "French"));

  private static final Map<String, List<Term>> BY_FACT = Map.ofEntries(
      Map.entry("role", ROLE),
      Map.entry("form", FORM),
      Map.entry("needs", NEEDS),
      Map.entry("traits", TRAITS),
      Map.entry("allergen", ALLERGEN),
      Map.entry("may-contain", ALLERGEN),
      Map.entry("allergens-on-site", ALLERGEN),
      Map.entry("suits", SUITS),
      Map.entry("gluten", GLUTEN),
      Map.entry("reversible", YES_NO),
      Map.entry("caution", CAUTION),
      Map.entry("texture", TEXTURE),
      Map.entry("status", STATUS),
      Map.entry("claim", CLAIM),
      Map.entry("market", MARKET),
      Map.entry("show", SHOW),
      Map.entry("currency", CURRENCY),
      Map.entry("language", LANGUAGE));

  private static final Map<String, Set<String>> WORDS = BY_FACT.entrySet().stream()
      .collect(Collectors.toUnmodifiableMap(
          Map.Entry::getKey,
          fact ->
              fact.getValue().stream().map(Term::word).collect(Collectors.toUnmodifiableSet())));

  private Vocabulary() {}

  /** The facts that take words of a list, in order of name. */
  public static Set<String> facts() {
    return new TreeSet<>(BY_FACT.keySet());
  }

  /** The words of a fact, in the order of the documentation; none for a fact without a list. */
  public static List<Term> of(String fact) {
    return BY_FACT.getOrDefault(fact, List.of());
  }

  /** The words of a fact without their meanings. */
  public static Set<String> words(String fact) {
    return WORDS.getOrDefault(fact, Set.of());
  }

  /** Whether a fact knows a word; a fact without a list knows every word. */
  public static boolean knows(String fact, String word) {
    List<Term> terms = of(fact);
    return terms.isEmpty() || terms.stream().anyMatch(term -> term.word().equals(word));
  }
}
