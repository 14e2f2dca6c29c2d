package org.ohmloom.analysis.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.ground.GroundReading;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireEnd;

/**
 * The one point where all power returns of a first harness meet, beside the fuse box: so that no return carries what is
 * another's. Studs of a ground point on the frame, or a bus bar where the hull must carry nothing.
 */
final class StartReturns {

    private final StartDraft draft;
    private final StartPlaces places;
    private final ComponentId barId;
    private final GroundPointId groundId = new GroundPointId("G1");
    private final List<String> terminals = new ArrayList<>();

    StartReturns(StartDraft draft, StartPlaces places) {
        this.draft = draft;
        this.places = places;
        this.barId = new ComponentId("BB2");
    }

    /** Joins the return of something to the point. */
    void join(WireEnd from, String circuit) {
        String terminal = String.valueOf(terminals.size() + 1);
        terminals.add(terminal);
        WireEnd point = draft.plan().craft().onFrame()
                ? new WireEnd.AtGround(groundId)
                : new WireEnd.AtTerminal(barId, terminal);
        draft.wire(from, point, SignalClass.RETURN, circuit);
    }

    /** Makes the point, large enough for what was joined to it. */
    void build() {
        if (!draft.plan().craft().onFrame()) {
            while (terminals.size() < 2) {
                terminals.add(String.valueOf(terminals.size() + 1));
            }
            draft.put(
                    barId,
                    "Return bar",
                    new BusBar(terminals, StartFigures.JOINT_OHMS),
                    Optional.empty(),
                    Optional.of(places.hub()));
            return;
        }
        ChassisBodyId frame = new ChassisBodyId("FR");
        draft.add(new ChassisBody(frame, "Frame", false, List.of(), Optional.empty()));
        int studs = Math.max(1, (terminals.size() + GroundReading.MOST_ON_STUD - 1) / GroundReading.MOST_ON_STUD);
        draft.add(new GroundPoint(
                groundId,
                "Returns on the frame",
                frame,
                StartFigures.JOINT_OHMS,
                Optional.of(places.hub()),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.of(studs),
                OptionalDouble.empty(),
                Optional.empty()));
    }
}
