package org.ohmloom.review;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.BusTraffic;
import org.ohmloom.signal.study.BusReading;
import org.ohmloom.signal.study.TrafficMending;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/**
 * Every message of a data bus arrives before its deadline, at the worst.
 * <p>Frames as long as stuffing can make them, the longest frame of lower priority just begun, all of higher priority ready at once, and
 * jitter. Two messages with one identifier are an error too. A warning where the bus is busy for more than practice keeps; a warning where
 * a message comes less often than what it carries is to be sent; a note on channels that are not among its messages.
 */
final class BusMessageLate implements Rule {

    private static final RuleInfo INFO = new RuleInfo("bus-message-late", Severity.ERROR);

    @Override
    public RuleInfo info() {
        return INFO;
    }

    @Override
    public void review(Evidence evidence, Consumer<Finding> report) {
        CitedValue most = evidence.tables().signals().figure(BusFigure.LOAD_MOST);
        TrafficMending mending =
                new TrafficMending(evidence.signals(), evidence.tables().signals());
        for (BusReading reading : evidence.signals().buses()) {
            BusTraffic traffic = reading.traffic();
            traffic.clashing()
                    .forEach(name -> report.accept(draft(reading, "same-identifier")
                            .word("name", name)
                            .fix(mending.identifier(reading, name))
                            .build()));
            late(reading, mending, report);
            if (Limits.exceeds(traffic.loadFraction(), most.value()) && traffic.loadFraction() < 1) {
                report.accept(draft(reading, "busy")
                        .beyond("load", traffic.loadFraction(), "limit", most.value(), Unit.FRACTION)
                        .word("load", Formats.percent(traffic.loadFraction()))
                        .word("limit", Formats.percent(most.value()))
                        .severity(Severity.WARNING)
                        .fix(mending.calmer(reading))
                        .source(most.citation().text())
                        .build());
            }
            if (!traffic.unsent().isEmpty()) {
                report.accept(draft(reading, "not-sent")
                        .word("names", Listing.of(List.copyOf(traffic.unsent()), 50))
                        .severity(Severity.NOTE)
                        .build());
            }
            if (!traffic.seldom().isEmpty()) {
                report.accept(draft(reading, "seldom")
                        .word("names", Listing.of(List.copyOf(traffic.seldom()), 50))
                        .severity(Severity.WARNING)
                        .build());
            }
        }
    }

    private static void late(BusReading reading, TrafficMending mending, Consumer<Finding> report) {
        if (reading.traffic().loadFraction() >= 1) {
            report.accept(draft(reading, "too-much")
                    .value("load", reading.traffic().loadFraction(), Unit.FRACTION)
                    .word("load", Formats.percent(reading.traffic().loadFraction()))
                    .fix(mending.calmer(reading))
                    .build());
            return;
        }
        for (MessageTiming timing : reading.traffic().timings()) {
            OptionalDouble response = timing.responseSeconds();
            if (response.isPresent()
                    && Limits.exceeds(response.getAsDouble(), timing.message().deadlineSeconds())) {
                report.accept(draft(reading, "late")
                        .word("name", timing.message().id())
                        .fix(mending.sooner(reading, timing))
                        .beyond(
                                "response",
                                response.getAsDouble(),
                                "limit",
                                timing.message().deadlineSeconds(),
                                Unit.SECOND)
                        .build());
            }
        }
    }

    private static FindingDraft draft(BusReading reading, String template) {
        return new FindingDraft(INFO, template)
                .word("bus", reading.bus().id())
                .subject(reading.bus().id());
    }
}
