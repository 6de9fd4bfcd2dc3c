package dev.kettlemark.build;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Records of every kind of component, and what comes of comparing them. */
final class ManyRecords implements Callable<List<String>> {

  private record Nothing() {}

  private record Numbers(
      byte first,
      short second,
      char third,
      int fourth,
      long fifth,
      float sixth,
      double seventh,
      boolean eighth) {

    static final Numbers NONE = new Numbers((byte) 0, (short) 0, 'a', 0, 0, 0, 0, false);
  }

  private record Words(@Nullable String one, @Nullable List<String> more) {}

  private record Pair<A extends Comparable<A>, B>(A first, B second) {}

  @SuppressWarnings("ArrayRecordComponent") // That an array counts as itself is what is tried.
  private record Row(int[] cells) {}

  private record Real(double value) {}

  private record Rough(float value) {}

  /** One that compares itself and leaves its number to the machine. */
  private record Loose(String word, int ignored) {
    @Override
    public boolean equals(@Nullable Object other) {
      return other instanceof Loose that && word.equals(that.word);
    }

    @Override
    public int hashCode() {
      return word.hashCode();
    }
  }

  private final List<String> told = new ArrayList<>();

  @Override
  public List<String> call() {
    compareNumbers();
    compareObjects();
    compareWhatIsNoNumber();
    return told;
  }

  private void compareNumbers() {
    Numbers none = Numbers.NONE;
    List<Numbers> others = List.of(
        new Numbers((byte) 0, (short) 0, 'a', 0, 0, 0, 0, false),
        new Numbers((byte) -1, (short) 0, 'a', 0, 0, 0, 0, false),
        new Numbers((byte) 0, (short) -2, 'a', 0, 0, 0, 0, false),
        new Numbers((byte) 0, (short) 0, 'b', 0, 0, 0, 0, false),
        new Numbers((byte) 0, (short) 0, 'a', 4, 0, 0, 0, false),
        new Numbers((byte) 0, (short) 0, 'a', 0, 1L << 40, 0, 0, false),
        new Numbers((byte) 0, (short) 0, 'a', 0, 0, 6.5f, 0, false),
        new Numbers((byte) 0, (short) 0, 'a', 0, 0, 0, -0.0, false),
        new Numbers((byte) 0, (short) 0, 'a', 0, 0, 0, 0, true));
    others.forEach(other -> tell(none, other));
  }

  private void compareObjects() {
    tell(new Nothing(), new Nothing());
    tell(new Words("a", null), new Words("a", null));
    tell(new Words(null, List.of("b")), new Words("a", List.of("b")));
    tell(new Words("a", List.of("b")), new Words("a", null));
    tell(new Pair<>("a", new Words("b", null)), new Pair<>("a", new Words("b", null)));
    tell(new Pair<>("a", 1), new Pair<>("a", 1L));
    tell(new Pair<>(2, "x"), new Nothing());
    tell(new Loose("a", 1), new Loose("a", 2));
    BiFunction<String, Integer, Object> local = (word, number) -> {
      record Local(String word, int number) {}
      return new Local(word, number);
    };
    tell(local.apply("a", 1), local.apply("a", 1));
    int[] cells = {1, 2};
    told.add(
        new Row(cells).equals(new Row(cells)) + " " + new Row(cells).equals(new Row(new int[0])));
  }

  private void compareWhatIsNoNumber() {
    tell(new Real(Double.NaN), new Real(0.0 / 0.0));
    tell(new Real(0.0), new Real(-0.0));
    tell(new Rough(Float.NaN), new Rough(Float.NaN));
    tell(new Rough(0f), new Rough(-0f));
  }

  private void tell(Object one, Object other) {
    List<Boolean> alike = Stream.of(one, other, null, "else").map(one::equals).toList();
    told.add(one + " " + one.hashCode() + ", " + other + " " + other.hashCode() + ": " + alike);
  }
}
