package dev.kettlemark.protocol;

/** Brings findings to a client after a change, in the way that this client wants. */
interface Announcer {

  /** Something in a library has changed; several changes at once may be one. */
  void changed(LiveLibrary library);
}
