package org.shortgrain.cli;

import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Product;
import org.shortgrain.part.Unit;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.MaterialText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code shortgrain material}: what the tables hold on a material, each line with source, clause and status. */
@Command(name = "material", mixinStandardHelpOptions = true, versionProvider = Main.Version.class,
        description = "Shows what the tables hold on a material, each line with source, clause and status.")
final class MaterialCommand implements Callable<Integer> {

    @Spec
    private CommandSpec command;

    @Parameters(index = "0", paramLabel = "ALLOY", description = "Designation, such as 7075, 17-4PH, Ti-6Al-4V.")
    private String alloy;

    @Parameters(index = "1", paramLabel = "TEMPER", arity = "0..1", description = "Temper or condition, such as T7351,"
            + " H1025.")
    private String temper;

    @Option(names = "--form", paramLabel = "FORM", description = "Product form, a word of the description such as plate"
            + " or die_forging.")
    private String form;

    @Option(names = "--thickness", paramLabel = "LENGTH", description = "Thickness when heat treated, with its unit,"
            + " such as '60 mm' or '2.5 in'.")
    private String thickness;

    @Option(names = "--strength", paramLabel = "STRESS", description = "Greatest tensile strength that the drawing"
            + " allows (steels), with its unit, such as '1380 MPa' or '200 ksi'.")
    private String strength;

    @Mixin
    private RulebookOption rulebook;

    @Override
    public Integer call() {
        MaterialQuery query = MaterialQuery.ofAlloy(alloy);
        if (temper != null) {
            query = query.temper(temper);
        }
        if (form != null) {
            query = query.form(checkedForm());
        }
        if (thickness != null) {
            query = query.thickness(quantity("--thickness", thickness, Dimension.LENGTH));
        }
        if (strength != null) {
            double most = quantity("--strength", strength, Dimension.STRESS);
            query = query.strength(most, most);
        }
        Knowledge knowledge = rulebook.knowledge();
        command.commandLine().getOut().print(
                new MaterialText(knowledge.tables()).of(knowledge.tables().materials().lookUp(query)));
        return ExitCode.OK.code();
    }

    private String checkedForm() {
        boolean known = Arrays.stream(Product.values()).anyMatch(one -> one.word().equals(form));
        if (!known) {
            throw new ParameterException(command.commandLine(), "'" + form + "' is no product form; expected one of "
                    + Arrays.stream(Product.values()).map(Product::word).collect(Collectors.joining(", ")));
        }
        return form;
    }

    private double quantity(String option, String text, Dimension dimension) {
        Optional<Double> si = Unit.quantity(text, dimension);
        return si.filter(value -> value > 0).orElseThrow(() -> new ParameterException(command.commandLine(), option
                + " takes a " + dimension.noun() + " with its unit, not '" + text + "'; units: "
                + Unit.of(dimension).stream().map(Unit::symbol).collect(Collectors.joining(", "))));
    }
}
