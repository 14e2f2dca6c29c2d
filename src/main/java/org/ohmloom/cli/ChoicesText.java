package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.SizedHarness;
import org.ohmloom.model.Component;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Wire;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.Requirement;
import org.ohmloom.size.protection.DeviceProposal;
import org.ohmloom.size.protection.TypeCandidate;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;

/** The choices of conductors and protective devices, each with its reasons. */
final class ChoicesText {

    private static final int WIDTH = 120;

    private ChoicesText() {}

    static void print(SizedHarness sized, PrintWriter out) {
        Analysis after = sized.analysis();
        JointText.print(sized.joint(), out);
        out.println();
        out.println("CONDUCTORS (each wire with all that is asked of it; > marks what governs)");
        for (ConductorChoice choice : sized.conductors().values()) {
            Wire before = sized.before().wires().get(choice.wire());
            Wire now = after.harness().wires().get(choice.wire());
            out.println("  " + choice.wire() + "  " + size(before.gauge()) + " -> " + size(now.gauge())
                    + "  governed by " + choice.governing().governor().words()
                    + (choice.gauge().isEmpty() ? "; NO SIZE OF THE FAMILY SATISFIES ALL" : ""));
            for (Requirement requirement : choice.requirements()) {
                String mark = requirement.equals(choice.governing()) ? "> " : "";
                out.println(Wrap.indented(
                        mark + requirement.governor().words() + ", " + asked(requirement) + ": " + requirement.reason(),
                        6,
                        WIDTH));
                cite(requirement.reason(), requirement.citation().text(), out);
            }
        }
        out.println();
        out.println("PROTECTIVE DEVICES");
        for (DeviceChoice choice : sized.devices().values()) {
            out.println("  " + choice.device() + "  "
                    + rating(sized.before().components().find(choice.device())) + " -> "
                    + rating(after.harness().components().find(choice.device())));
            Optional<DeviceProposal> proposal =
                    Optional.ofNullable(sized.proposed().get(choice.device()));
            if (proposal.isPresent()) {
                TypeCandidate chosen = proposal.get().chosen();
                out.println(Wrap.indented("as proposed: " + chosen.reason(), 6, WIDTH));
                cite(chosen.reason(), chosen.source().english(), out);
            } else {
                out.println(Wrap.indented(choice.reason(), 6, WIDTH));
                cite(choice.reason(), choice.citation().text(), out);
            }
        }
    }

    private static String asked(Requirement requirement) {
        return requirement.smallest().map(Gauge::text).orElse("no size");
    }

    /** The source on a line of its own, unless the reason ends in it already. */
    private static void cite(String reason, String source, PrintWriter out) {
        if (!reason.contains(source)) {
            out.println(Wrap.indented(source, 8, WIDTH));
        }
    }

    private static String size(Optional<Gauge> gauge) {
        return gauge.map(Gauge::text).orElse("no size");
    }

    private static String rating(Optional<Component> component) {
        return component
                .map(Component::device)
                .filter(ProtectiveDevice.class::isInstance)
                .map(ProtectiveDevice.class::cast)
                .map(device -> Formats.amps(device.ratingAmps())
                        + (device.ratedVolts().isPresent()
                                ? " for " + Formats.volts(device.ratedVolts().getAsDouble())
                                : "")
                        + " " + device.series())
                .orElse("no rating");
    }
}
