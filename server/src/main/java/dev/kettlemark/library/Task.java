package dev.kettlemark.library;

/**
 * A computation over one section.
 *
 * <p>It is a pure function of the entry's section and of the answers to what it asks. Two equal tasks
 * give equal results, so tasks are enum constants or records.
 *
 * @param <T> the result
 */
public interface Task<T> {

  T compute(Entry entry, Scope scope);
}
