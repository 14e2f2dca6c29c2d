package org.ohmloom.remedy;

import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.units.Formats;

/**
 * A joint that is far worse than those of the other ground points, cleaned and made anew: it is taken to become as good as the
 * middle one of them, which a measurement afterwards has to show.
 */
final class CleanedJoints {

    /** A joint is worth cleaning from this many times the resistance of the others on. Common practice, no source. */
    private static final double WORSE_RATIO = 3;

    private final ReturnPlaces places;

    CleanedJoints(ReturnPlaces places) {
        this.places = places;
    }

    Optional<Candidate> of(GroundPointId id) {
        GroundPoint ground = places.harness().grounds().get(id);
        List<Double> others = places.harness().grounds().all().stream()
                .filter(each -> !each.id().equals(id) && each.jointOhms() > 0)
                .map(GroundPoint::jointOhms)
                .sorted()
                .toList();
        if (others.isEmpty() || ground.jointOhms() < WORSE_RATIO * others.get(others.size() / 2)) {
            return Optional.empty();
        }
        double ohms = others.get(others.size() / 2);
        return Optional.of(new Candidate(
                RemedyKind.CLEANED_JOINT,
                PutElements.one(
                        "Clean the joint of " + id + " down to the " + Formats.ohms(ohms) + " of the others",
                        ground.withJointOhms(ohms))));
    }
}
