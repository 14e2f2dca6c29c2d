package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.MoveWireEnd;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.words.Text;

/** What lies on a crowded stud spread over others of its body, or over a new one beside it. */
final class RoomierStuds {

    private final ReturnPlaces places;
    private final Lengths lengths;

    RoomierStuds(ReturnPlaces places, Lengths lengths) {
        this.places = places;
        this.lengths = lengths;
    }

    List<Candidate> of(GroundPointId id) {
        WireEnd stud = new WireEnd.AtGround(id);
        List<Wire> wires = places.wiresAt(stud);
        int surplus = (int) -places.room(id);
        if (surplus < 1 || wires.size() < surplus) {
            return List.of();
        }
        List<Wire> moving = wires.subList(wires.size() - surplus, wires.size());
        GroundPoint ground = places.harness().grounds().get(id);
        List<Candidate> found = new ArrayList<>();
        for (GroundPoint other : places.harness().grounds().all()) {
            if (!other.id().equals(id) && other.body().equals(ground.body()) && places.room(other.id()) >= surplus) {
                found.add(new Candidate(
                        RemedyKind.MOVED_GROUND,
                        moved(
                                RemedyTexts.text("move-from", names(moving), id, other.id()),
                                moving,
                                stud,
                                new WireEnd.AtGround(other.id()))));
            }
        }
        fresh(ground, moving).ifPresent(found::add);
        return found;
    }

    /** New studs beside it, as many as it takes, for what lies on it too much. */
    private Optional<Candidate> fresh(GroundPoint ground, List<Wire> moving) {
        WireEnd stud = new WireEnd.AtGround(ground.id());
        List<Edit> edits = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (int from = 0; from < moving.size(); from += ReturnPlaces.MOST_STACKED) {
            String id = ground.id() + "-" + (names.size() + 2);
            if (places.harness().element(id).isPresent()) {
                return Optional.empty();
            }
            names.add(id);
            GroundPoint beside = new GroundPoint(
                    new GroundPointId(id),
                    ground.name() + ", stud " + (names.size() + 1),
                    ground.body(),
                    ground.jointOhms(),
                    ground.at(),
                    ground.zone(),
                    ground.part(),
                    false,
                    ground.assembly(),
                    Optional.empty(),
                    ground.studMm(),
                    ground.torque());
            edits.add(PutElements.one(RemedyTexts.text("add-ground", id), beside));
            moving.subList(from, Math.min(moving.size(), from + ReturnPlaces.MOST_STACKED))
                    .forEach(wire -> edits.add(
                            new MoveWireEnd(wire.id(), stud, new WireEnd.AtGround(beside.id()), wire.lengthMetres())));
        }
        return Optional.of(new Candidate(
                RemedyKind.NEW_GROUND_POINT,
                new Compound(RemedyTexts.text("add-for", String.join(", ", names), names(moving)), edits)));
    }

    private static String names(List<Wire> wires) {
        return String.join(", ", wires.stream().map(wire -> wire.id().value()).toList());
    }

    private Edit moved(Text label, List<Wire> wires, WireEnd stud, WireEnd place) {
        List<Edit> edits = new ArrayList<>();
        wires.forEach(wire -> edits.add(new MoveWireEnd(wire.id(), stud, place, lengths.moved(wire, stud, place))));
        return new Compound(label, edits);
    }
}
