package dev.kettlemark.answers;

import dev.kettlemark.quantity.Derivation;
import dev.kettlemark.quantity.Remark;
import java.util.List;
import java.util.Optional;

/**
 * What to change for a wanted result, and what comes of it.
 *
 * @param instruction what to do, with a capital and no full stop, such as {@code Cook syrup to 121 °C}
 * @param values what is set and what comes of it, the answer itself first
 * @param changes the same for the formula; empty where the question was about no formula
 * @param remarks what the reader must know besides, each a sentence without a full stop
 * @param derivation how the answer came about
 */
public record Answer(
    String instruction,
    List<Value> values,
    List<Change> changes,
    List<Remark> remarks,
    Derivation derivation) {

  public Answer {
    values = List.copyOf(values);
    changes = List.copyOf(changes);
    remarks = List.copyOf(remarks);
  }

  /** What the reader must know besides, in English. */
  public List<String> notes() {
    return Remark.english(remarks);
  }

  /** The first value of a word. */
  public Optional<Value> value(String word) {
    return values.stream().filter(value -> value.word().equals(word)).findFirst();
  }
}
