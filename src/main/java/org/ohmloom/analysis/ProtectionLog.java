package org.ohmloom.analysis;

import java.util.function.BiConsumer;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.ConductorProtection;
import org.ohmloom.size.protection.DeviceProposal;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.OutputProtection;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.size.protection.StartPulse;
import org.ohmloom.size.protection.TypeCandidate;

/** Writes down how each protective device was judged. */
final class ProtectionLog {

    private ProtectionLog() {}

    /** Writes each line with its depth. */
    static void write(ProtectionResults results, BiConsumer<Integer, String> log) {
        results.devices().values().forEach(device -> {
            device(device, log);
            results.proposal(device.device()).ifPresent(proposal -> proposal(proposal, log));
        });
        for (OutputProtection output : results.outputs()) {
            log.accept(0, "Electronic limit of " + output.output());
            log.accept(1, output.told().english());
        }
    }

    private static void device(DeviceProtection device, BiConsumer<Integer, String> log) {
        log.accept(0, "Protection by " + device.device());
        for (Check check : device.checks()) {
            log.accept(1, check.aspect().words() + ", " + check.verdict().words() + ": " + check.sentence());
            log.accept(2, check.source().english());
        }
        for (ConductorProtection conductor : device.conductors()) {
            log.accept(1, conductor.words());
        }
        for (StartPulse start : device.starts()) {
            log.accept(1, start.sentence());
        }
    }

    private static void proposal(DeviceProposal proposal, BiConsumer<Integer, String> log) {
        for (TypeCandidate type : proposal.types()) {
            String outcome =
                    switch (type.outcome()) {
                        case CHOSEN -> "proposed: ";
                        case WOULD_SERVE -> "not needed: ";
                        case REFUSED -> "refused: ";
                    };
            log.accept(1, outcome + type.words() + "; " + type.reason());
            log.accept(2, type.source().english());
        }
    }
}
