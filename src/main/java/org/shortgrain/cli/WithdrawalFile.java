package org.shortgrain.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.shortgrain.part.reader.Problem;
import org.shortgrain.part.reader.WithdrawalReader;
import org.shortgrain.signoff.Withdrawals;

/**
 * What is said beside a report of issues that were withdrawn: {@code withdrawn.yaml} in the same folder.
 *
 * @param withdrawals the withdrawn issues
 */
record WithdrawalFile(Withdrawals withdrawals) {

    private static final String NAME = "withdrawn.yaml";

    /**
     * {@return what is said beside a report}
     *
     * @param report the report
     * @throws CommandFailure if the file has faults
     */
    static WithdrawalFile beside(Path report) {
        Path file = report.resolveSibling(NAME);
        if (!Files.exists(file)) {
            return new WithdrawalFile(Withdrawals.NONE);
        }
        WithdrawalReader.Outcome read = WithdrawalReader.read(file.toString(), InputFile.read(file, "list of withdrawals"));
        if (!read.problems().isEmpty()) {
            throw new CommandFailure(ExitCode.INPUT_INVALID, Problem.text(read.problems()));
        }
        return new WithdrawalFile(new Withdrawals(read.withdrawals()));
    }
}
