package dev.kettlemark.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version that the build wrote into the program's file. */
final class Version implements IVersionProvider {

  /** The version, or a word where the program runs from loose classes. */
  static String number() {
    return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
        .orElse("0 (not released)");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"kettlemark " + number()};
  }
}
