package dev.kettlemark.protocol.wire;

import java.time.Duration;

/** Is told of each request that was answered; a server that wants to know implements it. */
public interface CallListener {

  /**
   * A request was answered.
   *
   * @param method of the request
   * @param outcome {@code answered}, {@code cancelled} or {@code failed}
   * @param took from the call to the answer
   */
  void answered(String method, String outcome, Duration took);
}
