package dev.kettlemark.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.cli.Main;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.function.BiPredicate;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * A program of the build that rewrites classes, tried on a copy of one class and its nested classes.
 *
 * @param program the name of its source
 * @param sample the class
 * @param folder for the copy
 */
record BuildStep(String program, Class<? extends Callable<List<String>>> sample, Path folder) {

  private static final Path SOURCES = Path.of("src/build/java/dev/kettlemark/build");

  /** Fewer than this, and one has looked in the wrong place. */
  private static final int FEWEST_CLASSES = 1_000;

  /** The classes of the program as the build leaves them. */
  static Path builtProgram() throws IOException {
    Path classes = home(Main.class);
    assertTrue(files(classes).size() >= FEWEST_CLASSES);
    return classes;
  }

  private static Path home(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  void copy() throws IOException {
    Path tests = home(sample);
    String name = sample.getName().replace('.', '/');
    for (Path file : files(tests.resolve(sample.getPackageName().replace('.', '/')))) {
      String own = tests.relativize(file).toString().replace('\\', '/');
      if (own.matches(name + "(\\$.*)?\\.class")) {
        Path to = folder.resolve(own);
        Files.createDirectories(to.getParent());
        Files.copy(file, to);
      }
    }
  }

  void run() throws IOException, InterruptedException {
    Process process = new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-classpath",
            System.getProperty("java.class.path"),
            SOURCES.resolve(program + ".java").toString(),
            folder.toString())
        .redirectErrorStream(true)
        .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), said);
  }

  /** What is rewritten already stays as it is. */
  void assertWritesOnce() throws IOException, InterruptedException {
    run();
    Map<Path, List<Byte>> first = bytes();
    run();
    assertEquals(first, bytes());
  }

  /** What comes of the copy, in a loader that knows nothing of the class as the compiler wrote it. */
  Object outcome() throws Exception {
    URL[] where = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(where, ClassLoader.getPlatformClassLoader())) {
      var constructor = loader.loadClass(sample.getName()).getDeclaredConstructor();
      constructor.setAccessible(true);
      return ((Callable<?>) constructor.newInstance()).call();
    }
  }

  Map<Path, List<Byte>> bytes() throws IOException {
    Map<Path, List<Byte>> bytes = new TreeMap<>();
    for (Path file : files(folder)) {
      List<Byte> own = new ArrayList<>();
      for (byte one : Files.readAllBytes(file)) {
        own.add(one);
      }
      bytes.put(file, own);
    }
    return bytes;
  }

  /**
   * The methods below a folder for which the Java machine would have to make something.
   *
   * @param sought the name of what makes it, and of what is called
   */
  static List<String> made(Path folder, BiPredicate<String, String> sought) throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : files(folder)) {
      new ClassReader(Files.readAllBytes(file))
          .accept(
              new ClassVisitor(Opcodes.ASM9) {
                @Override
                public MethodVisitor visitMethod(
                    int access,
                    String method,
                    String descriptor,
                    String signature,
                    String[] exceptions) {
                  return new MethodVisitor(Opcodes.ASM9) {
                    @Override
                    public void visitInvokeDynamicInsn(
                        String called, String site, Handle bootstrap, Object... arguments) {
                      if (sought.test(bootstrap.getOwner(), called)) {
                        found.add(file + " " + method);
                      }
                    }
                  };
                }
              },
              ClassReader.SKIP_DEBUG);
    }
    return found;
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".class")).sorted().toList();
    }
  }
}
