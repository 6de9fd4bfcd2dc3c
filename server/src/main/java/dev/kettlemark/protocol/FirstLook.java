package dev.kettlemark.protocol;

import dev.kettlemark.checks.Rules;
import dev.kettlemark.library.Document;
import dev.kettlemark.library.Library;
import dev.kettlemark.library.Pantry;
import dev.kettlemark.library.Snapshot;

/**
 * Looks at a small formula while client and server still greet each other.
 *
 * <p>What a first look costs the Java machine, classes above all, is paid by the time the first text comes.
 */
final class FirstLook {

  static final String FORMULA = """
      formula first-look "First look"
        percent  of charge
        batch    1 kg
        caution  hot-sugar, raw-egg, nut
      stage foam
        10.00 %  egg-white
         2.00 %  caster-sugar
        whip     on medium until soft-peak
      stage syrup
        48.00 %  white-sugar
        15.00 %  glucose-syrup-42
        10.00 %  water
        boil     under lid for 3 min until dissolved
        cook     to 125 °C ± 1
      stage body
        15.00 %  roasted-almond  at 60 °C
        all of   foam
        all of   syrup
        stream   syrup into foam over 90 s while whisking on low
        whip     on medium for 6 min until firm-peak
        fold     roasted-almond while whisking on low
      """;

  private FirstLook() {}

  /** Computes and checks the formula and forgets what was found. */
  static void take() {
    Document document = Document.of("untitled:first-look", FORMULA);
    Snapshot snapshot = Snapshot.of(Library.of(Pantry.documents()).with(document));
    document.entries().forEach(entry -> Rules.of(snapshot, entry));
  }
}
