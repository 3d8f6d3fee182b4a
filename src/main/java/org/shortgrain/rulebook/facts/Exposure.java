package org.shortgrain.rulebook.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.shortgrain.part.Environment;
import org.shortgrain.part.Fluid;
import org.shortgrain.part.Humidity;
import org.shortgrain.part.Range;
import org.shortgrain.part.Salt;
import org.shortgrain.part.Stated;
import org.shortgrain.part.Storage;

/**
 * What a part meets in its life: fluids, air and storage.
 *
 * @param stated what is stated of the environment
 */
public record Exposure(Stated<Environment> stated) {

    private static final double SECONDS_PER_DAY = 86_400;
    /** Nitric oxide in nitrogen tetroxide: "NO 2.8 %", or the number of the grade, as in MON-3. */
    private static final Pattern NITRIC_OXIDE = Pattern.compile("(?:MON-|NO *)([0-9]+(?:\\.[0-9]+)?)");

    /** {@return whether nothing is stated of storage and transport} */
    public boolean isStorageOpen() {
        return stated.field(Environment::storage).isMissing();
    }

    /** {@return times in storage as stated} */
    public List<Storage> storages() {
        return Stated.items(stated.field(Environment::storage));
    }

    /** {@return times in storage of which it is certain that nothing protects the part} */
    public List<Storage> unprotected() {
        List<Storage> unprotected = new ArrayList<>();
        for (Storage one : storages()) {
            if (one.isProtected().is(false)) {
                unprotected.add(one);
            }
        }
        return unprotected;
    }

    /**
     * {@return times in storage longer than some days of which it is not stated whether the part is protected}
     *
     * @param days the days
     */
    public List<Storage> openLongerThan(double days) {
        List<Storage> open = new ArrayList<>();
        for (Storage one : storages()) {
            if (one.isProtected().isMissing() && Range.greatest(one.time()).orElse(0) > days * SECONDS_PER_DAY) {
                open.add(one);
            }
        }
        return open;
    }

    /** {@return whether the part is protected wherever it is stored, as stated} */
    public boolean isProtectedThroughout() {
        return !storages().isEmpty() && storages().stream().allMatch(one -> one.isProtected().is(true));
    }

    /**
     * {@return whether a fluid wets the part and nothing is stated of its composition}
     *
     * @param fluid word of the fluid list
     */
    public boolean isCompositionOpen(String fluid) {
        for (Fluid one : fluids()) {
            if (one.name().is(fluid) && one.composition().isMissing()) {
                return true;
            }
        }
        return false;
    }

    /** {@return nitric oxide in the nitrogen tetroxide (%); NaN if not stated, which no comparison holds for} */
    public double nitricOxide() {
        for (Fluid fluid : fluids()) {
            Matcher share = NITRIC_OXIDE.matcher(String.join(" ", fluid.composition().candidates()));
            if (fluid.name().is("nitrogen_tetroxide") && share.find()) {
                return Double.parseDouble(share.group(1));
            }
        }
        return Double.NaN;
    }

    /** {@return whether no share of nitric oxide in the nitrogen tetroxide is stated} */
    public boolean isNitricOxideOpen() {
        return Double.isNaN(nitricOxide());
    }

    /** {@return whether it is stated that no fluid wets the part} */
    public boolean isFreeOfFluids() {
        return stated.field(Environment::fluids).isNone();
    }

    /** {@return whether the air certainly is stated to be dry} */
    public boolean isAirDry() {
        return stated.field(Environment::humidity).surely(air -> air.word()
                .filter(Humidity.HumidityWord.DRY::equals).isPresent());
    }

    /** {@return whether the air certainly is stated to hold no salt, or only that of the inland} */
    public boolean isSaltFar() {
        return salt().isOneOf(Salt.INLAND, Salt.NONE_SEALED);
    }

    /** {@return whether the part certainly is stated to be sealed from salt} */
    public boolean isSealedFromSalt() {
        return salt().is(Salt.NONE_SEALED);
    }

    /** {@return salt in the air} */
    public Stated<Salt> salt() {
        return stated.field(Environment::salt);
    }

    private List<Fluid> fluids() {
        return Stated.items(stated.field(Environment::fluids));
    }

    /**
     * {@return a time in storage, for texts}
     *
     * @param storage the storage
     */
    public static String say(Storage storage) {
        String where = storage.where().single().orElse("place not stated");
        return storage.time().single().map(Range::entered).map(time -> where + ", " + time).orElse(where);
    }
}
