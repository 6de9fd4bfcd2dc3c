package dev.kettlemark.protocol.wire;

import java.util.OptionalLong;
import org.eclipse.lsp4j.services.LanguageClient;

/** The fake server as a process of its own. */
final class FakeServerMain {

  private FakeServerMain() {}

  /** Serves the standard streams; the only argument, if any, is the parent process. */
  public static void main(String[] arguments) {
    Journal.install(System.err);
    OptionalLong parent = arguments.length == 0
        ? OptionalLong.empty()
        : OptionalLong.of(Long.parseLong(arguments[0]));
    FakeLanguageServer server = new FakeLanguageServer();
    System.exit(ServerProcess.run(
        server, LanguageClient.class, server::connect, System.in, System.out, parent));
  }
}
