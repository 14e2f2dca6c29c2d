package org.ohmloom.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.PutElements;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measured;
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
        Harness harness = places.harness();
        GroundPoint ground = harness.grounds().get(id);
        MeasuredOhms measured = MeasuredOhms.of(harness);
        List<Double> others = places.harness().grounds().all().stream()
                .filter(each -> !each.id().equals(id))
                .map(each -> jointOhms(measured, each))
                .filter(ohms -> ohms > 0)
                .sorted()
                .toList();
        if (others.isEmpty() || jointOhms(measured, ground) < WORSE_RATIO * others.get(others.size() / 2)) {
            return Optional.empty();
        }
        double ohms = others.get(others.size() / 2);
        return Optional.of(new Candidate(
                RemedyKind.CLEANED_JOINT,
                new PutElements(
                        RemedyTexts.text("clean-joint", id, Formats.ohms(ohms)),
                        withoutReadings(ground.withJointOhms(ohms), harness))));
    }

    private static double jointOhms(MeasuredOhms measured, GroundPoint ground) {
        return measured.jointOhms(ground.id().value(), ground.jointOhms());
    }

    /** The cleaned ground point, and what was measured of it before, which counts for it no longer. */
    private static List<Element> withoutReadings(GroundPoint cleaned, Harness harness) {
        List<Element> changed = new ArrayList<>(List.of(cleaned));
        harness.readings().all().stream()
                .filter(reading -> reading.replaces()
                        && reading.measured() instanceof Measured.OfJoint joint
                        && joint.joint().equals(cleaned.id().value()))
                .forEach(reading -> changed.add(reading.replacing(false)));
        return changed;
    }
}
