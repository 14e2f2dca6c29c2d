package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Component;
import org.ohmloom.model.Device;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/**
 * A second cable from the negative terminal of the battery to a chassis body, on a stud of its own, so that the body keeps its
 * way back when the first one is lost. It has the size of the first: alone it has to carry as much.
 */
final class SecondGrounds {

    private final ReturnPlaces places;
    private final Lengths lengths;

    SecondGrounds(ReturnPlaces places, Lengths lengths) {
        this.places = places;
        this.lengths = lengths;
    }

    /** A second cable to a new stud beside the one that has the battery's, and to one beside the ground point asked about. */
    List<Candidate> of(GroundPointId id) {
        GroundPoint asked = places.harness().grounds().get(id);
        List<Candidate> found = new ArrayList<>();
        places.battery().ifPresent(battery -> {
            for (Wire cable : places.wiresAt(battery.id(), Device.NEGATIVE)) {
                WireEnd post =
                        places.endAt(cable, battery.id(), Device.NEGATIVE).orElseThrow();
                if (ReturnPlaces.across(cable, post) instanceof WireEnd.AtGround at) {
                    GroundPoint present = places.harness().grounds().get(at.ground());
                    if (present.body().equals(asked.body())) {
                        second(battery, cable, post, present).ifPresent(found::add);
                        if (!present.id().equals(id)) {
                            second(battery, cable, post, asked).ifPresent(found::add);
                        }
                    }
                }
            }
        });
        return found;
    }

    private Optional<Candidate> second(Component battery, Wire cable, WireEnd post, GroundPoint beside) {
        WireEnd present = ReturnPlaces.across(cable, post);
        GroundPointId stud = new GroundPointId(places.free(beside.id() + "-2"));
        WireId wire = new WireId(places.free("W-" + stud));
        OptionalDouble length = present.equals(new WireEnd.AtGround(beside.id()))
                ? lengths.of(cable)
                : lengths.moved(cable.withLengthMetres(lengths.of(cable)), present, new WireEnd.AtGround(beside.id()));
        if (length.isEmpty()) {
            return Optional.empty();
        }
        GroundPoint fresh = new GroundPoint(
                stud,
                beside.name() + ", second stud",
                beside.body(),
                cableJointOhms(present),
                beside.at(),
                beside.zone(),
                beside.part(),
                false,
                beside.assembly(),
                Optional.empty(),
                beside.studMm(),
                beside.torque());
        Wire second = new Wire(
                wire,
                post,
                new WireEnd.AtGround(stud),
                cable.gauge(),
                cable.family(),
                cable.insulation(),
                cable.colour(),
                length,
                cable.signalClass(),
                cable.circuit(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false,
                cable.assembly());
        return Optional.of(new Candidate(
                RemedyKind.SECOND_RETURN,
                new PutElements(
                        RemedyTexts.text("second-cable", cable.id(), battery.id(), stud), List.of(fresh, second))));
    }

    private double cableJointOhms(WireEnd present) {
        return places.harness()
                .grounds()
                .get(((WireEnd.AtGround) present).ground())
                .jointOhms();
    }
}
