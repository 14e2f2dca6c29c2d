package org.ohmloom.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * Sets the conductor size of wires.
 *
 * @param wires the wires
 * @param gauge the size; empty leaves it to be chosen
 */
public record SetWireGauge(List<WireId> wires, Optional<Gauge> gauge) implements Edit {

    public SetWireGauge {
        wires = List.copyOf(wires);
    }

    /** Sets the size of one wire. */
    public static SetWireGauge of(WireId wire, Gauge gauge) {
        return new SetWireGauge(List.of(wire), Optional.of(gauge));
    }

    @Override
    public Text label() {
        return gauge.map(size -> Labels.text("set-conductor", Labels.subjects(wires, "wires"), size.text()))
                .orElseGet(() -> Labels.text("leave-conductor", Labels.subjects(wires, "wires")));
    }

    @Override
    public Harness apply(Harness before) {
        Collection<Element> changed = wires.stream()
                .map(id -> (Element) before.wires().get(id).withGauge(gauge))
                .toList();
        return before.withAll(changed);
    }
}
