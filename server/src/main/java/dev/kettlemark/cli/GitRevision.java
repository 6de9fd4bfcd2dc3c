package dev.kettlemark.cli;

import dev.kettlemark.files.KettleFolder;
import dev.kettlemark.files.TextFile;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** The formula files of a folder as they were in an earlier revision, asked of the program {@code git}. */
final class GitRevision {

  private static final String PLAIN_FILE = "100";

  private final Path folder;
  private final String git;

  /**
   * A folder of a repository.
   *
   * @param git the name or path of the program
   */
  GitRevision(Path folder, String git) {
    this.folder = folder;
    this.git = git;
  }

  /** A file of a revision. */
  private record Blob(String id, String path) {}

  /**
   * The texts of a revision, by path below the folder; hidden folders are left out, as on disk.
   *
   * @param revision a commit, branch or tag as git understands it
   * @param problems told of each file that is no text
   */
  Map<String, String> texts(String revision, List<String> problems) {
    String commit = commit(revision);
    List<Blob> blobs = blobs(commit);
    Map<String, String> texts = new LinkedHashMap<>();
    List<byte[]> contents = contents(blobs);
    for (int i = 0; i < blobs.size(); i++) {
      try {
        texts.put(blobs.get(i).path(), TextFile.decoded(contents.get(i)));
      } catch (CharacterCodingException broken) {
        problems.add("cannot read " + Visible.of(blobs.get(i).path()) + " of rev:"
            + Visible.of(revision) + ": " + TextFile.why(broken));
      }
    }
    return texts;
  }

  private String commit(String revision) {
    run(
        List.of("rev-parse", "--git-dir"),
        KettleFiles.shown(folder) + " is in no git repository, so it has no revisions");
    String missing =
        "git knows no revision `" + Visible.of(revision) + "` of " + KettleFiles.shown(folder);
    // What starts with a dash would be taken for an option.
    if (revision.isBlank() || revision.startsWith("-")) {
      throw new UsageMistake(missing);
    }
    return text(run(List.of("rev-parse", "--verify", "--quiet", revision + "^{commit}"), missing))
        .strip();
  }

  private List<Blob> blobs(String commit) {
    // Paths come out as seen from the folder, and only those below it.
    String listing =
        text(run(List.of("ls-tree", "-r", "-z", commit), "git cannot list the files of " + commit));
    List<Blob> blobs = new ArrayList<>();
    for (String line : listing.split("\0")) {
      int tab = line.indexOf('\t');
      String[] traits = line.substring(0, Math.max(0, tab)).split(" ");
      String path = line.substring(tab + 1);
      boolean isFile = traits.length == 3 && traits[0].startsWith(PLAIN_FILE);
      if (isFile && path.endsWith(KettleFolder.SUFFIX) && !isHidden(path)) {
        blobs.add(new Blob(traits[2], path));
      }
    }
    return blobs;
  }

  private static boolean isHidden(String path) {
    String[] names = path.split("/");
    return Arrays.stream(names, 0, names.length - 1).anyMatch(name -> name.startsWith("."));
  }

  /** One run for all files: {@code <id> blob <size>}, the content and a line end for each. */
  private List<byte[]> contents(List<Blob> blobs) {
    String failed = "git cannot read the files of the revision";
    Process process = start(List.of("cat-file", "--batch"));
    CompletableFuture<Void> asking = CompletableFuture.runAsync(() -> ask(process, blobs));
    List<byte[]> contents = new ArrayList<>();
    try (InputStream answers = new BufferedInputStream(process.getInputStream())) {
      for (int i = 0; i < blobs.size(); i++) {
        String[] head = headLine(answers).split(" ");
        if (head.length != 3 || !head[1].equals("blob")) {
          throw new UsageMistake(failed);
        }
        contents.add(answers.readNBytes(Integer.parseInt(head[2])));
        answers.skipNBytes(1);
      }
      asking.join();
    } catch (IOException | CompletionException broken) {
      throw new UsageMistake(failed);
    } finally {
      process.destroy();
    }
    return contents;
  }

  private static void ask(Process process, List<Blob> blobs) {
    try (OutputStream questions = process.getOutputStream()) {
      for (Blob blob : blobs) {
        questions.write((blob.id() + "\n").getBytes(StandardCharsets.US_ASCII));
      }
    } catch (IOException gone) {
      throw new CompletionException(gone);
    }
  }

  private static String headLine(InputStream answers) throws IOException {
    ByteArrayOutputStream line = new ByteArrayOutputStream();
    for (int next = answers.read(); next >= 0 && next != '\n'; next = answers.read()) {
      line.write(next);
    }
    return line.toString(StandardCharsets.US_ASCII);
  }

  /** What git prints; a usage mistake with that message where it refuses. */
  private byte[] run(List<String> arguments, String refused) {
    Process process = start(arguments);
    try {
      process.getOutputStream().close();
      byte[] printed = process.getInputStream().readAllBytes();
      if (process.waitFor() == 0) {
        return printed;
      }
    } catch (IOException broken) {
      process.destroy();
    } catch (InterruptedException interrupted) {
      process.destroy();
      Thread.currentThread().interrupt();
    }
    throw new UsageMistake(refused);
  }

  private Process start(List<String> arguments) {
    List<String> command = new ArrayList<>(List.of(git));
    command.addAll(arguments);
    try {
      return new ProcessBuilder(command)
          .directory(folder.toAbsolutePath().toFile())
          .redirectError(ProcessBuilder.Redirect.DISCARD)
          .start();
    } catch (IOException missing) {
      throw new UsageMistake("`" + git + "` cannot be run, and without it there are no revisions;"
          + " compare two folders instead");
    }
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
