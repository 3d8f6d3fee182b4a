package org.shortgrain.cli;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.shortgrain.assessment.Knowledge;
import org.shortgrain.part.Dimension;
import org.shortgrain.part.Product;
import org.shortgrain.part.Unit;
import org.shortgrain.reference.MaterialQuery;
import org.shortgrain.reference.MaterialText;

/** {@code shortgrain material}: what the tables hold on a material, each line with source, clause and status. */
final class MaterialCommand extends Command {

    static final String NAME = "material";

    private final Argument<String> alloy = operand("ALLOY", String.class, "Designation, such as 7075, 17-4PH, Ti-6Al-4V.");
    private final Argument<String> temper = optionalOperand("TEMPER", String.class,
            "Temper or condition, such as T7351, H1025.");
    private final Argument<String> form = option("--form", "FORM", String.class,
            "Product form, a word of the description such as plate or die_forging.");
    private final Argument<String> thickness = option("--thickness", "LENGTH", String.class,
            "Thickness when heat treated, with its unit, such as '60 mm' or '2.5 in'.");
    private final Argument<String> strength = option("--strength", "STRESS", String.class,
            "Greatest tensile strength that the drawing allows (steels), with its unit, such as '1380 MPa' or '200 ksi'.");

    private final RulebookOption rulebook;

    MaterialCommand(Ahead ahead) {
        super(NAME, "Shows what the tables hold on a material, each line with source, clause and status.");
        rulebook = new RulebookOption(this, ahead);
    }

    @Override
    public Integer call() {
        MaterialQuery query = MaterialQuery.ofAlloy(alloy.get());
        if (temper.isStated()) {
            query = query.temper(temper.get());
        }
        if (form.isStated()) {
            query = query.form(checked(form.get()));
        }
        if (thickness.isStated()) {
            query = query.thickness(quantity("--thickness", thickness.get(), Dimension.LENGTH));
        }
        if (strength.isStated()) {
            double most = quantity("--strength", strength.get(), Dimension.STRESS);
            query = query.strength(most, most);
        }
        Knowledge knowledge = rulebook.knowledge();
        console().print(new MaterialText(knowledge.tables()).of(knowledge.tables().materials().lookUp(query)));
        return ExitCode.OK.code();
    }

    private String checked(String word) {
        boolean known = Arrays.stream(Product.values()).anyMatch(one -> one.word().equals(word));
        if (!known) {
            throw wrongUsage("'" + word + "' is no product form; expected one of "
                    + Arrays.stream(Product.values()).map(Product::word).collect(Collectors.joining(", ")));
        }
        return word;
    }

    private double quantity(String option, String text, Dimension dimension) {
        Optional<Double> si = Unit.quantity(text, dimension);
        return si.filter(value -> value > 0).orElseThrow(() -> wrongUsage(option
                + " takes a " + dimension.noun() + " with its unit, not '" + text + "'; units: "
                + Unit.of(dimension).stream().map(Unit::symbol).collect(Collectors.joining(", "))));
    }
}
