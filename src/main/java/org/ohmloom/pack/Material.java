package org.ohmloom.pack;

import java.util.Optional;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.PartId;
import org.ohmloom.model.WireColour;
import org.ohmloom.words.Text;

/**
 * What makes two things the same line of a bill of materials.
 *
 * @param assembly    the assembly they belong to
 * @param kind        their group
 * @param part        entry of the parts list, if chosen
 * @param what        what it is, where no entry of the parts list says so
 * @param colour      insulation colour of wire
 * @param unit        {@code pc} or {@code m}
 */
record Material(
        Optional<AssemblyId> assembly,
        MaterialKind kind,
        Optional<PartId> part,
        Text what,
        Optional<WireColour> colour,
        String unit) {

    /** Unit of things that are counted. */
    static final String PIECE = "pc";

    /** Unit of things bought by length. */
    static final String METRE = "m";

    /** Things that are counted; what it is serves only where no part is chosen. */
    static Material piece(Optional<AssemblyId> assembly, MaterialKind kind, Optional<PartId> part, Text what) {
        return new Material(assembly, kind, part, part.isPresent() ? Text.NONE : what, Optional.empty(), PIECE);
    }

    /** What it is, in English. */
    String description() {
        return what.english();
    }

    /** The same without its assembly: what is bought does not care where it goes. */
    Material inNoAssembly() {
        return new Material(Optional.empty(), kind, part, what, colour, unit);
    }

    /** Things bought by length. */
    static Material length(Optional<AssemblyId> assembly, MaterialKind kind, Optional<PartId> part, Text what) {
        return new Material(assembly, kind, part, what, Optional.empty(), METRE);
    }
}
