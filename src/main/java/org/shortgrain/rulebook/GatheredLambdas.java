package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.MethodRemapper;
import org.objectweb.asm.commons.Remapper;
import org.objectweb.asm.tree.MethodNode;

/**
 * Gathers the functions of compiled rules into few classes, for a quicker start.
 *
 * <p>The engine's compiler makes a class, in a package of its own, of each condition and each consequence: more than a
 * thousand for the shipped rulebook, and each costs a cold start a tenth of a millisecond to load, link and initialise.
 * Here the functions of one rule file that share an interface become one class with an instance for each function, which
 * goes by its number to the same instructions. What the engine sees of a function (what it answers, its hash, what it
 * says of itself, that it is always the same object) stays as it was.
 */
final class GatheredLambdas {

    private static final String CLASS = ".class";
    private static final String CONSTRUCTOR = "<init>";
    private static final String CONSTRUCTED = Type.getMethodDescriptor(Type.VOID_TYPE, Type.INT_TYPE);
    private static final String NOTHING = Type.getMethodDescriptor(Type.VOID_TYPE);
    private static final String OBJECT = Type.getInternalName(Object.class);
    private static final String NUMBER = "number";
    private static final String WHOLE = Type.INT_TYPE.getDescriptor();

    /** Class of a function to the class that takes it in. */
    private final Map<String, String> homes = new HashMap<>();
    /** Class of a function to the name of its instance there. */
    private final Map<String, String> instances = new HashMap<>();
    private final Remapper moved = new Remapper(Opcodes.ASM9) {
        @Override
        public String map(String name) {
            return homes.getOrDefault(name, name);
        }

        @Override
        public String mapFieldName(String owner, String name, String descriptor) {
            return name.equals(CompiledLambda.INSTANCE) ? instances.getOrDefault(owner, name) : name;
        }
    };

    private GatheredLambdas() {
    }

    /**
     * {@return the same rules in fewer classes; a class that is not of the form which the compiler gives a function stays}
     *
     * @param classes file name to bytes, as the engine's compiler wrote them
     */
    static SortedMap<String, byte[]> in(SortedMap<String, byte[]> classes) {
        return new GatheredLambdas().gathered(classes);
    }

    private SortedMap<String, byte[]> gathered(SortedMap<String, byte[]> classes) {
        Map<String, List<CompiledLambda>> groups = new TreeMap<>();
        SortedMap<String, byte[]> all = new TreeMap<>(classes);
        classes.forEach((file, bytes) -> CompiledLambda.in(bytes).ifPresent(lambda -> {
            groups.computeIfAbsent(lambda.home(), home -> new ArrayList<>()).add(lambda);
            all.remove(file);
        }));
        groups.forEach(this::settle);
        all.replaceAll((file, bytes) -> moved(bytes));
        groups.forEach((home, lambdas) -> all.put(home + CLASS, written(home, lambdas)));
        return all;
    }

    private void settle(String home, List<CompiledLambda> lambdas) {
        for (int i = 0; i < lambdas.size(); i++) {
            homes.put(lambdas.get(i).name(), home);
            instances.put(lambdas.get(i).name(), CompiledLambda.INSTANCE + i);
        }
    }

    private byte[] moved(byte[] bytes) {
        ClassWriter writer = new ClassWriter(0);
        new ClassReader(bytes).accept(new ClassRemapper(writer, moved), 0);
        return writer.toByteArray();
    }

    private byte[] written(String home, List<CompiledLambda> lambdas) {
        CompiledLambda one = lambdas.get(0);
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        writer.visit(one.version(), Opcodes.ACC_PUBLIC | Opcodes.ACC_FINAL | Opcodes.ACC_SUPER, home, null, OBJECT,
                one.interfaces().toArray(String[]::new));
        writer.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, NUMBER, WHOLE, null, null);
        writeConstructor(writer, home);
        writeInstances(writer, home, lambdas.size());
        for (CompiledLambda.Role role : one.roles()) {
            List<MethodNode> bodies = lambdas.stream().map(lambda -> lambda.body(role)).toList();
            writeBodies(writer, role, bodies);
            writeChoice(writer, home, role, bodies);
        }
        writer.visitEnd();
        return writer.toByteArray();
    }

    private static void writeConstructor(ClassWriter writer, String home) {
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_PRIVATE, CONSTRUCTOR, CONSTRUCTED, null, null);
        code.visitCode();
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitMethodInsn(Opcodes.INVOKESPECIAL, OBJECT, CONSTRUCTOR, NOTHING, false);
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitVarInsn(Opcodes.ILOAD, 1);
        code.visitFieldInsn(Opcodes.PUTFIELD, home, NUMBER, WHOLE);
        code.visitInsn(Opcodes.RETURN);
        end(code);
    }

    private static void writeInstances(ClassWriter writer, String home, int count) {
        String self = Type.getObjectType(home).getDescriptor();
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_STATIC, "<clinit>", NOTHING, null, null);
        code.visitCode();
        for (int i = 0; i < count; i++) {
            String name = CompiledLambda.INSTANCE + i;
            writer.visitField(Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, name, self, null, null);
            code.visitTypeInsn(Opcodes.NEW, home);
            code.visitInsn(Opcodes.DUP);
            code.visitIntInsn(Opcodes.SIPUSH, i);
            code.visitMethodInsn(Opcodes.INVOKESPECIAL, home, CONSTRUCTOR, CONSTRUCTED, false);
            code.visitFieldInsn(Opcodes.PUTSTATIC, home, name, self);
        }
        code.visitInsn(Opcodes.RETURN);
        end(code);
    }

    private void writeBodies(ClassWriter writer, CompiledLambda.Role role, List<MethodNode> bodies) {
        for (int i = 0; i < bodies.size(); i++) {
            MethodNode body = bodies.get(i);
            body.accept(new MethodRemapper(writer.visitMethod(Opcodes.ACC_PRIVATE, role.name() + i, body.desc, null,
                    body.exceptions.toArray(String[]::new)), moved));
        }
    }

    /** A method of the interface: goes to the body that has the instance's number. */
    private static void writeChoice(ClassWriter writer, String home, CompiledLambda.Role role, List<MethodNode> bodies) {
        MethodVisitor code = writer.visitMethod(Opcodes.ACC_PUBLIC, role.name(), role.descriptor(), null,
                new String[] {Type.getInternalName(Exception.class)});
        code.visitCode();
        Label[] labels = bodies.stream().map(body -> new Label()).toArray(Label[]::new);
        int last = labels.length - 1;
        code.visitVarInsn(Opcodes.ALOAD, 0);
        code.visitFieldInsn(Opcodes.GETFIELD, home, NUMBER, WHOLE);
        // numbers run from 0 to the last: any other goes the last way, which spares a way that is never gone
        code.visitTableSwitchInsn(0, last, labels[last], labels);
        for (int i = 0; i <= last; i++) {
            code.visitLabel(labels[i]);
            code.visitFrame(Opcodes.F_SAME, 0, null, 0, null);
            code.visitVarInsn(Opcodes.ALOAD, 0);
            pass(code, Type.getArgumentTypes(role.descriptor()), Type.getArgumentTypes(bodies.get(i).desc));
            code.visitMethodInsn(Opcodes.INVOKESPECIAL, home, role.name() + i, bodies.get(i).desc, false);
            code.visitInsn(Type.getReturnType(role.descriptor()).getOpcode(Opcodes.IRETURN));
        }
        end(code);
    }

    private static void pass(MethodVisitor code, Type[] given, Type[] wanted) {
        int slot = 1;
        for (int i = 0; i < given.length; i++) {
            code.visitVarInsn(given[i].getOpcode(Opcodes.ILOAD), slot);
            if (!given[i].equals(wanted[i])) {
                code.visitTypeInsn(Opcodes.CHECKCAST, wanted[i].getInternalName());
            }
            slot += given[i].getSize();
        }
    }

    private static void end(MethodVisitor code) {
        code.visitMaxs(0, 0);
        code.visitEnd();
    }
}
