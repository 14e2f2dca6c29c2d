package org.ohmloom.analysis;

import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.edit.SetDeviceType;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Severity;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.protection.DeviceProposal;

/**
 * Puts proposed protective devices in place once conductors and ratings are chosen.
 *
 * <p>A proposal is taken where it mends a point that is not met and fails at nothing that is met. All are put in place together
 * and the harness is sized again, for another device allows other conductors; a device that took a proposal keeps it. A round
 * that leaves more errors than before is taken back, and that ends it.
 */
final class ProposedDevices {

    private static final int MOST_ROUNDS = 3;

    private ProposedDevices() {}

    static SizedHarness taken(SizedHarness sized, Cancel cancel) {
        SizedHarness best = sized;
        SortedMap<ComponentId, DeviceProposal> taken = new TreeMap<>();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            SortedMap<ComponentId, DeviceProposal> mending = mending(best.analysis(), taken.keySet());
            if (mending.isEmpty()) {
                break;
            }
            Harness changed = best.analysis().harness();
            for (DeviceProposal proposal : mending.values()) {
                changed = new SetDeviceType(proposal.device(), proposal.chosen().device()).apply(changed);
            }
            mending.putAll(taken);
            SizedHarness next = SizedHarness.of(
                    Analyst.analyse(changed, best.analysis().evidence().tables(), cancel), mending.keySet(), cancel);
            if (next.analysis().count(Severity.ERROR) > best.analysis().count(Severity.ERROR)) {
                break;
            }
            taken.putAll(mending);
            best = joined(best, next, taken);
        }
        return best;
    }

    private static SortedMap<ComponentId, DeviceProposal> mending(Analysis analysis, Set<ComponentId> settled) {
        SortedMap<ComponentId, DeviceProposal> mending =
                new TreeMap<>(analysis.evidence().protection().proposals());
        mending.values()
                .removeIf(proposal -> !proposal.mends()
                        || settled.contains(proposal.device())
                        || analysis.harness()
                                .components()
                                .get(proposal.device())
                                .existing());
        return mending;
    }

    /** The later sizing, with the reasons of the earlier one where it changed nothing. */
    private static SizedHarness joined(
            SizedHarness earlier, SizedHarness later, SortedMap<ComponentId, DeviceProposal> taken) {
        SortedMap<WireId, ConductorChoice> conductors = new TreeMap<>(later.conductors());
        earlier.conductors()
                .forEach((wire, choice) -> conductors.computeIfPresent(
                        wire, (id, now) -> now.gauge().equals(choice.gauge()) ? choice : now));
        SortedMap<ComponentId, DeviceChoice> devices = new TreeMap<>(later.devices());
        earlier.devices()
                .forEach((device, choice) -> devices.computeIfPresent(
                        device, (id, now) -> now.ratingAmps().equals(choice.ratingAmps()) ? choice : now));
        return new SizedHarness(earlier.before(), later.analysis(), conductors, devices, earlier.joint(), taken);
    }
}
