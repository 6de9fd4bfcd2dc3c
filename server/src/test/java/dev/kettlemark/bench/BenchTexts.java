package dev.kettlemark.bench;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What the benchmarks work on; here, so that tests see that they measure something. */
public final class BenchTexts {

  /** Forty lines: two syrups, a foam, nuts. */
  private static final String FORMULA = """
      formula bench-nougat "Nougat of the bench"
        code      BN-001
        version   1  on 2026-03-05
        percent   of charge
        batch     1800 g
        texture   chewy
        caution   hot-sugar
        caution   honey-infant
        caution   nut
        caution   choking

      stage foam "Egg foam"
         1.05 %             egg-white-powder
         2.10 %             caster-sugar
         q.s.               water
        blend     egg-white-powder, caster-sugar until lump-free
        sprinkle  egg-white-powder into water while whisking on low
        stand     for 40 min until hydrated
        whip      on medium until soft-peak
      stage first-syrup
        29.00 %             white-sugar
        17.00 %             glucose-syrup-42
         9.00 %             water
        boil      under lid for 3 min until dissolved
        cook      to 140 °C ± 1
      stage second-syrup
        14.00 %             honey
         0.70 %             water
        cook      to 126 °C ± 1
      stage body
        18.00 %             roasted-almond       at 60 °C
         1.20 %             cocoa-butter         at 45 °C
        all of              foam
        all of              first-syrup
        all of              second-syrup
        stream    first-syrup into foam over 90 s while whisking on low
        whip      on high for 3 min
        stream    second-syrup into foam over 45 s while whisking on medium
        whip      on medium for 6 min until firm-peak
        fold      cocoa-butter, roasted-almond while whisking on low
      """;

  /** What the cursor stands on; a key changes it to and fro. */
  private static final String KEY = "29.00 %             white-sugar";

  private BenchTexts() {}

  public static Document formula() {
    return Document.of("bench.kettle", FORMULA);
  }

  /** Returns a document of as many of these formulas, each with its own name. */
  public static Document formulas(int count) {
    return Document.of(
        "bench.kettle",
        IntStream.range(0, count).mapToObj(BenchTexts::numbered).collect(Collectors.joining()));
  }

  private static String numbered(int number) {
    return FORMULA
        .replace("bench-nougat", "bench-nougat-" + number)
        .replace("BN-001", "BN-%03d".formatted(number + 1));
  }

  /**
   * Returns a text of some length in which every feature finds something to do: formulas, in their middle
   * a variant, a product, an address in a comment, and a line out of its columns.
   */
  public static String forFeatures(int lines) {
    int count = Math.max(2, lines / 40);
    String middle = """
        # as on https://example.org/bench
        variant bench-lean of bench-nougat-0 "Leaner"
          status    bench
          replace   cocoa-butter by honey

        product bench-bar "Bar of the bench"
          piece   20 g of bench-lean
        """;
    return IntStream.range(0, count)
        .mapToObj(i -> i == count / 2
            ? middle + numbered(i).replace("   29.00 %   ", "  29 %   ")
            : numbered(i))
        .collect(Collectors.joining());
  }

  /** Returns the offset of a figure in the middle of a document. */
  public static int cursor(Document document) {
    String text = document.text().source().text();
    return text.indexOf(KEY, text.length() / 2 - FORMULA.length() / 2) + 4;
  }

  public static Library library(Document document) {
    List<Document> all = new ArrayList<>(Pantry.documents());
    all.add(document);
    return Library.of(all);
  }
}
