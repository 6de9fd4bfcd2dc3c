package dev.kettlemark.cli;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Prints a page to PDF with the browser of the machine.
 *
 * <p>A browser lays out the very style sheet of the page and tags the PDF by its headings, tables and
 * pictures for those who have it read aloud; no PDF library does both. It gets a fresh profile and no
 * network.
 */
final class PrintingBrowser {

  /** Names another browser than those that are looked for. */
  static final String PROPERTY = "kettlemark.browser";

  private static final String VARIABLE = "KETTLEMARK_BROWSER";

  private static final List<String> NAMES = List.of(
      "chromium",
      "chromium-browser",
      "google-chrome",
      "google-chrome-stable",
      "microsoft-edge",
      "msedge",
      "chrome");

  /** Where installers put them that change no search path. */
  private static final List<String> PLACES = List.of(
      "/Applications/Chromium.app/Contents/MacOS/Chromium",
      "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
      "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
      "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe");

  private static final String MISSING =
      "a PDF is printed by Chromium or Chrome, and none was found;"
          + " install one, such as Debian's package chromium, or name one in " + VARIABLE
          + ", or print the HTML from any browser";

  private static final long SECONDS = 90;

  private final Path browser;

  private PrintingBrowser(Path browser) {
    this.browser = browser;
  }

  /**
   * The browser of this machine.
   *
   * @throws UsageMistake if there is none
   */
  static PrintingBrowser found() {
    return named()
        .or(PrintingBrowser::onPath)
        .or(() -> PLACES.stream().map(Path::of).filter(Files::isExecutable).findFirst())
        .map(PrintingBrowser::new)
        .orElseThrow(() -> new UsageMistake(MISSING));
  }

  private static Optional<Path> named() {
    Optional<String> name = Optional.ofNullable(System.getProperty(PROPERTY))
        .or(() -> Optional.ofNullable(System.getenv(VARIABLE)))
        .filter(text -> !text.isBlank());
    return name.map(text -> Optional.of(Path.of(text))
        .filter(Files::isExecutable)
        .orElseThrow(() -> new UsageMistake(
            "`" + Visible.of(text) + "` is no browser that can be run; " + MISSING)));
  }

  private static Optional<Path> onPath() {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return NAMES.stream()
        .flatMap(name -> Stream.of(path.split(File.pathSeparator))
            .filter(folder -> !folder.isBlank())
            .flatMap(folder -> Stream.of(Path.of(folder, name), Path.of(folder, name + ".exe"))))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Prints a page that needs nothing beside itself. */
  void print(String page, Path pdf) {
    try {
      Path folder = Files.createTempDirectory("kettlemark-print");
      try {
        Path html = folder.resolve("page.html");
        Path printed = folder.resolve("page.pdf");
        Files.writeString(html, page, StandardCharsets.UTF_8);
        run(folder, html, printed);
        Files.move(printed, pdf, StandardCopyOption.REPLACE_EXISTING);
      } finally {
        remove(folder);
      }
    } catch (IOException failure) {
      throw new UsageMistake(KettleFiles.cannot("write", pdf, failure));
    }
  }

  private void run(Path folder, Path html, Path pdf) throws IOException {
    Process process = new ProcessBuilder(command(folder, html, pdf))
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
    boolean isDone = false;
    try {
      process.getOutputStream().close();
      isDone = process.waitFor(SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    } finally {
      List<ProcessHandle> children = process.descendants().toList();
      process.destroyForcibly();
      children.forEach(ProcessHandle::destroyForcibly);
    }
    if (!isDone || process.exitValue() != 0 || !Files.exists(pdf)) {
      throw new UsageMistake("`" + browser + "` printed no PDF"
          + (isDone ? "" : " within " + SECONDS + " s")
          + "; print the HTML from a browser instead");
    }
  }

  private List<String> command(Path folder, Path html, Path pdf) {
    List<String> command = new ArrayList<>(List.of(
        browser.toString(),
        "--headless",
        "--disable-gpu",
        "--no-first-run",
        "--no-default-browser-check",
        "--disable-extensions",
        "--disable-sync",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-dev-shm-usage",
        "--host-resolver-rules=MAP * ~NOTFOUND",
        "--user-data-dir=" + folder.resolve("profile"),
        "--no-pdf-header-footer",
        "--export-tagged-pdf",
        "--print-to-pdf=" + pdf));
    // The sandbox refuses to work for root, who in a container is often the only user.
    if (System.getProperty("user.name", "").equals("root")) {
      command.add("--no-sandbox");
    }
    command.add(html.toUri().toString());
    return command;
  }

  private static void remove(Path folder) {
    try (Stream<Path> inside = Files.walk(folder)) {
      inside.sorted(Comparator.reverseOrder()).forEach(path -> path.toFile().delete());
    } catch (IOException | UncheckedIOException gone) {
      // What a dying browser still takes away itself need not be taken away.
      folder.toFile().deleteOnExit();
    }
  }
}
