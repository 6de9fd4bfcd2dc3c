package dev.kettlemark.workbench.http;

import java.io.IOException;
import java.util.Optional;

/** Answers requests. */
@FunctionalInterface
public interface HttpHandler {

  /**
   * Answers one request, from a thread of its own.
   *
   * @param connection hands out the body, or becomes a WebSocket
   * @return nothing where the connection became a WebSocket and is done with
   */
  Optional<Answer> answer(RequestHead head, Connection connection) throws Refused, IOException;
}
