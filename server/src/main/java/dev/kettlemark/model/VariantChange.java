package dev.kettlemark.model;

import dev.kettlemark.text.Span;
import java.util.Optional;

/** One change that a variant makes to its parent. */
public sealed interface VariantChange {

  Span span();

  /** {@code replace A by 0.90 % B}, in one stage or wherever A stands. */
  record Replace(
      Located<String> old, AmountLine replacement, Optional<Located<String>> stage, Span span)
      implements VariantChange {}

  /** {@code drop A}. */
  record Drop(Located<String> old, Optional<Located<String>> stage, Span span)
      implements VariantChange {}

  /** {@code add 0.30 % of liquid guar-gum in foam}. */
  record Add(AmountLine line, Optional<Located<String>> stage, Span span)
      implements VariantChange {}

  /** {@code change 2.00 % caster-sugar in foam}: another amount of what the parent has. */
  record Change(AmountLine line, Optional<Located<String>> stage, Span span)
      implements VariantChange {}

  /** {@code withdraw caution honey-infant}. */
  record Withdraw(Located<String> fact, Optional<Located<String>> word, Span span)
      implements VariantChange {}
}
