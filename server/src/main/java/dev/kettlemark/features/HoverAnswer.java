package dev.kettlemark.features;

import java.util.Optional;

/** One kind of answer to a pointer; stateless. */
interface HoverAnswer {

  /** The answer; empty where the pointer stands on something else. */
  Optional<HoverText> to(Pointed pointed);
}
