package dev.kettlemark.protocol;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;

/** The colours that a client was told last of each document, so that only the difference is sent again. */
final class TokenResults {

  /** Nobody looks at more documents at once; of the others all colours are sent again. */
  private static final int MOST = 64;

  private final Recent<Result> last = new Recent<>(MOST);
  private final AtomicLong count = new AtomicLong();

  /** What was told under an id. */
  static final class Result {

    private final String id;
    private final int[] data;

    Result(String id, int[] data) {
      this.id = id;
      this.data = data;
    }

    String id() {
      return id;
    }

    /** Nobody writes into it. */
    int[] data() {
      return data;
    }
  }

  /** Keeps what is told of a document now. */
  Result keep(String uri, int[] data) {
    Result result = new Result(Long.toString(count.incrementAndGet()), data);
    last.keep(uri, result);
    return result;
  }

  /** What was told under an id; empty where it is not the last. */
  Optional<Result> known(String uri, String id) {
    return last.of(uri).filter(result -> result.id().equals(id));
  }
}
