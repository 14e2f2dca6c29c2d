package org.ohmloom.bundle.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.bundle.Diameters;
import org.ohmloom.bundle.packing.CrossSection;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.Status;

/** What lies in a bundle as round things: single wires, and cables whose outside diameter is entered with their cores inside. */
final class Contents {
    private final BundleInput input;
    private final Diameters diameters;

    Contents(BundleInput input, Diameters diameters) {
        this.input = input;
        this.diameters = diameters;
    }

    /** One round thing before it has its place. */
    record Round(String id, List<WireId> wires, double outsideMm, boolean isListed, Citation citation) {

        Member at(CrossSection.Disc disc) {
            return new Member(id, wires, disc, isListed, citation);
        }
    }

    /** The round things of wires; those without a size are left out unless they are in a cable of known diameter. */
    List<Round> of(List<Wire> wires) {
        List<Round> rounds = new ArrayList<>();
        SortedMap<CableId, List<WireId>> cores = new TreeMap<>();
        for (Wire wire : wires) {
            Optional<Cable> cable = wire.cable()
                    .map(input.harness().cables()::get)
                    .filter(each -> each.outsideDiameterMm().isPresent());
            if (cable.isPresent()) {
                cores.computeIfAbsent(cable.get().id(), id -> new ArrayList<>()).add(wire.id());
            } else {
                diameters
                        .of(wire)
                        .ifPresent(known -> rounds.add(new Round(
                                wire.id().value(),
                                List.of(wire.id()),
                                known.millimetres(),
                                known.isListed(),
                                known.citation())));
            }
        }
        cores.forEach((id, ids) -> rounds.add(new Round(
                id.value(),
                ids,
                input.harness().cables().get(id).outsideDiameterMm().getAsDouble(),
                true,
                new Citation("none", "none", "cable " + id + " of the harness", "", Status.PUBLISHED))));
        return rounds;
    }
}
