package org.shortgrain.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.FieldNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * A function of a compiled rule, as the engine's compiler writes it: an enum of one constant with one method of its own,
 * the hash of its text and, for a condition, a word on where it comes from.
 */
final class CompiledLambda {

    /** Name of the constant. */
    static final String INSTANCE = "INSTANCE";
    private static final String HASH = "EXPRESSION_HASH";
    private static final String FUNCTIONS = "org/drools/model/functions/";
    private static final String HASHED = FUNCTIONS + "HashedExpression";
    /** What an enum has besides. */
    private static final Set<String> OF_AN_ENUM = Set.of("<init>", "<clinit>", "values", "valueOf");

    /**
     * A method that the engine calls.
     *
     * @param name       its name
     * @param descriptor its types, as the interface has them
     */
    record Role(String name, String descriptor) {
    }

    private final ClassNode node;
    private final List<Role> roles;

    private CompiledLambda(ClassNode node, List<Role> roles) {
        this.node = node;
        this.roles = roles;
    }

    /** {@return the function that a class is; empty if the class is anything else} */
    static Optional<CompiledLambda> in(byte[] bytes) {
        ClassNode node = new ClassNode();
        new ClassReader(bytes).accept(node, ClassReader.SKIP_DEBUG);
        boolean function = Type.getInternalName(Enum.class).equals(node.superName) && node.interfaces.size() == 2
                && node.interfaces.get(0).startsWith(FUNCTIONS) && node.interfaces.get(1).equals(HASHED)
                && node.fields.stream().allMatch(CompiledLambda::isOfAnEnum)
                && node.methods.stream().noneMatch(CompiledLambda::isSynthetic);
        return function ? Optional.of(new CompiledLambda(node, roles(node))) : Optional.empty();
    }

    /** Whether a field only holds the constant or its hash; a condition that asks a pattern keeps that in a field. */
    private static boolean isOfAnEnum(FieldNode field) {
        return field.name.equals(INSTANCE) || field.name.equals(HASH) || (field.access & Opcodes.ACC_SYNTHETIC) != 0;
    }

    /** Whether the compiler added it for something in the body, a nested lambda say, and not as a bridge. */
    private static boolean isSynthetic(MethodNode method) {
        return (method.access & Opcodes.ACC_SYNTHETIC) != 0 && (method.access & Opcodes.ACC_BRIDGE) == 0;
    }

    private static List<Role> roles(ClassNode node) {
        List<Role> roles = new ArrayList<>();
        for (MethodNode method : node.methods) {
            if (!OF_AN_ENUM.contains(method.name)) {
                Role role = new Role(method.name, method.desc);
                if ((method.access & Opcodes.ACC_BRIDGE) != 0) {
                    roles.removeIf(typed -> typed.name().equals(method.name));
                }
                if (roles.stream().noneMatch(known -> known.name().equals(method.name))) {
                    roles.add(role);
                }
            }
        }
        return List.copyOf(roles);
    }

    /** {@return its internal name} */
    String name() {
        return node.name;
    }

    /** {@return the internal name of the class that takes in all functions of its rule file and interface} */
    String home() {
        String own = node.name.substring(0, node.name.lastIndexOf('/'));
        return own.substring(0, own.lastIndexOf('/')) + "/Gathered" + node.interfaces.get(0).substring(FUNCTIONS.length());
    }

    /** {@return the version of its class file} */
    int version() {
        return node.version;
    }

    /** {@return what the engine takes it for} */
    List<String> interfaces() {
        return node.interfaces;
    }

    /** {@return what the engine calls, the same for all functions of one interface} */
    List<Role> roles() {
        return roles;
    }

    /** {@return the instructions of a role, with the types of this function} */
    MethodNode body(Role role) {
        return node.methods.stream()
                .filter(method -> method.name.equals(role.name()) && (method.access & Opcodes.ACC_BRIDGE) == 0)
                .findFirst().orElseThrow();
    }
}
