package org.ohmloom.size.protection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.protection.Check.Aspect;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/** Judges a protective device by what is known of it, one check after the other. */
final class DeviceChecks {

    private static final double SAME = 1e-9;

    private final DeviceProtection found;
    private final ProtectiveDevice device;
    private final List<Check> checks = new ArrayList<>();

    private DeviceChecks(DeviceProtection found, ProtectiveDevice device) {
        this.found = found;
        this.device = device;
    }

    static DeviceProtection judged(DeviceProtection found, ProtectiveDevice device, Text breakingSource) {
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

    private Text noTimes() {
        return CheckTexts.text("no-times", device.series());
    }

    private Text bandSource() {
        return found.band()
                .map(band -> Text.of(band.firstOpening().citation().text()))
                .orElseGet(this::noTimes);
    }

    private void carries() {
        checks.add(Check.judged(
                Aspect.CARRIES,
                found.loadAmps() <= found.rating().continuousAmps() * (1 + SAME),
                CheckTexts.text(
                        "carries",
                        Formats.amps(found.loadAmps()),
                        found.rating().text()),
                Text.of(found.rating().source())));
    }

    private void ridesThrough() {
        if (found.band().isEmpty()) {
            checks.add(Check.notJudged(Aspect.RIDES_THROUGH, noTimes(), bandSource()));
        } else if (!found.starts().isEmpty()) {
            StartPulse worst = found.starts().stream()
                    .reduce((one, other) -> one.isWorseThan(other) ? one : other)
                    .orElseThrow();
            checks.add(Check.judged(Aspect.RIDES_THROUGH, worst.ridesThrough(), worst.told(), worst.source()));
        }
    }

    private void protects() {
        Optional<ConductorProtection> weakest = found.conductors().stream()
                .filter(each -> each.isProtected().filter(safe -> !safe).isPresent())
                .findFirst()
                .or(found::weakest);
        if (weakest.isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.PROTECTS, CheckTexts.text("no-conductor"), CheckTexts.text("source.harness")));
        } else if (weakest.get().isProtected().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.PROTECTS,
                    found.band().isEmpty()
                            ? CheckTexts.text("no-times-alone", noTimes())
                            : CheckTexts.text("beside-no-times"),
                    bandSource()));
        } else {
            checks.add(Check.judged(
                    Aspect.PROTECTS,
                    weakest.get().isProtected().get(),
                    weakest.get().text(),
                    Text.joined(
                            "; ",
                            List.of(
                                    bandSource(),
                                    Text.of(weakest.get()
                                            .limit()
                                            .sources()
                                            .get(0)
                                            .text())))));
        }
    }

    private void smallest() {
        if (found.minimumFault().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.CLEARS_SMALLEST, CheckTexts.text("no-fault"), CheckTexts.text("source.harness")));
            return;
        }
        Fault fault = found.minimumFault().get();
        if (found.band().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.CLEARS_SMALLEST, CheckTexts.text("fault-no-times", fault.told(), noTimes()), bandSource()));
            return;
        }
        TimeCurrentBand band = found.band().get();
        Text opens = found.openSeconds().isPresent()
                ? CheckTexts.text(
                        "opens-within", Formats.seconds(found.openSeconds().getAsDouble()))
                : CheckTexts.text("may-never-open", Formats.amps(band.foreverAmps()));
        boolean stands = fault.limited()
                && found.conductors().stream()
                        .allMatch(each -> each.isProtected().orElse(false));
        if (stands) {
            opens = CheckTexts.text("stands", opens);
        }
        checks.add(Check.judged(
                Aspect.CLEARS_SMALLEST,
                stands || found.openSeconds().orElse(Double.POSITIVE_INFINITY) <= found.askedSeconds() * (1 + SAME),
                CheckTexts.text(
                        "smallest",
                        fault.told(),
                        Formats.percent(fault.deviceAmps() / found.ratingAmps()),
                        opens,
                        Formats.seconds(found.askedSeconds())),
                Text.of(band.stepAt(fault.deviceAmps())
                        .orElse(band.firstOpening())
                        .citation()
                        .text())));
    }

    private void largest(Text source) {
        if (found.maximumFault().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.BREAKS_LARGEST, CheckTexts.text("no-fault"), CheckTexts.text("source.harness")));
        } else if (found.breakingAmps().isEmpty()) {
            checks.add(Check.notJudged(
                    Aspect.BREAKS_LARGEST,
                    CheckTexts.text("nobody-says", found.maximumFault().get().told()),
                    CheckTexts.text("source.no-breaking", device.series())));
        } else {
            double breaking = found.breakingAmps().getAsDouble();
            checks.add(Check.judged(
                    Aspect.BREAKS_LARGEST,
                    found.maximumFault().get().deviceAmps() <= breaking * (1 + SAME),
                    CheckTexts.text("can-interrupt", found.maximumFault().get().told(), Formats.amps(breaking)),
                    source));
        }
    }

    private void voltage() {
        if (found.ratedVolts().isPresent() && found.systemVolts().isPresent()) {
            checks.add(Check.judged(
                    Aspect.VOLTAGE,
                    found.systemVolts().getAsDouble() <= found.ratedVolts().getAsDouble() * (1 + SAME),
                    CheckTexts.text(
                            "made-for",
                            Formats.volts(found.ratedVolts().getAsDouble()),
                            Formats.volts(found.systemVolts().getAsDouble())),
                    CheckTexts.text("source.voltage", device.series())));
        } else {
            checks.add(
                    Check.notJudged(Aspect.VOLTAGE, CheckTexts.text("no-voltage"), CheckTexts.text("source.harness")));
        }
    }

    private void selective() {
        found.selectivity().stream()
                .reduce((one, other) -> one.selective() ? other : one)
                .ifPresent(worst -> checks.add(
                        Check.judged(Aspect.SELECTIVE, worst.selective(), worst.told(), Selectivity.SOURCE)));
    }
}
