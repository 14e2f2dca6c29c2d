package org.ohmloom.review;

import java.util.Set;
import java.util.function.Consumer;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.Selectivity;
import org.ohmloom.units.Formats;

/**
 * A fault opens the device next to it and not the one upstream.
 * <p>Shown by the bands as far as they go; beyond, and where no times are published, a rating half as large counts as common
 * practice. A note: it costs a search in the dark, not a wire.
 */
final class DevicesNotSelective implements Rule {

    private static final RuleInfo INFO = new RuleInfo("devices-not-selective", Severity.NOTE);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.PROTECTION);
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        for (DeviceProtection device : evidence.protection().devices().values()) {
            device.selectivity().stream()
                    .filter(each -> !each.selective())
                    .forEach(each -> report.accept(finding(device, each)));
        }
    }

    private static Finding finding(DeviceProtection device, Selectivity selectivity) {
        double upstreamAmps = device.ratingAmps() * selectivity.ratingRatio();
        return new FindingDraft(INFO, "opens-too")
                .word("device", device.device())
                .word("upstream", selectivity.upstream())
                .word("ratio", Formats.number(selectivity.ratingRatio()))
                .amps("rating", device.ratingAmps())
                .amps("larger", upstreamAmps)
                .subject(device.device())
                .subject(selectivity.upstream())
                .build();
    }
}
