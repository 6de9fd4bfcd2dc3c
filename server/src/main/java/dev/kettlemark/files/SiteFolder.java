package dev.kettlemark.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * A folder that pages are published in, and out of which nothing is ever written.
 *
 * <p>No link inside it is followed, each file is replaced in one step, and a file that holds what it should
 * is left alone.
 */
public final class SiteFolder {

  private final Path folder;

  private SiteFolder(Path folder) {
    this.folder = folder;
  }

  /**
   * Opens a folder, which is made if it is not there.
   *
   * @param library which must not lie in it
   * @throws IOException with a plain reason where it cannot be used
   */
  public static SiteFolder open(Path folder, Path library) throws IOException {
    Path site = real(folder);
    if (library.toRealPath().startsWith(site)) {
      throw new IOException("the library lies in it, and would be published over");
    }
    if (Files.isSymbolicLink(folder)) {
      throw new IOException("it is a link to another folder");
    }
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new IOException("it is no folder");
    }
    Files.createDirectories(folder);
    return new SiteFolder(folder.toRealPath());
  }

  /** Where a path leads, as far up as it exists. */
  private static Path real(Path path) throws IOException {
    Path whole = path.toAbsolutePath().normalize();
    Path there = whole;
    while (!Files.exists(there)) {
      Path above = there.getParent();
      if (above == null) {
        return whole;
      }
      there = above;
    }
    return there.toRealPath().resolve(there.relativize(whole)).normalize();
  }

  /** The text of a file in it; empty where there is none, or something that is no plain file. */
  public Optional<String> read(String name) throws IOException {
    return bytes(name).map(bytes -> new String(bytes, StandardCharsets.UTF_8));
  }

  /** The same as it lies there, for whoever only asks whether it is what it was. */
  public Optional<byte[]> bytes(String name) throws IOException {
    Path file = place(name);
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        ? Optional.of(Files.readAllBytes(file))
        : Optional.empty();
  }

  /** Whether anything stands in the place of a file. */
  public boolean holds(String name) throws IOException {
    return Files.exists(place(name), LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Puts a text into a file.
   *
   * @return whether it had to be written
   */
  public boolean put(String name, String text, boolean anew) throws IOException {
    Path file = place(name);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    boolean isThere = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    if (isThere && !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new IOException(name + " is a folder or a link, and no page of ours");
    }
    if (isThere
        && !anew
        && Files.size(file) == bytes.length
        && Arrays.equals(Files.readAllBytes(file), bytes)) {
      return false;
    }
    try (Draft draft = Draft.beside(file)) {
      draft.write(bytes);
      readable(draft.path());
      draft.takeItsPlace();
    }
    return true;
  }

  /** A draft belongs to its maker alone; a published page is for all. */
  private static void readable(Path draft) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(draft, PosixFileAttributeView.class);
    if (view != null) {
      Set<PosixFilePermission> allowed =
          EnumSet.of(PosixFilePermission.GROUP_READ, PosixFilePermission.OTHERS_READ);
      allowed.addAll(view.readAttributes().permissions());
      view.setPermissions(allowed);
    }
  }

  /** Takes a file away, and its folder if that is empty then. */
  public void remove(String name) throws IOException {
    Path file = place(name);
    Files.deleteIfExists(file);
    Path above = file.getParent();
    if (above != null && !above.equals(folder) && isEmpty(above)) {
      Files.deleteIfExists(above);
    }
  }

  private static boolean isEmpty(Path path) throws IOException {
    if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (DirectoryStream<Path> inside = Files.newDirectoryStream(path)) {
      return !inside.iterator().hasNext();
    }
  }

  /** The place of a file, which no name and no link can lead out of the folder. */
  private Path place(String name) throws IOException {
    Path file = folder.resolve(name).normalize();
    if (!file.startsWith(folder) || file.equals(folder)) {
      throw new IOException(name + " lies outside the folder");
    }
    Path step = folder;
    for (Path part : folder.relativize(file)) {
      step = step.resolve(part);
      if (Files.isSymbolicLink(step)) {
        throw new IOException(name + " leads over a link");
      }
    }
    return file;
  }
}
