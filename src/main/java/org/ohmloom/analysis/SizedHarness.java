package org.ohmloom.analysis;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.DeviceChooser;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.SizeFreedom;
import org.ohmloom.size.SizingInput;
import org.ohmloom.size.UpstreamDevices;
import org.ohmloom.size.protection.DeviceProposal;

/**
 * A harness with conductors and protective devices chosen.
 * <p>Wires without a size get the smallest that serves, wires too thin for what they carry get a larger one, and a
 * protective device whose rating does not serve gets one that does. What serves stays as the person chose it; what is
 * already in the vehicle is never changed. Each change moves currents, so the harness is analysed again until no choice
 * changes, at most {@link #MOST_ROUNDS} times. Chosen anew, a device takes the type and rating proposed for it as well
 * ({@link ProposedDevices}).
 *
 * @param before     the harness as it was
 * @param analysis   analysis of the harness with its choices
 * @param conductors for every wire the choice that gave it its size, with the reasons of that moment; for a wire that kept
 *                   its size, what the finished harness asks of it
 * @param devices    the same for protective devices
 * @param joint      how the sizes were chosen together, as of the first round, which had them all open
 * @param proposed   the proposals that were taken, by device; none unless chosen anew
 */
public record SizedHarness(
        Harness before,
        Analysis analysis,
        SortedMap<WireId, ConductorChoice> conductors,
        SortedMap<ComponentId, DeviceChoice> devices,
        JointChoice joint,
        SortedMap<ComponentId, DeviceProposal> proposed) {

    /** Keeps unmodifiable copies. */
    public SizedHarness {
        conductors = Collections.unmodifiableSortedMap(new TreeMap<>(conductors));
        devices = Collections.unmodifiableSortedMap(new TreeMap<>(devices));
        proposed = Collections.unmodifiableSortedMap(new TreeMap<>(proposed));
    }

    /** Most rounds of choosing and analysing. */
    static final int MOST_ROUNDS = 8;

    /**
     * Takes the size from every wire that may be changed and chooses all anew, those a person entered as well; then puts the
     * type and rating proposed for a protective device in its place where that mends a point it does not meet.
     *
     * @param start  analysis of the harness as it is
     * @param cancel asks to stop
     */
    public static SizedHarness anew(Analysis start, Cancel cancel) {
        Harness open = cleared(start.harness()).apply(start.harness());
        SizedHarness sized = of(Analyst.analyse(open, start.evidence().tables(), cancel), cancel);
        SizedHarness proposed = ProposedDevices.taken(sized, cancel);
        return new SizedHarness(
                start.harness(),
                proposed.analysis(),
                proposed.conductors(),
                proposed.devices(),
                sized.joint(),
                proposed.proposed());
    }

    /** Takes the size from every wire that may be changed. */
    public static Edit cleared(Harness harness) {
        List<WireId> wires = harness.wires().all().stream()
                .filter(wire -> SizeFreedom.mayChange(wire) && wire.gauge().isPresent())
                .map(Wire::id)
                .toList();
        return new SetWireGauge(wires, Optional.empty());
    }

    /**
     * Chooses.
     *
     * @param start  analysis of the harness as it is
     * @param cancel asks to stop
     */
    public static SizedHarness of(Analysis start, Cancel cancel) {
        return of(start, Set.of(), cancel);
    }

    /** Chooses, with some protective devices kept as they are. */
    static SizedHarness of(Analysis start, Set<ComponentId> kept, Cancel cancel) {
        SortedMap<WireId, ConductorChoice> conductors = new TreeMap<>();
        SortedMap<ComponentId, DeviceChoice> devices = new TreeMap<>();
        Analysis analysis = start;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Harness harness = analysis.harness();
            List<ConductorChoice> larger = larger(analysis);
            SortedMap<ComponentId, DeviceChoice> fitting = fitting(analysis);
            fitting.keySet().removeAll(kept);
            Harness changed = harness;
            for (ConductorChoice choice : larger) {
                changed = SetWireGauge.of(choice.wire(), choice.gauge().orElseThrow())
                        .apply(changed);
                conductors.put(choice.wire(), choice);
            }
            for (DeviceChoice choice : fitting.values()) {
                changed =
                        new SetDeviceRating(choice.device(), choice.ratingAmps().orElseThrow()).apply(changed);
                devices.put(choice.device(), choice);
            }
            if (changed == harness) {
                break;
            }
            analysis = Analyst.analyse(changed, analysis.evidence().tables(), cancel);
        }
        analysis.conductors().forEach(conductors::putIfAbsent);
        analysis.devices().forEach(devices::putIfAbsent);
        return new SizedHarness(
                start.harness(), analysis, conductors, devices, start.evidence().joint(), new TreeMap<>());
    }

    /** Choices for the wires that have no size yet, or one too thin. */
    private static List<ConductorChoice> larger(Analysis analysis) {
        return analysis.conductors().values().stream()
                .filter(choice -> {
                    Wire wire = analysis.harness().wires().get(choice.wire());
                    return SizeFreedom.mayChange(wire)
                            && choice.gauge()
                                    .filter(gauge -> wire.gauge().isEmpty()
                                            || gauge.compareTo(wire.gauge().get()) > 0)
                                    .isPresent();
                })
                .toList();
    }

    /** Choices for the protective devices whose rating does not serve. */
    private static SortedMap<ComponentId, DeviceChoice> fitting(Analysis analysis) {
        SortedMap<ComponentId, DeviceChoice> fitting = new TreeMap<>(new DeviceChooser(
                        input(analysis.evidence()), analysis.evidence().startUps())
                .changes());
        fitting.values()
                .removeIf(choice -> choice.ratingAmps().isEmpty()
                        || analysis.harness().components().get(choice.device()).existing());
        return fitting;
    }

    private static SizingInput input(Evidence evidence) {
        SizingInput named = new SizingInput(
                evidence.harness(),
                evidence.tables(),
                evidence.basis(),
                evidence.routes(),
                evidence.solutions(),
                UpstreamDevices.of(evidence.harness(), evidence.upstream()));
        return EnvelopeSizing.widened(named, evidence.envelope());
    }
}
