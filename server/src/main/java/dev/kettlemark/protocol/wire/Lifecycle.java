package dev.kettlemark.protocol.wire;

import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;

/**
 * What a server may be asked at which time: LSP 3.17, "Server lifecycle".
 *
 * <p>Only the reading thread moves it on; any thread may ask for the exit code.
 */
final class Lifecycle {

  private enum Phase {
    NEW,
    RUNNING,
    SHUT_DOWN
  }

  private volatile Phase phase = Phase.NEW;

  /** Refuses a message that comes at the wrong time; {@code exit} and responses are always in time. */
  void admit(Envelope envelope) throws Refusal {
    if (envelope.kind() == Envelope.Kind.RESPONSE || isExit(envelope)) {
      return;
    }
    boolean initialize = envelope.method().equals("initialize");
    if (phase == Phase.NEW && !initialize) {
      throw envelope.refuse(
          ResponseErrorCode.ServerNotInitialized, "the first request is \"initialize\"");
    }
    if (phase == Phase.RUNNING && initialize) {
      throw envelope.refuse(ResponseErrorCode.InvalidRequest, "the server is already initialized");
    }
    if (phase == Phase.SHUT_DOWN) {
      throw envelope.refuse(ResponseErrorCode.InvalidRequest, "the server has been shut down");
    }
  }

  /** Records a message that was admitted and could be read. */
  void passed(Envelope envelope) {
    if (envelope.isRequest() && envelope.method().equals("initialize")) {
      phase = Phase.RUNNING;
    } else if (envelope.isRequest() && envelope.method().equals("shutdown")) {
      phase = Phase.SHUT_DOWN;
    }
  }

  static boolean isExit(Envelope envelope) {
    return envelope.isNotification() && envelope.method().equals("exit");
  }

  /** LSP 3.17, "Exit Notification": 0 if the shutdown request has been received before, otherwise 1. */
  int exitCode() {
    return phase == Phase.SHUT_DOWN ? 0 : 1;
  }
}
