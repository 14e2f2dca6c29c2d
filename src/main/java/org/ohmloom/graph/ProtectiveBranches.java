package org.ohmloom.graph;

import java.util.Optional;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Setting;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.units.Formats;

/**
 * Branches of fuses and breakers: their measured resistance, else the typical cold resistance of their type and rating,
 * else {@link #FALLBACK_DROP_VOLTS} over the rated current. What was not measured is noted as an assumption.
 */
final class ProtectiveBranches {

    /** What a small fuse loses at its rated current, V: about a tenth of a volt. Common practice, no source. */
    static final double FALLBACK_DROP_VOLTS = 0.1;

    private ProtectiveBranches() {}

    static void device(DeviceDraft draft, ProtectiveDevice device, FuseOhms fuseOhms) {
        boolean closed = draft.setting().map(Setting::on).orElse(true);
        draft.branch(
                device.kind() == ProtectiveDevice.Kind.FUSE ? BranchKind.FUSE : BranchKind.BREAKER,
                ProtectiveDevice.SUPPLY_SIDE,
                ProtectiveDevice.LOAD_SIDE,
                closed ? new Law.Resistance(ohms(draft, device, fuseOhms)) : new Law.Open());
    }

    private static double ohms(DeviceDraft draft, ProtectiveDevice device, FuseOhms fuseOhms) {
        if (device.ohms().isPresent()) {
            return device.ohms().getAsDouble();
        }
        Optional<CitedValue> listed = fuseOhms.coldOhms(device.series(), device.ratingAmps());
        double ohms = listed.map(CitedValue::value).orElse(FALLBACK_DROP_VOLTS / device.ratingAmps());
        draft.assume(
                NetworkTexts.text(
                        "assumed.device-ohms",
                        draft.component().id(),
                        device.series(),
                        Formats.amps(device.ratingAmps()),
                        Formats.ohms(ohms)),
                listed.map(value -> value.citation().text()).orElse(Assumption.COMMON_PRACTICE));
        return ohms;
    }
}
