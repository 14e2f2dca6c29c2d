package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;

import java.util.Optional;

/**
 * A place where wires are joined inside the harness.
 *
 * @param id        identity
 * @param name      what people call it
 * @param jointOhms resistance from each wire to the splice, ohm, 0 or more
 * @param place     where it lies on the physical harness
 * @param part      splice sleeve or ferrule, entry of the parts list
 * @param existing  already in the vehicle
 * @param assembly  the assembly it belongs to
 * @param form      how the wires meet, if it is said; otherwise told from where they come
 * @param sealed    whether it keeps water out, if it is said
 * @param cover     what is put over it, in words
 */
public record Splice(
        SpliceId id,
        String name,
        double jointOhms,
        Optional<Place> place,
        Optional<PartId> part,
        boolean existing,
        Optional<AssemblyId> assembly,
        Optional<Form> form,
        Optional<Boolean> sealed,
        Optional<String> cover)
        implements Element, Assembled {

    /** How the wires of a splice meet. */
    public enum Form {
        /** From both sides. */
        IN_LINE,
        /** All from one side. */
        END
    }

    public Splice {
        notBlank(name, "name of splice %s", id);
        notNegative(jointOhms, "joint resistance of splice %s", id);
        cover.ifPresent(value -> notBlank(value, "cover of splice %s", id));
    }

    /** A splice of which it is not said how it is made. */
    public Splice(
            SpliceId id,
            String name,
            double jointOhms,
            Optional<Place> place,
            Optional<PartId> part,
            boolean existing,
            Optional<AssemblyId> assembly) {
        this(
                id,
                name,
                jointOhms,
                place,
                part,
                existing,
                assembly,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** This splice as one that is in the vehicle already. */
    public Splice asExisting() {
        return new Splice(id, name, jointOhms, place, part, true, assembly, form, sealed, cover);
    }

    /** This splice at another place. */
    public Splice withPlace(Place changed) {
        return new Splice(id, name, jointOhms, Optional.of(changed), part, existing, assembly, form, sealed, cover);
    }
}
