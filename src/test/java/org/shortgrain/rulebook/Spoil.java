package org.shortgrain.rulebook;

import java.util.BitSet;

/**
 * Where the rewritten facts of {@link FactMutationCheck} ask whether their answer is turned round. Static, since facts are
 * made by the reviewer and know of nothing else; used by one thread of a process that does nothing but this check.
 */
public final class Spoil {

    private static final BitSet SEEN = new BitSet();
    private static int turned = -1;

    private Spoil() {
    }

    /**
     * {@return the answer of a fact, turned round if it is the one that is spoilt}
     *
     * @param number number of the return in the list of the check
     * @param answer the answer
     */
    public static boolean answer(int number, boolean answer) {
        SEEN.set(number);
        return (number == turned) != answer;
    }

    /**
     * Spoils one answer from now on and forgets which were asked for.
     *
     * @param number number of the return; below 0 for none
     */
    static void turn(int number) {
        turned = number;
        SEEN.clear();
    }

    /** {@return the returns that were reached since} */
    static BitSet seen() {
        return (BitSet) SEEN.clone();
    }
}
