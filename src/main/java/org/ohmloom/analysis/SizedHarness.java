package org.ohmloom.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.review.Evidence;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChooser;
import org.ohmloom.size.SizingInput;
import org.ohmloom.size.UpstreamDevices;
import org.ohmloom.units.Gauge;

/**
 * A harness with conductors and protective devices chosen.
 * <p>Wires without a size get the smallest that serves, wires too thin for what they carry get a larger one, and a
 * protective device whose rating does not serve gets one that does. What serves stays as the person chose it; what is
 * already in the vehicle is never changed. Each change moves currents, so the harness is analysed again until no choice
 * changes, at most {@link #MOST_ROUNDS} times.
 *
 * @param before   the harness as it was
 * @param analysis analysis of the harness with its choices
 */
public record SizedHarness(Harness before, Analysis analysis) {

    /** Most rounds of choosing and analysing. */
    static final int MOST_ROUNDS = 8;

    /**
     * Chooses.
     *
     * @param start  analysis of the harness as it is
     * @param cancel asks to stop
     */
    public static SizedHarness of(Analysis start, Cancel cancel) {
        Analysis analysis = start;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Harness harness = analysis.harness();
            Harness changed = harness;
            for (Edit edit : edits(analysis)) {
                changed = edit.apply(changed);
            }
            if (changed == harness) {
                break;
            }
            analysis = Analyst.analyse(changed, analysis.evidence().tables(), cancel);
        }
        return new SizedHarness(start.harness(), analysis);
    }

    private static List<Edit> edits(Analysis analysis) {
        List<Edit> edits = new ArrayList<>();
        for (ConductorChoice choice : analysis.conductors().values()) {
            Wire wire = analysis.harness().wires().get(choice.wire());
            Optional<Gauge> wanted = choice.gauge()
                    .filter(gauge -> wire.gauge().isEmpty()
                            || gauge.compareTo(wire.gauge().get()) > 0);
            if (!wire.existing() && wire.measuredOhms().isEmpty() && wanted.isPresent()) {
                edits.add(SetWireGauge.of(wire.id(), wanted.get()));
            }
        }
        new DeviceChooser(input(analysis.evidence())).changes().forEach((id, choice) -> choice.ratingAmps()
                .ifPresent(amps -> {
                    if (!analysis.harness().components().get(id).existing()) {
                        edits.add(new SetDeviceRating(id, amps));
                    }
                }));
        return edits;
    }

    private static SizingInput input(Evidence evidence) {
        return new SizingInput(
                evidence.harness(),
                evidence.tables(),
                evidence.basis(),
                evidence.routes(),
                evidence.solutions(),
                UpstreamDevices.of(evidence.harness(), evidence.upstream()));
    }
}
