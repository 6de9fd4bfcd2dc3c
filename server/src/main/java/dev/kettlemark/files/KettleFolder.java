package dev.kettlemark.files;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;

/** Which formula files a folder holds. */
public final class KettleFolder {

  /** What the name of a formula file ends with. */
  public static final String SUFFIX = ".kettle";

  /** Nobody nests folders so deep; a limit keeps a strange file system from holding the program. */
  private static final int DEEPEST = 64;

  private KettleFolder() {}

  /**
   * The formula files at any depth below a folder, in order of name, each once however many links lead
   * to it.
   *
   * <p>Folders whose name starts with a point are left out, as they hold what tools keep for
   * themselves.
   *
   * @param unreadable told of each folder that cannot be read
   */
  public static List<Path> below(Path folder, BiConsumer<Path, IOException> unreadable) {
    return walk(folder, DEEPEST, unreadable);
  }

  /** The formula files that lie in a folder itself. */
  public static List<Path> in(Path folder, BiConsumer<Path, IOException> unreadable) {
    return walk(folder, 1, unreadable);
  }

  /** Whether a path is named like a formula file. */
  public static boolean isFormulaFile(Path path) {
    return name(path).endsWith(SUFFIX);
  }

  /** The files of both lists, each once however many links lead to it; the earlier name wins. */
  public static List<Path> once(Collection<Path> first, Collection<Path> second) {
    Set<Path> seen = new HashSet<>();
    return Stream.concat(first.stream(), second.stream())
        .filter(path -> seen.add(real(path)))
        .toList();
  }

  private static List<Path> walk(Path folder, int depth, BiConsumer<Path, IOException> unreadable) {
    List<Path> found = new ArrayList<>();
    try {
      Files.walkFileTree(
          folder,
          EnumSet.of(FileVisitOption.FOLLOW_LINKS),
          depth,
          new Collector(folder, found, unreadable));
    } catch (IOException failure) {
      unreadable.accept(folder, failure);
    }
    found.sort(null);
    return once(found, List.of());
  }

  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException unreadable) {
      return path.toAbsolutePath().normalize();
    }
  }

  private static String name(Path path) {
    Path name = path.getFileName();
    return name == null ? "" : name.toString();
  }

  private static final class Collector extends SimpleFileVisitor<Path> {

    private final Path folder;
    private final List<Path> found;
    private final BiConsumer<Path, IOException> unreadable;

    Collector(Path folder, List<Path> found, BiConsumer<Path, IOException> unreadable) {
      this.folder = folder;
      this.found = found;
      this.unreadable = unreadable;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path path, BasicFileAttributes attributes) {
      boolean hidden = !path.equals(folder) && name(path).startsWith(".");
      return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path path, BasicFileAttributes attributes) {
      if (isFormulaFile(path) && attributes.isRegularFile()) {
        found.add(path);
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFileFailed(Path path, IOException failure) {
      // A link back to a folder further up leads to nothing new.
      if (!(failure instanceof FileSystemLoopException)) {
        unreadable.accept(path, failure);
      }
      return FileVisitResult.CONTINUE;
    }
  }
}
