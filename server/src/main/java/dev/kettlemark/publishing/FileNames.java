package dev.kettlemark.publishing;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.text.Normalizer;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Set;

/**
 * Names of a library as names of files, safe on every system.
 *
 * <p>A name that is safe already stays as it is. Any other keeps what is safe of it and gets a piece of its
 * hash, so that two names never meet in one file, not even where a system takes {@code A} for {@code a}.
 */
final class FileNames {

  private static final int LONGEST = 60;
  private static final int HASH_DIGITS = 10;

  /** Names that some systems keep for devices, whatever stands behind the point. */
  private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

  private FileNames() {}

  /** The name of the file, without its ending. */
  static String of(String name) {
    String plain = Normalizer.normalize(name, Normalizer.Form.NFKD)
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9]+", "-")
        .replaceAll("^-+|-+$", "");
    if (plain.length() > LONGEST) {
      plain = plain.substring(0, LONGEST);
    }
    boolean isDevice = DEVICES.contains(plain) || plain.matches("(com|lpt)[0-9]");
    return plain.equals(name) && !plain.isEmpty() && !isDevice
        ? plain
        : (plain.isEmpty() ? "name" : plain) + "-" + hex(name).substring(0, HASH_DIGITS);
  }

  private static String hex(String text) {
    return HexFormat.of().formatHex(digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The hash by which a page is known again. */
  static String hash(byte[] text) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(digest(text));
  }

  private static byte[] digest(byte[] text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
