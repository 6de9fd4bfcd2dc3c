package dev.kettlemark.protocol;

import dev.kettlemark.features.SemanticTokens;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SemanticTokensDelta;
import org.eclipse.lsp4j.SemanticTokensEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** The colours of words. */
final class SemanticTokensAdapter {

  /** Figures to a word. */
  private static final int CELLS = 5;

  private SemanticTokensAdapter() {}

  static org.eclipse.lsp4j.SemanticTokens full(Scene scene, String uri, TokenResults results) {
    return told(results.keep(uri, encoded(scene)));
  }

  /** What differs from what the client was told before, or all where it is not known any more. */
  static Either<org.eclipse.lsp4j.SemanticTokens, SemanticTokensDelta> delta(
      Scene scene, String uri, String before, TokenResults results) {
    Optional<TokenResults.Result> known = results.known(uri, before);
    TokenResults.Result now = results.keep(uri, encoded(scene));
    return known.isEmpty()
        ? Either.forLeft(told(now))
        : Either.forRight(new SemanticTokensDelta(edits(known.get().data(), now.data()), now.id()));
  }

  static org.eclipse.lsp4j.SemanticTokens range(Scene scene, Range range) {
    return new org.eclipse.lsp4j.SemanticTokens(list(SemanticTokens.encoded(
        scene.snapshot(),
        scene.document(),
        scene.positions().encoding(),
        scene.positions().span(scene.source(), range))));
  }

  private static int[] encoded(Scene scene) {
    return SemanticTokens.encoded(
        scene.snapshot(), scene.document(), scene.positions().encoding());
  }

  private static org.eclipse.lsp4j.SemanticTokens told(TokenResults.Result result) {
    return new org.eclipse.lsp4j.SemanticTokens(result.id(), list(result.data()));
  }

  /** One edit of the words between what both have at their start and at their end. */
  static List<SemanticTokensEdit> edits(int[] before, int[] after) {
    if (Arrays.equals(before, after)) {
      return List.of();
    }
    int shorter = Math.min(before.length, after.length);
    int mismatch = Arrays.mismatch(before, after);
    int start = Math.min(mismatch < 0 ? shorter : mismatch, shorter) / CELLS * CELLS;
    int same = 0;
    while (same < shorter - start
        && before[before.length - 1 - same] == after[after.length - 1 - same]) {
      same++;
    }
    same = same / CELLS * CELLS;
    return List.of(new SemanticTokensEdit(
        start,
        before.length - start - same,
        list(Arrays.copyOfRange(after, start, after.length - same))));
  }

  private static List<Integer> list(int[] data) {
    List<Integer> list = new ArrayList<>(data.length);
    for (int figure : data) {
      list.add(figure);
    }
    return list;
  }
}
