package dev.kettlemark.build;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.kettlemark.cli.Main;
import java.io.IOException;
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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** What the build makes of lambdas does what they did; all other tests run on classes that it has rewritten. */
class LambdaClassesTest {

  private static final Path PROGRAM =
      Path.of("src/build/java/dev/kettlemark/build/LambdaClasses.java");

  /** Fewer than this, and the count below has looked in the wrong place. */
  private static final int FEWEST_CLASSES = 1_000;

  @TempDir
  private Path folder;

  @Test
  void doWhatTheyDid() throws Exception {
    copy();
    assertNotEquals(List.of(), lambdas(folder));
    rewrite();
    assertEquals(List.of(), lambdas(folder));
    List<String> expected = new ManyLambdas().call();
    assertEquals(expected, rewritten());
    assertTrue(expected.size() > 15, expected::toString);
  }

  @Test
  void areWrittenOnce() throws Exception {
    copy();
    rewrite();
    Map<Path, List<Byte>> first = bytes();
    rewrite();
    assertEquals(first, bytes());
  }

  /** Otherwise the program would hold what nothing in its sources asks for. */
  @Test
  void takeAwayWhatIsLeftOfAnEarlierState() throws Exception {
    copy();
    rewrite();
    Map<Path, List<Byte>> first = bytes();
    Path left = folder.resolve("dev/kettlemark/build/ManyLambdas$$99.class");
    Files.copy(folder.resolve("dev/kettlemark/build/ManyLambdas$$0.class"), left);
    rewrite();
    assertEquals(first, bytes());
  }

  /** Those that can be written to a stream are left to the machine; the program has none. */
  @Test
  void theProgramIsRewritten() throws Exception {
    Path classes =
        Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    assertEquals(List.of(), lambdas(classes));
    assertTrue(files(classes).size() >= FEWEST_CLASSES);
  }

  private void copy() throws Exception {
    Path tests = Path.of(
        ManyLambdas.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    String name = ManyLambdas.class.getName().replace('.', '/');
    for (Path file : files(tests.resolve("dev/kettlemark/build"))) {
      String own = tests.relativize(file).toString().replace('\\', '/');
      if (own.matches(name + "(\\$.*)?\\.class")) {
        Path to = folder.resolve(own);
        Files.createDirectories(folder.resolve("dev/kettlemark/build"));
        Files.copy(file, to);
      }
    }
  }

  private void rewrite() throws IOException, InterruptedException {
    Process process = new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-classpath",
            System.getProperty("java.class.path"),
            PROGRAM.toString(),
            folder.toString())
        .redirectErrorStream(true)
        .start();
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, process.waitFor(), said);
  }

  /** Of a loader that knows nothing of the class as the compiler wrote it. */
  private Object rewritten() throws Exception {
    URL[] where = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(where, ClassLoader.getPlatformClassLoader())) {
      var constructor = loader.loadClass(ManyLambdas.class.getName()).getDeclaredConstructor();
      constructor.setAccessible(true);
      return ((Callable<?>) constructor.newInstance()).call();
    }
  }

  private Map<Path, List<Byte>> bytes() throws IOException {
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

  /** The methods below a folder that the Java machine would have to make a class for. */
  private static List<String> lambdas(Path folder) throws IOException {
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
                      if (bootstrap.getOwner().endsWith("LambdaMetafactory")) {
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
