package org.ohmloom.size;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.ComponentId;
import org.ohmloom.tables.Citation;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * One thing a conductor must satisfy, with the smallest size that does.
 *
 * @param governor  which requirement
 * @param smallest  smallest size of the family that satisfies it; empty when none does
 * @param areaMm2   copper area of that size, mm2; 0 when none does
 * @param why       the calculation in words and numbers a person can follow, ending in the table row
 * @param citation  table row it rests on
 * @param devices   protective devices it comes from; empty but for {@link Governor#PROTECTION}
 */
public record Requirement(
        Governor governor,
        Optional<Gauge> smallest,
        double areaMm2,
        Text why,
        Citation citation,
        List<ComponentId> devices) {

    public Requirement {
        devices = List.copyOf(devices);
    }

    /** The calculation in words and numbers, in English. */
    public String reason() {
        return why.english();
    }
}
