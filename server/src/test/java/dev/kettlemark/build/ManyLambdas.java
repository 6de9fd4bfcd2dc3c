package dev.kettlemark.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;

/** Lambdas and method references of every kind that the language knows, and what comes of each. */
final class ManyLambdas implements Callable<List<String>> {

  /** A method whose values are turned on their way in and out. */
  interface Mixed<T extends CharSequence, R> {
    R mixed(long first, T second, int third);

    /** An interface is the host of a nest too. */
    static <T extends CharSequence> Mixed<T, Object> longest() {
      return (first, second, third) -> Math.max(first, Math.max(second.length(), third));
    }

    default Supplier<R> later(T second) {
      return () -> mixed(1, second, 2);
    }
  }

  /** What it brings along is what another interface asks for. */
  interface Told {

    String told();

    default Object get() {
      return "got " + told();
    }
  }

  private static class Base {
    @Override
    public String toString() {
      return "base";
    }
  }

  private static final class Derived extends Base {
    private final String own = "own";

    Supplier<String> above() {
      return super::toString;
    }

    String hidden() {
      Supplier<String> told = () -> own + secret();
      return told.get();
    }

    private String secret() {
      return "secret";
    }

    @Override
    public String toString() {
      return "derived";
    }
  }

  private final List<String> told = new ArrayList<>();

  @Override
  public List<String> call() {
    keepValues((byte) 1, (short) 2, 'c', 4, 5L, 6.5f, 7.25, true, "nine");
    turnValues();
    dropValues();
    makeThings();
    callObjects();
    shareClasses();
    bringAlong();
    return told;
  }

  private void keepValues(
      byte first,
      short second,
      char third,
      int fourth,
      long fifth,
      float sixth,
      double seventh,
      boolean eighth,
      String ninth) {
    Supplier<String> all =
        () -> ninth + first + second + third + fourth + fifth + sixth + seventh + eighth;
    LongSupplier sum = () -> fifth + fourth;
    DoubleSupplier product = () -> seventh * sixth;
    BooleanSupplier truth = () -> eighth && ninth.isEmpty();
    tell(all.get(), sum.getAsLong(), product.getAsDouble(), truth.getAsBoolean());
  }

  private void turnValues() {
    ToLongFunction<Integer> unboxedAndWidened = Integer::intValue;
    ToDoubleFunction<Character> farther = Character::charValue;
    ToDoubleFunction<Long> unboxed = value -> value;
    IntToDoubleFunction widened = value -> value;
    IntFunction<Object> boxed = Integer::bitCount;
    Function<Integer, Object> unboxedAndBoxed = Integer::toBinaryString;
    Function<Object, Object> one = Object::hashCode;
    IntPredicate letter = Character::isLetter;
    Mixed<String, Double> mixed =
        (first, second, third) -> first + second.length() / (double) third;
    Mixed<StringBuilder, Object> boxedLong = (first, second, third) -> first;
    tell(
        unboxedAndWidened.applyAsLong(1 << 20),
        farther.applyAsDouble('x'),
        unboxed.applyAsDouble(1L << 40),
        widened.applyAsDouble(3),
        boxed.apply(255),
        unboxedAndBoxed.apply(5),
        one.apply("x"),
        letter.test('q'),
        mixed.mixed(4, "three", 8),
        mixed.later("seven").get(),
        boxedLong.mixed(9, new StringBuilder(), 0),
        Mixed.<String>longest().mixed(2, "longer", 3));
  }

  private void dropValues() {
    AtomicLong counter = new AtomicLong(7);
    List<Object> gathered = new ArrayList<>();
    Runnable counted = counter::incrementAndGet;
    Consumer<Object> added = gathered::add;
    Runnable made = Object::new;
    Consumer<List<Object>> emptied = List::clear;
    counted.run();
    added.accept("x");
    made.run();
    tell(counter.get(), gathered);
    emptied.accept(gathered);
    tell(gathered);
  }

  private void makeThings() {
    Supplier<List<Object>> list = ArrayList::new;
    Function<String, StringBuilder> builder = StringBuilder::new;
    IntFunction<String[]> array = String[]::new;
    BiFunction<String, Object[], String> format = String::format;
    Supplier<Derived> derived = Derived::new;
    tell(
        list.get(),
        builder.apply("built").append('!'),
        array.apply(3).length,
        format.apply("%s %s", new Object[] {1, 2}),
        derived.get());
  }

  private void callObjects() {
    Derived derived = new Derived();
    Comparator<String> order = String::compareTo;
    Comparator<String> reversed = order.reversed();
    Supplier<String> bound = derived::toString;
    UnaryOperator<String> own = this::twice;
    tell(
        order.compare("a", "b"),
        reversed.compare("a", "b"),
        bound.get(),
        derived.above().get(),
        derived.hidden(),
        own.apply("again"));
  }

  /** Five of one shape, each of which must do what it did. */
  private void shareClasses() {
    for (int number : new int[] {3, 4}) {
      List<IntFunction<Object>> all = List.of(
          value -> value + number,
          value -> value - number,
          value -> value * number,
          value -> value / number,
          value -> value % number);
      all.forEach(one -> tell(one.apply(17)));
    }
    List<Supplier<Object>> keepingNothing = List.of(() -> 1, () -> "two", () -> 3.0);
    keepingNothing.forEach(one -> tell(one.get()));
    tell(keepingNothing.stream().map(Supplier::get).distinct().count());
  }

  private void bringAlong() {
    Told told = () -> "told";
    Supplier<Object> asked = () -> "asked";
    Function<Object, Object> first = one -> one + " first";
    UnaryOperator<Object> second = one -> one + " second";
    tell(told.get(), asked.get(), first.andThen(second).compose(first).apply("x"));
  }

  private String twice(String text) {
    return text + text;
  }

  private void tell(Object... values) {
    told.add(List.of(values).toString());
  }
}
