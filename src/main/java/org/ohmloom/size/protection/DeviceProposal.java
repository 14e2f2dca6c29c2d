package org.ohmloom.size.protection;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;

/**
 * Type and rating proposed for a protective device.
 *
 * @param device  the device
 * @param present what is there
 * @param checks  what it meets and what not
 * @param chosen  what is proposed: what is there where it meets all; otherwise what meets all, of its own type if there is one;
 *                otherwise what meets most
 * @param types   every type looked at, with the best of each and why it was taken or not; the present type first
 */
public record DeviceProposal(
        ComponentId device,
        ProtectiveDevice present,
        List<Check> checks,
        TypeCandidate chosen,
        List<TypeCandidate> types) {

    public DeviceProposal {
        checks = List.copyOf(checks);
        types = List.copyOf(types);
    }

    /** Whether something else than what is there is proposed. */
    public boolean changes() {
        return !chosen.device().equals(present);
    }

    /** Whether another type, or another version of it, is proposed. */
    public boolean changesType() {
        return changes()
                && !chosen.device()
                        .equals(present.withRatingAmps(chosen.device().ratingAmps()));
    }

    /**
     * The proposed device, if it mends a point that is not met now and fails at nothing that is met now.
     *
     * @param aspect the point
     */
    public Optional<ProtectiveDevice> mending(Check.Aspect aspect) {
        return Optional.of(chosen.device()).filter(device -> changes() && nothingNew() && !chosen.fails(aspect));
    }

    /** Whether the proposed device mends some point that is not met now and fails at nothing that is met now. */
    public boolean mends() {
        return changes() && nothingNew() && notMet().anyMatch(check -> !chosen.fails(check.aspect()));
    }

    /** What is not met now. */
    private Stream<Check> notMet() {
        return checks.stream().filter(check -> check.verdict() == Check.Verdict.NOT_MET);
    }

    private boolean nothingNew() {
        return chosen.failed().stream().allMatch(failed -> notMet().anyMatch(now -> now.aspect() == failed.aspect()));
    }
}
