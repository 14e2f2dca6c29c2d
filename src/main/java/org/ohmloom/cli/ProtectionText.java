package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.ConductorProtection;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.Fault;
import org.ohmloom.size.protection.OutputProtection;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** What each protective device carries, protects and clears, as text and as JSON. */
final class ProtectionText {

    private static final int WIDTH = 120;
    private static final int INDENT = 6;

    private ProtectionText() {}

    static void print(ProtectionResults results, PrintWriter out) {
        TextTable table = new TextTable()
                .left("DEVICE")
                .left("TYPE")
                .right("RATING")
                .right("MAY CARRY")
                .right("CARRIES")
                .left("WEAKEST CONDUCTOR")
                .right("FOR EVER")
                .right("SMALLEST FAULT")
                .right("OPENS WITHIN")
                .right("LARGEST FAULT")
                .right("CAN BREAK")
                .left("NOT MET");
        results.devices().values().forEach(device -> row(device, table));
        if (!table.isEmpty()) {
            out.println();
            out.println(
                    "PROTECTION (times from published bands, never between two rows; faults solved in the network)");
            table.print(out);
            results.devices().values().forEach(device -> device.checks().stream()
                    .filter(check -> check.verdict() == Check.Verdict.NOT_MET)
                    .forEach(check -> out.println(Wrap.indented(
                            device.device() + " " + check.aspect().words() + ": "
                                    + check.verdict().words() + ". " + check.sentence(),
                            INDENT,
                            WIDTH))));
        }
        notJudged(results, out);
        results.outputs()
                .forEach(output -> out.println(Wrap.indented(output.told().english(), INDENT, WIDTH)));
        ProposalsText.print(results, out);
    }

    /** What could not be judged, each kind of check once with its devices. */
    private static void notJudged(ProtectionResults results, PrintWriter out) {
        for (Check.Aspect aspect : Check.Aspect.values()) {
            List<String> devices = results.devices().values().stream()
                    .filter(device -> device.check(aspect)
                            .filter(check -> check.verdict() == Check.Verdict.NOT_JUDGED)
                            .isPresent())
                    .map(device -> device.device().value())
                    .toList();
            if (!devices.isEmpty()) {
                out.println(Wrap.indented(
                        "Not judged, " + aspect.words() + ": " + String.join(", ", devices), INDENT, WIDTH));
            }
        }
    }

    private static void row(DeviceProtection device, TextTable table) {
        table.row(
                device.device().value(),
                device.type(),
                Formats.amps(device.ratingAmps()),
                Formats.amps(device.rating().continuousAmps()),
                Formats.amps(device.loadAmps()),
                device.weakest().map(each -> each.wire().value()).orElse("-"),
                device.band().map(band -> Formats.amps(band.foreverAmps())).orElse("unknown"),
                amps(fault(device.minimumFault())),
                device.openSeconds().isPresent()
                        ? Formats.seconds(device.openSeconds().getAsDouble())
                        : device.band().isPresent() && device.minimumFault().isPresent() ? "never" : "unknown",
                amps(fault(device.maximumFault())),
                amps(device.breakingAmps()),
                device.checks().stream()
                        .filter(check -> check.verdict() == Check.Verdict.NOT_MET)
                        .map(check -> check.aspect().words())
                        .reduce((one, other) -> one + ", " + other)
                        .orElse("-"));
    }

    private static String amps(OptionalDouble amps) {
        return amps.isPresent() ? Formats.amps(amps.getAsDouble()) : "unknown";
    }

    private static OptionalDouble fault(Optional<Fault> fault) {
        return fault.map(each -> OptionalDouble.of(each.deviceAmps())).orElse(OptionalDouble.empty());
    }

    static void write(ProtectionResults results, JsonObjectWriter root) {
        root.array("protection", array -> {
            results.devices()
                    .values()
                    .forEach(device -> array.object(item -> {
                        device(device, item);
                        results.proposal(device.device()).ifPresent(proposal -> ProposalsText.write(proposal, item));
                    }));
            results.outputs().forEach(output -> array.object(item -> output(output, item)));
        });
    }

    private static void device(DeviceProtection device, JsonObjectWriter item) {
        item.put("device", device.device().value());
        item.put("kind", "device");
        item.put("type", device.type());
        item.put("ratingAmps", device.ratingAmps());
        item.put("conductor", device.weakest().map(each -> each.wire().value()));
        item.put("minimumFaultAmps", fault(device.minimumFault()));
        item.put("minimumFaultAt", device.minimumFault().map(fault -> fault.at().english()));
        item.put("maximumFaultAmps", fault(device.maximumFault()));
        item.put("openSeconds", device.openSeconds());
        item.put("askedSeconds", device.askedSeconds());
        item.put(
                "foreverAmps",
                device.band().map(band -> OptionalDouble.of(band.foreverAmps())).orElse(OptionalDouble.empty()));
        item.put("ambientCelsius", device.rating().ambientCelsius());
        item.put("carriesAmps", device.rating().carriesAmps());
        item.put("continuousAmps", device.rating().continuousAmps());
        item.put("loadAmps", device.loadAmps());
        item.put("ratedVolts", device.ratedVolts());
        item.put("systemVolts", device.systemVolts());
        item.put("breakingAmps", device.breakingAmps());
        item.array("conductors", array -> device.conductors()
                .forEach(each -> array.object(entry -> conductor(each, entry))));
        item.array("starts", array -> device.starts()
                .forEach(start -> array.object(entry -> {
                    entry.put("load", start.load());
                    entry.put("peakAmps", start.peakAmps());
                    entry.put("runningAmps", start.runningAmps());
                    entry.put("decaySeconds", start.decaySeconds());
                    entry.put("pulseAmpSquaredSeconds", start.pulseAmpSquaredSeconds());
                    entry.put("meltingAmpSquaredSeconds", start.meltingAmpSquaredSeconds());
                    entry.put("mayOpen", start.mayOpen());
                    entry.put("starts", start.startsCount());
                    entry.put("computedFrom", start.shape().state().isPresent() ? "start-up run" : "as entered");
                    entry.put("state", start.shape().state().map(state -> state.value()));
                })));
        item.array("checks", array -> device.checks()
                .forEach(check -> array.object(entry -> {
                    entry.put("aspect", check.aspect().words());
                    entry.put("verdict", check.verdict().name());
                    entry.put("sentence", check.sentence());
                    entry.put("source", check.source().english());
                })));
    }

    private static void conductor(ConductorProtection each, JsonObjectWriter entry) {
        entry.put("wire", each.wire().value());
        entry.put("minimumFaultAmps", each.faults().minimumAmps());
        entry.put("maximumFaultAmps", each.faults().maximumAmps());
        entry.put("runningCelsius", each.limit().runningCelsius());
        entry.put("limitCelsius", each.limit().continuousCelsius());
        entry.put("shortTimeCelsius", each.limit().shortTime().shortCircuit().value());
        entry.put("overloadCelsius", each.limit().shortTime().overload().value());
        entry.put("meltsInFiveSecondsAmps", each.limit().meltingAmps(ConductorProtection.MELTING_SECONDS));
        entry.put("meltsForGoodAmps", each.limit().meltingAmpsForGood());
        entry.put(
                "foreverCelsius",
                each.against().map(found -> finite(found.steadyCelsius())).orElse(OptionalDouble.empty()));
        entry.put(
                "protected", each.isProtected().map(safe -> safe ? "yes" : "no").orElse("not judged"));
    }

    private static OptionalDouble finite(double value) {
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static void output(OutputProtection output, JsonObjectWriter item) {
        item.put("device", output.output());
        item.put("kind", "electronic limit");
        item.put("ratingAmps", output.limit().limitAmps());
        item.put("conductor", output.conductors().stream().findFirst().map(each -> each.wire()
                .value()));
        item.put("minimumFaultAmps", output.cappedAmps());
        item.put("maximumFaultAmps", output.limit().limitAmps());
        item.put("openSeconds", output.limit().tripSeconds());
        item.put("retrySeconds", output.limit().retrySeconds());
        item.put("heatingAmps", output.heatingAmps());
        item.put("unlimitedFaultAmps", output.faultAmps());
    }
}
