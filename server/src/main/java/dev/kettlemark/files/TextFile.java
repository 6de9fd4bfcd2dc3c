package dev.kettlemark.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.function.Predicate;

/** Texts on the disk, always in UTF-8. */
public final class TextFile {

  private TextFile() {}

  /** The text of a file. */
  public static String read(Path path) throws IOException {
    return decoded(Files.readAllBytes(path));
  }

  /**
   * The text of bytes in UTF-8.
   *
   * @throws CharacterCodingException if they are in some other encoding
   */
  public static String decoded(byte[] bytes) throws CharacterCodingException {
    return StandardCharsets.UTF_8
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(ByteBuffer.wrap(bytes))
        .toString();
  }

  /**
   * The bytes of a text in UTF-8.
   *
   * @throws CharacterCodingException if it holds half a character, which UTF-8 has no form for
   */
  private static byte[] encoded(String text) throws CharacterCodingException {
    ByteBuffer bytes = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
    byte[] exact = new byte[bytes.remaining()];
    bytes.get(exact);
    return exact;
  }

  /**
   * Replaces a file's text so that a reader finds either the old text or the new, never a part.
   *
   * <p>A link keeps pointing where it did; the file it points to is replaced.
   */
  public static void write(Path path, String text) throws IOException {
    replace(path, text, old -> true);
  }

  /**
   * Replaces a file's text in the same way, if it still is what the writer takes it for.
   *
   * <p>The old text is looked at when the new one is ready and nothing but the move is left to do, so that only a few
   * microseconds remain in which somebody else's change could be missed.
   *
   * @param expected asked of the bytes that are about to be replaced
   * @return whether the file was replaced
   */
  public static boolean replace(Path path, String text, Predicate<byte[]> expected)
      throws IOException {
    Path target = path.toRealPath();
    try (Draft draft = Draft.beside(target)) {
      draft.writeThrough(encoded(text));
      keepPermissions(target, draft.path());
      if (!expected.test(Files.readAllBytes(target))) {
        return false;
      }
      draft.takeItsPlace();
      return true;
    }
  }

  /** Why a file could not be read or written, in plain words. */
  public static String why(IOException failure) {
    if (failure instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    if (failure instanceof AccessDeniedException) {
      return "access is denied";
    }
    if (failure instanceof CharacterCodingException) {
      return "it is not UTF-8 text";
    }
    String reason = failure.getMessage();
    return reason == null ? failure.getClass().getSimpleName() : reason;
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    if (from.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
    }
  }
}
