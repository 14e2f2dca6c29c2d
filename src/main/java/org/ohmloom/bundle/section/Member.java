package org.ohmloom.bundle.section;

import java.util.List;
import org.ohmloom.bundle.packing.CrossSection;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.Citation;

/**
 * One round thing in the cross-section of a bundle: a wire, or a cable with its cores.
 *
 * @param id       the wire, or the cable
 * @param wires    the wire, or the cores
 * @param disc     where it lies in the ideal packing, with its diameter
 * @param isListed whether its diameter is listed or entered; otherwise it is estimated
 * @param citation where the diameter is from
 */
public record Member(String id, List<WireId> wires, CrossSection.Disc disc, boolean isListed, Citation citation) {

    public Member {
        wires = List.copyOf(wires);
    }
}
