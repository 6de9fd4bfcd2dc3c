package dev.kettlemark.cli;

import dev.kettlemark.protocol.Rehearsal;
import dev.kettlemark.protocol.wire.Journal;
import dev.kettlemark.workbench.Workbench;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.BindException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.logging.Level;
import java.util.logging.Logger;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code kettlemark open}: a workbench in the browser. */
@Command(
    name = "open",
    header = "Open a folder of formulas in the browser, with everything that an editor shows.",
    sortOptions = false,
    description = {
      "",
      "The page comes from this program and is served to this machine only; nothing is sent anywhere."
          + " Its address is good once, for one browser: Enter shows a fresh one. Ctrl-C ends it, or"
          + " End in the page; what is not saved then stays in the browser and is offered back."
    },
    parameterListHeading = "%nParameters:%n",
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Exit codes: 0 ended in the page, 130 by Ctrl-C, 2 there is no such folder or the port is taken.",
      "",
      "Examples:",
      "  kettlemark open samples/gannet-slip",
      "  kettlemark open --port 8123 --no-browser formulas"
    })
final class OpenCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      description = "The folder of the library; the current folder if not given.")
  private String folder = ".";

  @Option(
      names = "--port",
      paramLabel = "N",
      description = "Where the page is served; if not given, always the same port for one folder,"
          + " or a free one if that is taken.")
  private int port;

  @Option(names = "--no-browser", description = "Show the address and open no browser.")
  private boolean quiet;

  OpenCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Path path = KettleFiles.path(folder);
    if (!Files.isDirectory(path)) {
      throw new UsageMistake(KettleFiles.shown(path) + " is no folder");
    }
    if (port < 0 || port > 0xFFFF) {
      throw new UsageMistake("a port is a number up to 65535");
    }
    // What clients do wrong is of no interest at this terminal, what the program does wrong is.
    Journal.install(System.err);
    Logger.getLogger("").setLevel(Level.WARNING);
    try (Workbench workbench = open(path)) {
      Runtime.getRuntime().addShutdownHook(new Thread(workbench::close, "kettlemark-end"));
      welcome(path, workbench);
      Rehearsal.begin(Version.number());
      answerEnter(workbench);
      workbench.await();
      return ExitCode.DONE;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return ExitCode.DONE;
    }
  }

  private Workbench open(Path path) {
    try {
      return Workbench.open(path, port, Version.number(), terminal::today);
    } catch (BindException taken) {
      throw new UsageMistake("port " + port + " is taken by another program");
    } catch (IOException failure) {
      throw new UsageMistake(KettleFiles.cannot("open", path, failure));
    }
  }

  private void welcome(Path path, Workbench workbench) {
    String address = workbench.address();
    terminal.out().println("Workbench of " + KettleFiles.shown(path) + ", for this machine only:");
    terminal.out().println("  " + address);
    if (!Workbench.hasPage()) {
      terminal
          .out()
          .println("The page was not built into this program; build it with npm at hand.");
    } else if (!quiet && Browser.open(address, terminal.environment())) {
      terminal.out().println("It opens in your browser.");
    }
    terminal.out().println("Enter shows a fresh address for another browser, Ctrl-C ends.");
    terminal.out().flush();
  }

  /** Each line that is typed asks for an address; where nobody types, nothing happens. */
  private void answerEnter(Workbench workbench) {
    Thread listener = new Thread(
        () -> {
          try (BufferedReader lines =
              new BufferedReader(new InputStreamReader(terminal.in(), StandardCharsets.UTF_8))) {
            while (lines.readLine() != null) {
              terminal.out().println("  " + workbench.address());
              terminal.out().flush();
            }
          } catch (IOException closed) {
            Logger.getLogger(OpenCommand.class.getName()).log(Level.FINE, "no more lines", closed);
          }
        },
        "kettlemark-enter");
    listener.setDaemon(true);
    listener.start();
  }
}
