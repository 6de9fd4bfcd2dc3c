package dev.kettlemark.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file that is written beside another and then takes its place in one step.
 *
 * <p>Whoever reads the other finds it as it was or as it is to be, never a part; and where the disk is full
 * or the program is ended meanwhile, it stays as it was. What is not used is deleted.
 */
final class Draft implements AutoCloseable {

  private final Path file;
  private final Path path;

  private Draft(Path file, Path path) {
    this.file = file;
    this.path = path;
  }

  /** Starts one beside a file, whose folder is made if it is not there. */
  static Draft beside(Path file) throws IOException {
    Path folder = file.toAbsolutePath().normalize().getParent();
    if (folder == null) {
      throw new IOException(file + " is no file");
    }
    return new Draft(
        file, Files.createTempFile(Files.createDirectories(folder), ".kettlemark", ".tmp"));
  }

  Path path() {
    return path;
  }

  void write(byte[] bytes) throws IOException {
    write(bytes, StandardOpenOption.TRUNCATE_EXISTING);
  }

  /** Writes and waits for the disk, so that a power cut loses nothing either. */
  void writeThrough(byte[] bytes) throws IOException {
    write(bytes, StandardOpenOption.WRITE, StandardOpenOption.SYNC);
  }

  private void write(byte[] bytes, OpenOption... how) throws IOException {
    Files.write(path, bytes, how);
  }

  void takeItsPlace() throws IOException {
    Files.move(path, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(path);
  }
}
