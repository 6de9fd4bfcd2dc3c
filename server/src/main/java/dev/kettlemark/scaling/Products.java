package dev.kettlemark.scaling;

import dev.kettlemark.library.Entry;
import dev.kettlemark.library.Question;
import dev.kettlemark.library.Scope;
import dev.kettlemark.library.Snapshot;
import dev.kettlemark.library.Task;
import dev.kettlemark.model.Product;
import java.util.Optional;
import org.hipparchus.fraction.BigFraction;

/** The computation over products. */
public enum Products {
  ;

  /** A product with its weights; empty for other sections. */
  public static final Task<Optional<ComputedProduct>> COMPUTED = (entry, scope) -> entry
      .declaration()
      .flatMap(d -> d instanceof Product product ? Optional.of(product) : Optional.empty())
      .map(product -> new ProductComputation(product, scope).compute());

  /** The product of an entry in a snapshot. */
  public static Optional<ComputedProduct> computed(Snapshot snapshot, Entry entry) {
    return snapshot.result(COMPUTED, entry);
  }

  /** A product as it would be with another number of pieces. */
  public static ComputedProduct scaled(Snapshot snapshot, Product product, BigFraction pieces) {
    Scope scope = new Scope() {
      @Override
      public <T> T ask(Question<T> question) {
        return question.ask(snapshot);
      }
    };
    return new ProductComputation(product.withPieces(pieces), scope).compute();
  }

  /** The product of an entry, as a question of another computation. */
  public static Question<Optional<ComputedProduct>> computed(Entry entry) {
    return Question.of(COMPUTED, entry);
  }
}
