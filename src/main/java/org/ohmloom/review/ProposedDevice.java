package org.ohmloom.review;

import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetDeviceRating;
import org.ohmloom.edit.SetDeviceType;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceProposal;

/** The fix of a protective device: the type and rating proposed for it. */
final class ProposedDevice {

    private ProposedDevice() {}

    /**
     * Puts the proposed device in place, when the device is ours to change and the proposal mends a point and fails at nothing
     * that is met now.
     */
    static Optional<Edit> mending(Evidence evidence, ComponentId device, Check.Aspect aspect) {
        return evidence.protection()
                .proposal(device)
                .filter(proposal -> !evidence.harness().components().get(device).existing())
                .flatMap(proposal -> proposal.mending(aspect).map(proposed -> edit(proposal, proposed)));
    }

    private static Edit edit(DeviceProposal proposal, ProtectiveDevice proposed) {
        return proposal.changesType()
                ? new SetDeviceType(proposal.device(), proposed)
                : new SetDeviceRating(proposal.device(), proposed.ratingAmps());
    }
}
