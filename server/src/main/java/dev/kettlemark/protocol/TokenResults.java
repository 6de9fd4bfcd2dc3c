package dev.kettlemark.protocol;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The colours that a client was told last of each document, so that only the difference is sent again. */
final class TokenResults {

  /** Nobody looks at more documents at once; of the others all colours are sent again. */
  private static final int MOST = 64;

  private final Map<String, Result> last = new LinkedHashMap<>(MOST, 0.75f, true);
  private long count;

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
  synchronized Result keep(String uri, int[] data) {
    Result result = new Result(Long.toString(++count), data);
    last.put(uri, result);
    if (last.size() > MOST) {
      last.remove(last.keySet().iterator().next());
    }
    return result;
  }

  /** What was told under an id; empty where it is not the last. */
  synchronized Optional<Result> known(String uri, String id) {
    return Optional.ofNullable(last.get(uri)).filter(result -> result.id().equals(id));
  }
}
