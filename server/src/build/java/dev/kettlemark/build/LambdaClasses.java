package dev.kettlemark.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.commons.TableSwitchGenerator;

/**
 * Writes the classes of lambdas while the program is built, which the Java machine else makes at each start.
 *
 * <p>A start meets some two thousand lambdas. Even out of an archive the machine links each in some 90 µs, and a class
 * that is there already in 15. What a lambda does stays where it is, in a method of its own class; the new class only
 * calls it, as one of the nest. Lambdas of one class for the same interface that keep the same kinds of values share a
 * class and are told apart by a number.
 *
 * <p>Source: Java Virtual Machine Specification 17, sections 4.7.28 (nest host) and 6.5 (invokedynamic); how values
 * are cast, boxed and widened on their way is that of {@link java.lang.invoke.LambdaMetafactory}.
 */
public final class LambdaClasses {

  private static final int API = Opcodes.ASM9;
  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
  private static final String BETWEEN = "$$";
  private static final Type OBJECT = Type.getObjectType("java/lang/Object");
  private static final Type NUMBER = Type.INT_TYPE;
  private static final Method PLAIN = Method.getMethod("void <init> ()");

  private final Path folder;

  /** The new classes of each nest, by its host. */
  private final Map<String, Set<String>> members = new TreeMap<>();

  /** The written classes that are still of use; others are left of an earlier state of the sources. */
  private final Set<Path> current = new HashSet<>();

  private LambdaClasses(Path folder) {
    this.folder = folder;
  }

  /** Rewrites all classes below a folder; those that are rewritten already stay. */
  public static void main(String[] arguments) throws IOException {
    new LambdaClasses(Path.of(arguments[0])).rewrite();
  }

  private void rewrite() throws IOException {
    List<Path> classes;
    try (Stream<Path> found = Files.walk(folder)) {
      classes =
          found.filter(path -> path.toString().endsWith(".class")).sorted().toList();
    }
    for (Path one : classes) {
      if (!isWritten(one)) {
        rewrite(one);
      }
    }
    for (Map.Entry<String, Set<String>> nest : members.entrySet()) {
      join(file(nest.getKey()), nest.getValue());
    }
    for (Path one : classes) {
      if (isWritten(one) && !current.contains(one)) {
        Files.delete(one);
      }
    }
  }

  private static boolean isWritten(Path path) {
    return path.toString().contains(BETWEEN);
  }

  private void rewrite(Path path) throws IOException {
    ClassReader reader = new ClassReader(Files.readAllBytes(path));
    Rewriter rewriter = new Rewriter(reader.getClassName());
    reader.accept(rewriter, 0);
    rewriter.known.forEach(name -> current.add(file(name)));
    if (rewriter.groups.isEmpty()) {
      return;
    }
    Files.write(path, rewriter.bytes());
    for (Group group : rewriter.groups.values()) {
      Files.write(file(group.type.getInternalName()), group.written(rewriter.host));
      current.add(file(group.type.getInternalName()));
      members
          .computeIfAbsent(rewriter.host, host -> new TreeSet<>())
          .add(group.type.getInternalName());
    }
  }

  /** Tells the host of a nest who is new in it. */
  private static void join(Path host, Set<String> names) throws IOException {
    ClassWriter writer = new ClassWriter(0);
    ClassVisitor visitor = new ClassVisitor(API, writer) {
      @Override
      public void visitEnd() {
        names.forEach(super::visitNestMember);
        super.visitEnd();
      }
    };
    new ClassReader(Files.readAllBytes(host)).accept(visitor, 0);
    Files.write(host, writer.toByteArray());
  }

  private Path file(String name) {
    return folder.resolve(name + ".class");
  }

  /** Puts a use of a written class where a lambda was. */
  private static final class Rewriter extends ClassVisitor {

    private final String name;
    private final Map<Shape, Group> groups = new LinkedHashMap<>();

    /** All of the nest, written earlier or not. */
    private final List<String> known = new ArrayList<>();

    private String host;

    Rewriter(String name) {
      super(API, new ClassWriter(0));
      this.name = name;
      this.host = name;
    }

    byte[] bytes() {
      return ((ClassWriter) cv).toByteArray();
    }

    @Override
    public void visitNestHost(String nestHost) {
      host = nestHost;
      super.visitNestHost(nestHost);
    }

    @Override
    public void visitNestMember(String member) {
      known.add(member);
      super.visitNestMember(member);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String method, String descriptor, String signature, String[] exceptions) {
      MethodVisitor next = super.visitMethod(access, method, descriptor, signature, exceptions);
      return new MethodVisitor(API, next) {
        @Override
        public void visitInvokeDynamicInsn(
            String called, String site, Handle bootstrap, Object... arguments) {
          if (bootstrap.getOwner().equals(FACTORY) && bootstrap.getName().equals("metafactory")) {
            Lambda lambda =
                new Lambda(Type.getArgumentTypes(site), (Handle) arguments[1], (Type) arguments[2]);
            Shape shape = new Shape(
                Type.getReturnType(site),
                new Method(called, ((Type) arguments[0]).getDescriptor()),
                Stream.of(lambda.kept).map(Shape::kind).toList());
            groups.computeIfAbsent(shape, this::group).use(lambda, mv);
          } else {
            super.visitInvokeDynamicInsn(called, site, bootstrap, arguments);
          }
        }

        private Group group(Shape shape) {
          return new Group(Type.getObjectType(name + BETWEEN + groups.size()), shape);
        }
      };
    }
  }

  /**
   * One lambda or method reference.
   *
   * @param kept what it keeps of where it was made
   * @param does the method that it stands for
   * @param seen the types that its values have where it is written, for those of the interface
   */
  private record Lambda(Type[] kept, Handle does, Type seen) {

    boolean makes() {
      return does.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    }

    Type owner() {
      return Type.getObjectType(does.getOwner());
    }

    /** What the method takes, an object that it is called on first. */
    Type[] taken() {
      Type[] arguments = Type.getArgumentTypes(does.getDesc());
      return makes() || does.getTag() == Opcodes.H_INVOKESTATIC
          ? arguments
          : Stream.concat(Stream.of(owner()), Stream.of(arguments)).toArray(Type[]::new);
    }

    Type given() {
      return makes() ? owner() : Type.getReturnType(does.getDesc());
    }
  }

  /**
   * What lambdas that share a class have in common.
   *
   * @param implemented the interface
   * @param called its only method without a body
   * @param kept the kinds of the values that are kept
   */
  private record Shape(Type implemented, Method called, List<Type> kept) {

    static Type kind(Type type) {
      return isReference(type) ? OBJECT : type;
    }
  }

  /** A class to be written. */
  private static final class Group {

    private final Type type;
    private final Shape shape;
    private final List<Lambda> lambdas = new ArrayList<>();

    Group(Type type, Shape shape) {
      this.type = type;
      this.shape = shape;
    }

    /** Takes a lambda in and writes what makes it, or where it lies ready if it keeps nothing. */
    void use(Lambda lambda, MethodVisitor code) {
      int number = lambdas.size();
      lambdas.add(lambda);
      if (shape.kept.isEmpty()) {
        code.visitFieldInsn(
            Opcodes.GETSTATIC, type.getInternalName(), ready(number), type.getDescriptor());
      } else {
        Method factory = factory(number);
        code.visitMethodInsn(
            Opcodes.INVOKESTATIC,
            type.getInternalName(),
            factory.getName(),
            factory.getDescriptor(),
            false);
      }
    }

    byte[] written(String host) {
      ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES);
      writer.visit(
          Opcodes.V17,
          Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC,
          type.getInternalName(),
          null,
          OBJECT.getInternalName(),
          new String[] {shape.implemented.getInternalName()});
      writer.visitNestHost(host);
      writeConstructor(writer);
      if (shape.kept.isEmpty()) {
        writeReady(writer);
      } else {
        IntStream.range(0, lambdas.size()).forEach(number -> writeFactory(number, writer));
      }
      writeCall(writer);
      writer.visitEnd();
      return writer.toByteArray();
    }

    private void writeConstructor(ClassWriter writer) {
      Type[] fields = fields();
      for (int field = 0; field < fields.length; field++) {
        writer
            .visitField(
                Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL,
                field(field),
                fields[field].getDescriptor(),
                null,
                null)
            .visitEnd();
      }
      GeneratorAdapter code = method(writer, Opcodes.ACC_PRIVATE, constructor());
      code.loadThis();
      code.invokeConstructor(OBJECT, PLAIN);
      for (int field = 0; field < fields.length; field++) {
        code.loadThis();
        code.loadArg(field);
        code.putField(type, field(field), fields[field]);
      }
      code.returnValue();
      code.endMethod();
    }

    private void writeReady(ClassWriter writer) {
      GeneratorAdapter code =
          method(writer, Opcodes.ACC_STATIC, Method.getMethod("void <clinit> ()"));
      for (int number = 0; number < lambdas.size(); number++) {
        writer
            .visitField(
                Opcodes.ACC_STATIC | Opcodes.ACC_FINAL,
                ready(number),
                type.getDescriptor(),
                null,
                null)
            .visitEnd();
        make(number, code);
        code.putStatic(type, ready(number), type);
      }
      code.returnValue();
      code.endMethod();
    }

    private void writeFactory(int number, ClassWriter writer) {
      GeneratorAdapter code = method(writer, Opcodes.ACC_STATIC, factory(number));
      make(number, code);
      code.returnValue();
      code.endMethod();
    }

    private void make(int number, GeneratorAdapter code) {
      code.newInstance(type);
      code.dup();
      code.loadArgs();
      if (isShared()) {
        code.push(number);
      }
      code.invokeConstructor(type, constructor());
    }

    private void writeCall(ClassWriter writer) {
      GeneratorAdapter code = method(writer, Opcodes.ACC_PUBLIC, shape.called);
      int last = lambdas.size() - 1;
      if (!isShared()) {
        write(lambdas.get(last), code);
      } else {
        code.loadThis();
        code.getField(type, field(shape.kept.size()), NUMBER);
        code.tableSwitch(IntStream.range(0, last).toArray(), new TableSwitchGenerator() {
          @Override
          public void generateCase(int number, Label end) {
            write(lambdas.get(number), code);
          }

          @Override
          public void generateDefault() {
            write(lambdas.get(last), code);
          }
        });
      }
      code.endMethod();
    }

    private void write(Lambda lambda, GeneratorAdapter code) {
      if (lambda.makes()) {
        code.newInstance(lambda.owner());
        code.dup();
      }
      Type[] taken = lambda.taken();
      for (int kept = 0; kept < lambda.kept.length; kept++) {
        code.loadThis();
        code.getField(type, field(kept), shape.kept.get(kept));
        turn(shape.kept.get(kept), lambda.kept[kept], code);
        turn(lambda.kept[kept], taken[kept], code);
      }
      Type[] called = shape.called.getArgumentTypes();
      for (int argument = 0; argument < called.length; argument++) {
        Type seen = lambda.seen.getArgumentTypes()[argument];
        code.loadArg(argument);
        turn(called[argument], seen, code);
        turn(seen, taken[lambda.kept.length + argument], code);
      }
      int how = switch (lambda.does.getTag()) {
        case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
        case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
        default -> lambda.does.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
      };
      code.visitMethodInsn(
          how,
          lambda.does.getOwner(),
          lambda.does.getName(),
          lambda.does.getDesc(),
          lambda.does.isInterface());
      giveBack(lambda, code);
    }

    private void giveBack(Lambda lambda, GeneratorAdapter code) {
      if (shape.called.getReturnType().equals(Type.VOID_TYPE)) {
        // What comes out of a method reference may be of no interest.
        switch (lambda.given().getSize()) {
          case 2 -> code.pop2();
          case 1 -> code.pop();
          default -> {}
        }
      } else {
        turn(lambda.given(), lambda.seen.getReturnType(), code);
        turn(lambda.seen.getReturnType(), shape.called.getReturnType(), code);
      }
      code.returnValue();
    }

    private boolean isShared() {
      return lambdas.size() > 1;
    }

    private Type[] fields() {
      Stream<Type> kept = shape.kept.stream();
      return (isShared() ? Stream.concat(kept, Stream.of(NUMBER)) : kept).toArray(Type[]::new);
    }

    private Method constructor() {
      return new Method("<init>", Type.VOID_TYPE, fields());
    }

    private Method factory(int number) {
      return new Method("of" + number, type, shape.kept.toArray(Type[]::new));
    }

    private static String field(int number) {
      return "kept" + number;
    }

    private static String ready(int number) {
      return "ready" + number;
    }

    private static GeneratorAdapter method(ClassWriter writer, int access, Method method) {
      GeneratorAdapter code = new GeneratorAdapter(access, method, null, null, writer);
      code.visitCode();
      return code;
    }
  }

  private static boolean isReference(Type type) {
    return type.getSort() >= Type.ARRAY;
  }

  /** Casts, boxes, unboxes or widens the value on top. */
  private static void turn(Type from, Type to, GeneratorAdapter code) {
    if (isReference(to)) {
      if (isReference(from)) {
        code.checkCast(to);
      } else {
        code.valueOf(from);
      }
    } else if (isReference(from)) {
      Type own = Boxes.unboxed(from, to);
      code.unbox(own);
      code.cast(own, to);
    } else {
      code.cast(from, to);
    }
  }

  /** What is in a box. */
  private static final class Boxes {

    private static final Map<String, Type> INSIDE = Map.of(
        "java/lang/Boolean", Type.BOOLEAN_TYPE,
        "java/lang/Byte", Type.BYTE_TYPE,
        "java/lang/Character", Type.CHAR_TYPE,
        "java/lang/Short", Type.SHORT_TYPE,
        "java/lang/Integer", Type.INT_TYPE,
        "java/lang/Long", Type.LONG_TYPE,
        "java/lang/Float", Type.FLOAT_TYPE,
        "java/lang/Double", Type.DOUBLE_TYPE);

    /** The type that a box holds by its own; a box of no known type holds what is wanted. */
    static Type unboxed(Type box, Type wanted) {
      return INSIDE.getOrDefault(box.getInternalName(), wanted);
    }
  }
}
