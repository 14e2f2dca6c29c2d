package org.ohmloom.edit;

import org.ohmloom.model.BusId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/**
 * Runs a data bus at a bit rate.
 *
 * @param bus the bus
 * @param bitsPerSecond bit rate, bit/s, more than 0
 */
public record SetBusRate(BusId bus, double bitsPerSecond) implements Edit {

    @Override
    public Text label() {
        return Labels.text("run-bus", bus, Formats.in(bitsPerSecond / 1000, Unit.KILOBIT_PER_SECOND));
    }

    @Override
    public Harness apply(Harness before) {
        DataBus now = before.buses().get(bus);
        DataBus other = now.atRate(bitsPerSecond);
        return other.equals(now) ? before : before.with(other);
    }
}
