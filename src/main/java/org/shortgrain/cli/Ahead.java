package org.shortgrain.cli;

import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.report.pdf.tagged.Fonts;

/**
 * What a command needs that takes long to load. For a review with the shipped rulebook it loads beside the reading of
 * the arguments; otherwise when it is asked for.
 */
final class Ahead {

    private final Supplier<Knowledge> shipped;
    private final Supplier<Fonts> fonts;

    private Ahead(Supplier<Knowledge> shipped, Supplier<Fonts> fonts) {
        this.shipped = shipped;
        this.fonts = fonts;
    }

    /**
     * {@return what a command line will need}
     *
     * @param arguments the command line, not yet understood: a wrong guess costs time, never the outcome
     */
    static Ahead of(String... arguments) {
        if (!isReviewByShippedRules(arguments)) {
            return new Ahead(Knowledge::shipped, Fonts::load);
        }
        Knowledge loading = Knowledge.shipped();
        return new Ahead(() -> loading, CompletableFuture.supplyAsync(Fonts::load)::join);
    }

    private static boolean isReviewByShippedRules(String... arguments) {
        for (String one : arguments) {
            if (one.startsWith(RulebookOption.NAME)) {
                return false;
            }
        }
        return arguments.length > 1 && ReviewCommand.NAME.equals(arguments[0]);
    }

    /** {@return rules and tables that the tool ships with} */
    Knowledge shipped() {
        return shipped.get();
    }

    /** {@return the fonts of the report, for one thread, to be closed by it} */
    Fonts fonts() {
        return fonts.get();
    }
}
