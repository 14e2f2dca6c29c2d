package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.protection.Check.Aspect;
import org.ohmloom.units.Formats;

/** Judges a protective device by what is known of it, one check after the other. */
final class DeviceChecks {

    private static final double SAME = 1e-9;
    private static final String NO_TIMES = "no opening times are published for ";

    private final DeviceProtection found;
    private final ProtectiveDevice device;
    private final List<Check> checks = new ArrayList<>();

    private DeviceChecks(DeviceProtection found, ProtectiveDevice device) {
        this.found = found;
        this.device = device;
    }

    static DeviceProtection judged(DeviceProtection found, ProtectiveDevice device, String breakingSource) {
        DeviceChecks checks = new DeviceChecks(found, device);
        checks.carries();
        checks.ridesThrough();
        checks.protects();
        checks.smallest();
        checks.largest(breakingSource);
        checks.voltage();
        checks.selective();
        return new DeviceProtection(
                found.device(),
                found.type(),
                found.ratingAmps(),
                found.band(),
                found.rating(),
                found.loadAmps(),
                found.loadState(),
                found.conductors(),
                found.minimumFault(),
                found.openSeconds(),
                found.askedSeconds(),
                found.maximumFault(),
                found.breakingAmps(),
                found.ratedVolts(),
                found.systemVolts(),
                found.starts(),
                found.selectivity(),
                checks.checks);
    }

    private String bandSource() {
        return found.band().map(band -> band.firstOpening().citation().text()).orElse(NO_TIMES + device.series());
    }

    private void carries() {
        checks.add(Check.judged(
                Aspect.CARRIES,
                found.loadAmps() <= found.rating().continuousAmps() * (1 + SAME),
                "carries " + Formats.amps(found.loadAmps()) + "; may carry "
                        + found.rating().words(),
                found.rating().source()));
    }

    private void ridesThrough() {
        if (found.band().isEmpty()) {
            checks.add(Check.notJudged(Aspect.RIDES_THROUGH, NO_TIMES + device.series(), bandSource()));
        } else if (!found.starts().isEmpty()) {
            StartPulse worst = found.starts().stream()
                    .reduce((one, other) -> one.isWorseThan(other) ? one : other)
                    .orElseThrow();
            checks.add(Check.judged(Aspect.RIDES_THROUGH, worst.ridesThrough(), worst.sentence(), worst.source()));
        }
    }

    private void protects() {
        Optional<ConductorProtection> weakest = found.conductors().stream()
                .filter(each -> each.isProtected().filter(safe -> !safe).isPresent())
                .findFirst()
                .or(found::weakest);
        if (weakest.isEmpty()) {
            checks.add(
                    Check.notJudged(Aspect.PROTECTS, "no conductor of a known ampacity relies on it", "the harness"));
        } else if (weakest.get().isProtected().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.PROTECTS,
                    (found.band().isEmpty() ? NO_TIMES + device.series() : "a device beside it has no published times")
                            + "; the ratings alone are judged",
                    bandSource()));
        } else {
            checks.add(Check.judged(
                    Aspect.PROTECTS,
                    weakest.get().isProtected().get(),
                    weakest.get().words(),
                    bandSource() + "; " + weakest.get().limit().sources().get(0).text()));
        }
    }

    private void smallest() {
        if (found.minimumFault().isEmpty()) {
            checks.add(Check.notJudged(Aspect.CLEARS_SMALLEST, "no fault behind it could be solved", "the harness"));
            return;
        }
        Fault fault = found.minimumFault().get();
        if (found.band().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.CLEARS_SMALLEST, fault.sentence() + "; " + NO_TIMES + device.series(), bandSource()));
            return;
        }
        TimeCurrentBand band = found.band().get();
        String opens = found.openSeconds().isPresent()
                ? "it opens within " + Formats.seconds(found.openSeconds().getAsDouble())
                : "it may never open below " + Formats.amps(band.foreverAmps());
        boolean stands = fault.limited()
                && found.conductors().stream()
                        .allMatch(each -> each.isProtected().orElse(false));
        if (stands) {
            opens = opens + "; its source limits itself, and what it gives the conductors stand for good";
        }
        checks.add(Check.judged(
                Aspect.CLEARS_SMALLEST,
                stands || found.openSeconds().orElse(Double.POSITIVE_INFINITY) <= found.askedSeconds() * (1 + SAME),
                fault.sentence() + ", " + Formats.percent(fault.deviceAmps() / found.ratingAmps()) + " of its rating: "
                        + opens + "; asked " + Formats.seconds(found.askedSeconds()),
                band.stepAt(fault.deviceAmps())
                        .orElse(band.firstOpening())
                        .citation()
                        .text()));
    }

    private void largest(String source) {
        if (found.maximumFault().isEmpty()) {
            checks.add(Check.notJudged(Aspect.BREAKS_LARGEST, "no fault behind it could be solved", "the harness"));
        } else if (found.breakingAmps().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.BREAKS_LARGEST,
                    found.maximumFault().get().sentence() + "; nobody says what it can interrupt",
                    "no breaking capacity is entered or listed for " + device.series()));
        } else {
            double breaking = found.breakingAmps().getAsDouble();
            checks.add(Check.judged(
                    Aspect.BREAKS_LARGEST,
                    found.maximumFault().get().deviceAmps() <= breaking * (1 + SAME),
                    found.maximumFault().get().sentence() + "; it can interrupt " + Formats.amps(breaking),
                    source));
        }
    }

    private void voltage() {
        if (found.ratedVolts().isPresent() && found.systemVolts().isPresent()) {
            checks.add(Check.judged(
                    Aspect.VOLTAGE,
                    found.systemVolts().getAsDouble() <= found.ratedVolts().getAsDouble() * (1 + SAME),
                    "made for " + Formats.volts(found.ratedVolts().getAsDouble()) + "; up to "
                            + Formats.volts(found.systemVolts().getAsDouble()) + " here",
                    "voltage rating of " + device.series()));
        } else {
            checks.add(Check.notJudged(Aspect.VOLTAGE, "no voltage rating is entered or listed", "the harness"));
        }
    }

    private void selective() {
        found.selectivity().stream()
                .reduce((one, other) -> one.selective() ? other : one)
                .ifPresent(worst -> checks.add(
                        Check.judged(Aspect.SELECTIVE, worst.selective(), worst.sentence(), Selectivity.SOURCE)));
    }
}
