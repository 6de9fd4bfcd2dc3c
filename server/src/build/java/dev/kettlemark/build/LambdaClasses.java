package dev.kettlemark.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
import org.objectweb.asm.commons.InstructionAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.commons.TableSwitchGenerator;

/**
 * Writes the classes of lambdas while the program is built, which the Java machine else makes at each start.
 *
 * <p>A start meets some two thousand lambdas. Even out of an archive the machine links each in some 90 µs. So the build
 * writes one class for all lambdas of a nest, with all their interfaces; they are told apart by a number. What a lambda
 * does stays where it is, in a method of its own class; the new class only calls it, as one of the nest.
 *
 * <p>Source: Java Virtual Machine Specification 17, sections 4.7.28 (nest host) and 6.5 (invokedynamic); how values
 * are cast, boxed and widened on their way is that of {@link java.lang.invoke.LambdaMetafactory}.
 */
public final class LambdaClasses {

  private static final int API = Opcodes.ASM9;
  private static final String FACTORY = "java/lang/invoke/LambdaMetafactory";
  private static final String BETWEEN = "$$";

  /** So that what calls them stays a method that the machine compiles gladly. */
  private static final int MOST_LAMBDAS = 64;

  private static final Type OBJECT = Type.getObjectType("java/lang/Object");
  private static final Type NUMBER = Type.INT_TYPE;
  private static final Method PLAIN = Method.getMethod("void <init> ()");

  private final Path folder;
  private final Interfaces interfaces;

  /** The new classes of each nest, by its host. */
  private final Map<String, List<Group>> nests = new TreeMap<>();

  /** The written classes that are still of use; others are left of an earlier state of the sources. */
  private final Set<Path> current = new HashSet<>();

  private LambdaClasses(Path folder) {
    this.folder = folder;
    this.interfaces = new Interfaces(folder);
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
    for (Map.Entry<String, List<Group>> nest : nests.entrySet()) {
      for (Group group : nest.getValue()) {
        Path file = file(group.type.getInternalName());
        Files.write(file, group.written(nest.getKey()));
        current.add(file);
      }
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
    if (rewriter.isChanged) {
      Files.write(path, rewriter.bytes());
    }
  }

  /** Tells the host of a nest who is new in it. */
  private static void join(Path host, List<Group> groups) throws IOException {
    ClassWriter writer = new ClassWriter(0);
    ClassVisitor visitor = new ClassVisitor(API, writer) {
      @Override
      public void visitEnd() {
        groups.forEach(group -> super.visitNestMember(group.type.getInternalName()));
        super.visitEnd();
      }
    };
    new ClassReader(Files.readAllBytes(host)).accept(visitor, 0);
    Files.write(host, writer.toByteArray());
  }

  private Path file(String name) {
    return folder.resolve(name + ".class");
  }

  /** The class of a nest that takes in a lambda for an interface. */
  private Group group(String host, Type implemented) {
    List<Group> groups = nests.computeIfAbsent(host, key -> new ArrayList<>());
    for (Group group : groups) {
      if (group.lambdas.size() < MOST_LAMBDAS
          && interfaces.goTogether(group.implemented, implemented)) {
        return group;
      }
    }
    Group group = new Group(Type.getObjectType(host + BETWEEN + groups.size()));
    groups.add(group);
    return group;
  }

  /** Puts a use of a written class where a lambda was. */
  private final class Rewriter extends ClassVisitor {

    /** All of the nest, written earlier or not. */
    private final List<String> known = new ArrayList<>();

    private String host;
    private boolean isChanged;

    Rewriter(String name) {
      super(API, new ClassWriter(0));
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

        /** The number of a lambda lies on top of what it keeps. */
        private int deeper;

        @Override
        public void visitInvokeDynamicInsn(
            String called, String site, Handle bootstrap, Object... arguments) {
          if (bootstrap.getOwner().equals(FACTORY) && bootstrap.getName().equals("metafactory")) {
            isChanged = true;
            deeper = 1;
            Type implemented = Type.getReturnType(site);
            Lambda lambda = new Lambda(
                implemented,
                new Method(called, ((Type) arguments[0]).getDescriptor()),
                Type.getArgumentTypes(site),
                (Handle) arguments[1],
                (Type) arguments[2]);
            group(host, implemented).use(lambda, mv);
          } else {
            super.visitInvokeDynamicInsn(called, site, bootstrap, arguments);
          }
        }

        @Override
        public void visitMaxs(int stack, int locals) {
          super.visitMaxs(stack + deeper, locals);
        }
      };
    }
  }

  /** Which interfaces one class can have. */
  private static final class Interfaces {

    private final Path folder;
    private final Map<Type, Methods> known = new HashMap<>();

    /**
     * What an interface asks for and what it brings along, with all that it extends.
     *
     * @param all each with the interface that says so last
     * @param brought those with a body
     */
    private record Methods(Map<Method, Type> all, Set<Method> brought) {

      boolean standInTheWayOf(Methods other) {
        return brought.stream()
            .anyMatch(
                method -> !other.all.getOrDefault(method, all.get(method)).equals(all.get(method)));
      }
    }

    Interfaces(Path folder) {
      this.folder = folder;
    }

    /**
     * Whether a class with some interfaces can have a further one, and each lambda still be called as before.
     *
     * <p>It cannot where one brings a method along that another has by itself. Libraries like to ask an object what
     * it is, so that an interface of one of them stands alone; the Java library and the program do not ask.
     */
    boolean goTogether(Set<Type> interfaces, Type further) {
      return interfaces.contains(further)
          || Stream.concat(interfaces.stream(), Stream.of(further))
                  .allMatch(Interfaces::isOfJavaOrOwn)
              && interfaces.stream().allMatch(one -> differ(one, further));
    }

    private static boolean isOfJavaOrOwn(Type type) {
      String name = type.getInternalName();
      return name.startsWith("java/") || name.startsWith("dev/kettlemark/");
    }

    private boolean differ(Type one, Type other) {
      return !methods(one).standInTheWayOf(methods(other))
          && !methods(other).standInTheWayOf(methods(one));
    }

    private Methods methods(Type type) {
      Methods methods = known.get(type);
      if (methods == null) {
        methods = read(type);
        known.put(type, methods);
      }
      return methods;
    }

    private Methods read(Type type) {
      Methods methods = new Methods(new HashMap<>(), new HashSet<>());
      ClassReader reader = reader(type.getInternalName());
      for (String above : reader.getInterfaces()) {
        Methods inherited = methods(Type.getObjectType(above));
        methods.all.putAll(inherited.all);
        methods.brought.addAll(inherited.brought);
      }
      ClassVisitor visitor = new ClassVisitor(API) {
        @Override
        public MethodVisitor visitMethod(
            int access, String name, String descriptor, String signature, String[] exceptions) {
          if ((access & Opcodes.ACC_STATIC) == 0) {
            Method method = new Method(name, descriptor);
            methods.all.put(method, type);
            if ((access & Opcodes.ACC_ABSTRACT) == 0) {
              methods.brought.add(method);
            } else {
              methods.brought.remove(method);
            }
          }
          return null;
        }
      };
      reader.accept(visitor, ClassReader.SKIP_CODE);
      return methods;
    }

    private ClassReader reader(String name) {
      Path own = folder.resolve(name + ".class");
      try (InputStream bytes = Files.exists(own)
          ? Files.newInputStream(own)
          : ClassLoader.getSystemResourceAsStream(name + ".class")) {
        return new ClassReader(bytes);
      } catch (IOException failure) {
        throw new UncheckedIOException(name, failure);
      }
    }
  }

  /**
   * One lambda or method reference.
   *
   * @param implemented the interface
   * @param called its only method without a body
   * @param kept the types of what it keeps of where it was made
   * @param does the method that it stands for
   * @param seen the types that its values have where it is written, for those of the interface
   */
  private record Lambda(Type implemented, Method called, Type[] kept, Handle does, Type seen) {

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

    /** What a class keeps for it, and where. */
    List<Kept> places() {
      List<Kept> places = new ArrayList<>();
      for (Type type : kept) {
        Type kind = isReference(type) ? OBJECT : type;
        long before = places.stream().filter(place -> place.kind.equals(kind)).count();
        places.add(new Kept(kind, kind.getDescriptor().charAt(0) + Long.toString(before)));
      }
      return places;
    }
  }

  /** A value that a class keeps; all objects are of one kind. */
  private record Kept(Type kind, String field) {}

  /** A class to be written. */
  private static final class Group {

    private final Type type;
    private final Set<Type> implemented = new LinkedHashSet<>();
    private final List<Lambda> lambdas = new ArrayList<>();

    /** Of each called method those that are called by it; the number of a lambda is its place among them. */
    private final Map<Method, List<Lambda>> called = new LinkedHashMap<>();

    private final Set<List<Kept>> shapes = new LinkedHashSet<>();

    Group(Type type) {
      this.type = type;
    }

    /** Takes a lambda in and writes what makes it, or where it lies ready if it keeps nothing. */
    void use(Lambda lambda, MethodVisitor code) {
      List<Lambda> alike = called.computeIfAbsent(lambda.called, key -> new ArrayList<>());
      List<Kept> places = lambda.places();
      implemented.add(lambda.implemented);
      if (places.isEmpty()) {
        code.visitFieldInsn(
            Opcodes.GETSTATIC, type.getInternalName(), ready(lambdas.size()), type.getDescriptor());
      } else {
        new InstructionAdapter(code).iconst(alike.size());
        Method factory = new Method("of", type, arguments(places));
        code.visitMethodInsn(
            Opcodes.INVOKESTATIC,
            type.getInternalName(),
            factory.getName(),
            factory.getDescriptor(),
            false);
      }
      shapes.add(places);
      alike.add(lambda);
      lambdas.add(lambda);
    }

    byte[] written(String host) {
      ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES);
      writer.visit(
          Opcodes.V17,
          Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC,
          type.getInternalName(),
          null,
          OBJECT.getInternalName(),
          implemented.stream().map(Type::getInternalName).toArray(String[]::new));
      writer.visitNestHost(host);
      writeFields(writer);
      shapes.forEach(places -> writeConstructor(places, writer));
      if (shapes.contains(List.of())) {
        writeReady(writer);
      }
      called.forEach((method, own) -> writeCall(method, own, writer));
      writer.visitEnd();
      return writer.toByteArray();
    }

    private void writeFields(ClassWriter writer) {
      int access = Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL;
      writer.visitField(access, "number", NUMBER.getDescriptor(), null, null).visitEnd();
      shapes.stream()
          .flatMap(List::stream)
          .distinct()
          .forEach(place -> writer
              .visitField(access, place.field, place.kind.getDescriptor(), null, null)
              .visitEnd());
    }

    private void writeConstructor(List<Kept> places, ClassWriter writer) {
      Method constructor = new Method("<init>", Type.VOID_TYPE, arguments(places));
      GeneratorAdapter code = method(writer, Opcodes.ACC_PRIVATE, constructor);
      code.loadThis();
      code.invokeConstructor(OBJECT, PLAIN);
      for (int place = 0; place < places.size(); place++) {
        code.loadThis();
        code.loadArg(place);
        code.putField(type, places.get(place).field, places.get(place).kind);
      }
      code.loadThis();
      code.loadArg(places.size());
      code.putField(type, "number", NUMBER);
      code.returnValue();
      code.endMethod();
      if (!places.isEmpty()) {
        writeFactory(constructor, writer);
      }
    }

    private void writeFactory(Method constructor, ClassWriter writer) {
      GeneratorAdapter code = method(
          writer, Opcodes.ACC_STATIC, new Method("of", type, constructor.getArgumentTypes()));
      code.newInstance(type);
      code.dup();
      code.loadArgs();
      code.invokeConstructor(type, constructor);
      code.returnValue();
      code.endMethod();
    }

    private void writeReady(ClassWriter writer) {
      GeneratorAdapter code =
          method(writer, Opcodes.ACC_STATIC, Method.getMethod("void <clinit> ()"));
      for (int place = 0; place < lambdas.size(); place++) {
        Lambda lambda = lambdas.get(place);
        if (lambda.kept.length == 0) {
          writer
              .visitField(
                  Opcodes.ACC_STATIC | Opcodes.ACC_FINAL,
                  ready(place),
                  type.getDescriptor(),
                  null,
                  null)
              .visitEnd();
          code.newInstance(type);
          code.dup();
          code.push(called.get(lambda.called).indexOf(lambda));
          code.invokeConstructor(type, new Method("<init>", Type.VOID_TYPE, arguments(List.of())));
          code.putStatic(type, ready(place), type);
        }
      }
      code.returnValue();
      code.endMethod();
    }

    private void writeCall(Method method, List<Lambda> own, ClassWriter writer) {
      GeneratorAdapter code = method(writer, Opcodes.ACC_PUBLIC, method);
      int last = own.size() - 1;
      if (last == 0) {
        write(own.get(last), code);
      } else {
        code.loadThis();
        code.getField(type, "number", NUMBER);
        code.tableSwitch(IntStream.range(0, last).toArray(), new TableSwitchGenerator() {
          @Override
          public void generateCase(int number, Label end) {
            write(own.get(number), code);
          }

          @Override
          public void generateDefault() {
            write(own.get(last), code);
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
      List<Kept> places = lambda.places();
      for (int kept = 0; kept < places.size(); kept++) {
        Kept place = places.get(kept);
        code.loadThis();
        code.getField(type, place.field, place.kind);
        turn(place.kind, lambda.kept[kept], code);
        turn(lambda.kept[kept], taken[kept], code);
      }
      Type[] given = lambda.called.getArgumentTypes();
      for (int argument = 0; argument < given.length; argument++) {
        Type seen = lambda.seen.getArgumentTypes()[argument];
        code.loadArg(argument);
        turn(given[argument], seen, code);
        turn(seen, taken[places.size() + argument], code);
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

    private static void giveBack(Lambda lambda, GeneratorAdapter code) {
      Type wanted = lambda.called.getReturnType();
      if (wanted.equals(Type.VOID_TYPE)) {
        // What comes out of a method reference may be of no interest.
        switch (lambda.given().getSize()) {
          case 2 -> code.pop2();
          case 1 -> code.pop();
          default -> {}
        }
      } else {
        turn(lambda.given(), lambda.seen.getReturnType(), code);
        turn(lambda.seen.getReturnType(), wanted, code);
      }
      code.returnValue();
    }

    /** What makes a lambda: all that it keeps, and its number. */
    private static Type[] arguments(List<Kept> places) {
      return Stream.concat(places.stream().map(Kept::kind), Stream.of(NUMBER)).toArray(Type[]::new);
    }

    private static String ready(int place) {
      return "ready" + place;
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
