package org.ohmloom.signal.wiring;

import java.util.Optional;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireEnd;

/** The wires a control unit is fed by: from a protected feed to its supply pins, and from its ground pins to a ground point. */
public final class UnitFeed {

    private UnitFeed() {}

    /**
     * The wires, coloured, with a splice where the feed branches to several pins.
     *
     * @param unit   the unit, with no wires at its supply and ground pins
     * @param feed   component and terminal the feed begins at, as {@code F8} and {@code 2}; empty makes no feed
     * @param ground the ground point; empty makes no grounds
     */
    public static WiringMade of(
            Harness harness, ComponentId unit, Optional<WireEnd.AtTerminal> feed, Optional<GroundPointId> ground) {
        WiringDraft draft = new WiringDraft(harness);
        Component fed = harness.components().get(unit);
        feed.ifPresent(from -> draft.feed(fed, from));
        ground.ifPresent(id -> draft.ground(fed, harness.grounds().get(id)));
        return draft.made();
    }
}
