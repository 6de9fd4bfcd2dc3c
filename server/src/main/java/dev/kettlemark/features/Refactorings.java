package dev.kettlemark.features;

import dev.kettlemark.library.Document;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.text.Span;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** All refactorings of the selected lines of a formula, the likeliest first. */
public final class Refactorings {

  /**
   * One kind of change.
   *
   * @param most so many of it leave room for the others
   * @param isOfWhole whether it is about the formula as a whole, not about a line
   */
  private record Offer(
      int most, boolean isOfWhole, Function<RefactoringSite, List<Refactoring>> at) {

    Offer(int most, Function<RefactoringSite, List<Refactoring>> at) {
      this(most, false, at);
    }

    static Offer ofWhole(int most, Function<RefactoringSite, List<Refactoring>> at) {
      return new Offer(most, true, at);
    }

    List<Refactoring> offered(RefactoringSite site, boolean all) {
      if (all) {
        return at.apply(site);
      }
      return isOfWhole && !site.isAboveStages()
          ? List.of()
          : at.apply(site).stream().limit(most).toList();
    }
  }

  private static final List<Offer> OFFERS = List.of(
      new Offer(4, TotalRefactoring::at),
      new Offer(1, ExtractStageRefactoring::at),
      new Offer(1, InlineStageRefactoring::at),
      new Offer(1, ExtractFormulaRefactoring::at),
      new Offer(1, InlineFormulaRefactoring::at),
      new Offer(2, BasisRefactoring::at),
      new Offer(1, UnitRefactoring::at),
      new Offer(1, SugarRefactoring::at),
      new Offer(1, DeclaredBasisRefactoring::at),
      new Offer(1, TotalRefactoring::rest),
      new Offer(2, DegreesRefactoring::at),
      new Offer(1, WhatIf::at),
      Offer.ofWhole(1, VariantRefactoring::at),
      Offer.ofWhole(1, CompareOffer::at),
      new Offer(2, ScaleRefactoring::at),
      Offer.ofWhole(1, site -> NextTrial.at(site).stream().toList()),
      Offer.ofWhole(1, WeightsRefactoring::at));

  private Refactorings() {}

  /**
   * What a range of a document can be turned into; a cursor is an empty range.
   *
   * @param all whether all of each kind are wanted, or only as many as leave room for the others
   */
  public static List<Refactoring> at(
      Snapshot snapshot, Document document, Span range, boolean all) {
    return RefactoringSite.at(snapshot, document, range)
        .map(site ->
            OFFERS.stream().flatMap(offer -> offer.offered(site, all).stream()).toList())
        .orElse(List.of());
  }

  /** What puts the whole document in order. */
  public static Stream<Refactoring> organizing(Document document) {
    return SettingsRefactoring.of(document).stream();
  }
}
