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
   */
  private record Offer(int most, Function<RefactoringSite, List<Refactoring>> at) {}

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
      new Offer(1, VariantRefactoring::at),
      new Offer(2, ScaleRefactoring::at),
      new Offer(1, site -> NextTrial.at(site).stream().toList()),
      new Offer(1, WeightsRefactoring::at));

  private Refactorings() {}

  /**
   * What a range of a document can be turned into; a cursor is an empty range.
   *
   * @param all whether all of each kind are wanted, or only as many as leave room for the others
   */
  public static List<Refactoring> at(
      Snapshot snapshot, Document document, Span range, boolean all) {
    return RefactoringSite.at(snapshot, document, range)
        .map(site -> OFFERS.stream()
            .flatMap(offer ->
                offer.at().apply(site).stream().limit(all ? Integer.MAX_VALUE : offer.most()))
            .toList())
        .orElse(List.of());
  }

  /** What puts the whole document in order. */
  public static Stream<Refactoring> organizing(Document document) {
    return SettingsRefactoring.of(document).stream();
  }
}
