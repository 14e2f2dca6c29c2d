package org.ohmloom.edit;

import java.util.List;
import org.ohmloom.model.BusId;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;

/**
 * Gives a data bus its terminations.
 *
 * @param label        what that does
 * @param bus          the bus
 * @param terminations all of them
 */
public record SetTerminations(Text label, BusId bus, List<DataBus.Termination> terminations) implements Edit {

    public SetTerminations {
        terminations = List.copyOf(terminations);
    }

    @Override
    public Harness apply(Harness before) {
        DataBus now = before.buses().get(bus);
        DataBus other = now.terminated(terminations);
        return other.equals(now) ? before : before.with(other);
    }
}
