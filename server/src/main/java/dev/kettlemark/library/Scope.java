package dev.kettlemark.library;

/** What a computation may see: only what it asks for, and every question is remembered. */
public interface Scope {

  <T> T ask(Question<T> question);
}
