package dev.kettlemark.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

/**
 * Writes out what a record's {@code equals} and {@code hashCode} do while the program is built, which the Java machine
 * else puts together when they are first called.
 *
 * <p>The questions that rules ask are records, and answers are found by them. What the machine puts together is a chain
 * of method handles, which its first compiler leaves a chain; written out it is a plain method, and there at once. A
 * {@code toString}, which nobody calls who is in a hurry, is left to the machine.
 *
 * <p>Source: {@link java.lang.runtime.ObjectMethods} and {@link Record}, whose results these are, number for number.
 */
public final class RecordMethods {

  private static final int API = Opcodes.ASM9;
  private static final String FACTORY = "java/lang/runtime/ObjectMethods";
  private static final int PRIME = 31;
  private static final Type OBJECT = Type.getType(Object.class);
  private static final Type OBJECTS = Type.getObjectType("java/util/Objects");

  private RecordMethods() {}

  /** Rewrites all records below a folder; those that are rewritten already stay. */
  public static void main(String[] arguments) throws IOException {
    List<Path> classes;
    try (Stream<Path> found = Files.walk(Path.of(arguments[0]))) {
      classes = found.filter(path -> path.toString().endsWith(".class")).toList();
    }
    for (Path one : classes) {
      ClassReader reader = new ClassReader(Files.readAllBytes(one));
      if (reader.getSuperName().equals("java/lang/Record")) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        reader.accept(new Rewriter(writer), ClassReader.EXPAND_FRAMES);
        Files.write(one, writer.toByteArray());
      }
    }
  }

  /** Puts an inside of our own where the machine would make one. */
  private static final class Rewriter extends ClassVisitor {

    Rewriter(ClassVisitor next) {
      super(API, next);
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String method, String descriptor, String signature, String[] exceptions) {
      MethodVisitor next = super.visitMethod(access, method, descriptor, signature, exceptions);
      return new GeneratorAdapter(API, next, access, method, descriptor) {
        @Override
        public void visitInvokeDynamicInsn(
            String called, String site, Handle bootstrap, Object... arguments) {
          if (bootstrap.getOwner().equals(FACTORY) && !called.equals("toString")) {
            // What the method has put ready for the call is what it takes itself.
            new Body(this, (Type) arguments[0], components(arguments)).write(called);
          } else {
            super.visitInvokeDynamicInsn(called, site, bootstrap, arguments);
          }
        }
      };
    }

    private static List<Handle> components(Object... arguments) {
      return Stream.of(arguments).skip(2).map(Handle.class::cast).toList();
    }
  }

  /**
   * The inside of one of the two methods.
   *
   * @param code of the method, with its record and its argument on the stack
   * @param record whose method it is
   * @param components the fields, in the order in which they are declared
   */
  private record Body(GeneratorAdapter code, Type record, List<Handle> components) {
    void write(String method) {
      if (method.equals("equals")) {
        writeEquals();
      } else {
        writeHashCode();
      }
    }

    private void writeEquals() {
      Label same = code.newLabel();
      Label different = code.newLabel();
      code.ifCmp(OBJECT, GeneratorAdapter.EQ, same);
      code.loadArg(0);
      code.instanceOf(record);
      code.ifZCmp(GeneratorAdapter.EQ, different);
      for (Handle component : components) {
        Type type = Type.getType(component.getDesc());
        load(component);
        code.loadArg(0);
        code.checkCast(record);
        get(component);
        compare(type, different);
      }
      answerFrom(same);
      code.push(true);
      code.returnValue();
      answerFrom(different);
      code.push(false);
    }

    /** Where nothing is on the stack any more. */
    private void answerFrom(Label label) {
      code.mark(label);
      Object[] locals = {record.getInternalName(), OBJECT.getInternalName()};
      code.visitFrame(Opcodes.F_NEW, locals.length, locals, 0, new Object[0]);
    }

    private void compare(Type type, Label different) {
      switch (type.getSort()) {
        case Type.OBJECT, Type.ARRAY -> {
          code.invokeStatic(OBJECTS, Method.getMethod("boolean equals (Object, Object)"));
          code.ifZCmp(GeneratorAdapter.EQ, different);
        }
        // So that what is no number is the same as itself, and no zero as its opposite.
        case Type.FLOAT, Type.DOUBLE -> {
          code.invokeStatic(
              box(type), new Method("compare", Type.INT_TYPE, new Type[] {type, type}));
          code.ifZCmp(GeneratorAdapter.NE, different);
        }
        default -> code.ifCmp(type, GeneratorAdapter.NE, different);
      }
    }

    private void writeHashCode() {
      code.pop();
      code.push(0);
      for (Handle component : components) {
        code.push(PRIME);
        code.math(GeneratorAdapter.MUL, Type.INT_TYPE);
        load(component);
        Type type = Type.getType(component.getDesc());
        if (isReference(type)) {
          code.invokeStatic(OBJECTS, Method.getMethod("int hashCode (Object)"));
        } else {
          code.invokeStatic(box(type), new Method("hashCode", Type.INT_TYPE, new Type[] {type}));
        }
        code.math(GeneratorAdapter.ADD, Type.INT_TYPE);
      }
    }

    private void load(Handle component) {
      code.loadThis();
      get(component);
    }

    private void get(Handle component) {
      code.getField(record, component.getName(), Type.getType(component.getDesc()));
    }

    private static boolean isReference(Type type) {
      return type.getSort() >= Type.ARRAY;
    }

    private static Type box(Type type) {
      return switch (type.getSort()) {
        case Type.BOOLEAN -> Type.getType(Boolean.class);
        case Type.BYTE -> Type.getType(Byte.class);
        case Type.CHAR -> Type.getType(Character.class);
        case Type.SHORT -> Type.getType(Short.class);
        case Type.INT -> Type.getType(Integer.class);
        case Type.LONG -> Type.getType(Long.class);
        case Type.FLOAT -> Type.getType(Float.class);
        default -> Type.getType(Double.class);
      };
    }
  }
}
