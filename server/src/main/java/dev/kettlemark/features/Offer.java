package dev.kettlemark.features;

import dev.kettlemark.features.Proposal.Kind;
import dev.kettlemark.model.Vocabulary;
import dev.kettlemark.text.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A proposal before it has its place. */
record Offer(
    String label, Kind kind, String detail, String documentation, String snippet, boolean isPast) {

  static Offer of(String label, Kind kind, String detail) {
    return new Offer(label, kind, detail, "", "", false);
  }

  static Offer of(Vocabulary.Term term) {
    return of(term.word(), Kind.WORD, term.meaning());
  }

  static List<Offer> words(List<Vocabulary.Term> terms) {
    return terms.stream().map(Offer::of).toList();
  }

  Offer withDocumentation(String markdown) {
    return new Offer(label, kind, detail, markdown, snippet, isPast);
  }

  /** The same of something that is no longer sold or made. */
  Offer past() {
    return new Offer(label, kind, detail, documentation, snippet, true);
  }

  /** Offers in their order at a place; of equal labels the first stays. */
  static List<Proposal> placed(List<Offer> offers, Span replaced) {
    List<Proposal> proposals = new ArrayList<>();
    Set<String> labels = new HashSet<>();
    for (Offer offer : offers) {
      if (labels.add(offer.label)) {
        boolean isSnippet = !offer.snippet.isEmpty();
        proposals.add(new Proposal(
            offer.label,
            offer.detail,
            offer.documentation,
            isSnippet ? offer.snippet : offer.label,
            isSnippet,
            replaced,
            offer.kind,
            sortKey(proposals.size()),
            offer.isPast));
      }
    }
    return List.copyOf(proposals);
  }

  /** Five digits, so that texts stand in the order of their numbers. */
  private static String sortKey(int number) {
    return Integer.toString(100_000 + number).substring(1);
  }
}
