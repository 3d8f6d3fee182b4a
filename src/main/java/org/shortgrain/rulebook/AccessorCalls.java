package org.shortgrain.rulebook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Which accessors of the description's records some compiled classes call or refer to, read off the class files. */
final class AccessorCalls extends ClassVisitor {
    private static final String RECORDS = "org/shortgrain/part/";

    private final Set<String> calls;

    private AccessorCalls(Set<String> calls) {
        super(Opcodes.ASM9);
        this.calls = calls;
    }

    /**
     * {@return the calls of accessors, as {@code Fit.hole}, in the alphabet's order}
     *
     * @param folders folders of class files; those that do not exist are passed over
     * @param except  simple names of classes that do not count
     */
    static Set<String> in(List<Path> folders, Set<String> except) throws IOException {
        Set<String> calls = new TreeSet<>();
        for (Path folder : folders.stream().filter(Files::isDirectory).toList()) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(path -> counts(path.getFileName().toString(), except)).toList()) {
                    new ClassReader(Files.readAllBytes(file)).accept(new AccessorCalls(calls), ClassReader.SKIP_DEBUG);
                }
            }
        }
        return calls;
    }

    private static boolean counts(String file, Set<String> except) {
        return file.endsWith(".class") && !except.contains(file.replaceFirst("(\\$.*)?\\.class$", ""));
    }

    @Override
    public MethodVisitor visitMethod(int access, String name, String descriptor, String signature, String[] exceptions) {
        return new MethodVisitor(Opcodes.ASM9) {
            @Override
            public void visitMethodInsn(int opcode, String owner, String called, String types, boolean ofInterface) {
                add(owner, called);
            }

            @Override
            public void visitInvokeDynamicInsn(String called, String types, Handle linker, Object... arguments) {
                for (Object argument : arguments) {
                    if (argument instanceof Handle referred) {
                        add(referred.getOwner(), referred.getName());
                    }
                }
            }
        };
    }

    private void add(String owner, String method) {
        if (owner.startsWith(RECORDS)) {
            calls.add(owner.substring(RECORDS.length()) + "." + method);
        }
    }
}
