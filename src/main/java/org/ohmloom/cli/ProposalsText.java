package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.protection.DeviceProposal;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.size.protection.TypeCandidate;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** Type and rating proposed for each protective device, with what was refused and why, as text and as JSON. */
final class ProposalsText {

    private static final int WIDTH = 120;
    private static final int INDENT = 6;

    private ProposalsText() {}

    static void print(ProtectionResults results, PrintWriter out) {
        if (results.proposals().isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("DEVICE")
                .left("NOW")
                .right("RATING")
                .left("PROPOSED")
                .right("RATING")
                .right("MADE FOR")
                .right("NOT MET")
                .right("OPEN");
        results.proposals().values().forEach(proposal -> row(proposal, table));
        out.println();
        out.println(
                "PROPOSED TYPES AND RATINGS (from all types of the tables; the present type first; JSON says why for"
                        + " each)");
        table.print(out);
        results.proposals().values().stream()
                .filter(DeviceProposal::changes)
                .forEach(proposal -> reasons(proposal, out));
    }

    private static void row(DeviceProposal proposal, TextTable table) {
        ProtectiveDevice chosen = proposal.chosen().device();
        table.row(
                proposal.device().value(),
                proposal.present().series(),
                Formats.amps(proposal.present().ratingAmps()),
                proposal.changes() ? chosen.series() : "stays",
                proposal.changes() ? Formats.amps(chosen.ratingAmps()) : "",
                proposal.changes() && chosen.ratedVolts().isPresent()
                        ? Formats.volts(chosen.ratedVolts().getAsDouble())
                        : "",
                Integer.toString(proposal.chosen().failed().size()),
                Integer.toString(proposal.chosen().open().size()));
    }

    private static void reasons(DeviceProposal proposal, PrintWriter out) {
        out.println(Wrap.indented(
                proposal.device() + ": " + proposal.chosen().words() + ": "
                        + proposal.chosen().reason() + " ("
                        + proposal.chosen().source().english() + ")",
                INDENT,
                WIDTH));
        others(proposal)
                .forEach(other -> out.println(Wrap.indented(
                        (other.outcome() == TypeCandidate.Outcome.REFUSED ? "refused: " : "not needed: ")
                                + other.words() + ": " + other.reason() + " ("
                                + other.source().english() + ")",
                        INDENT + 2,
                        WIDTH)));
    }

    private static List<TypeCandidate> others(DeviceProposal proposal) {
        return proposal.types().stream()
                .filter(type -> type.outcome() != TypeCandidate.Outcome.CHOSEN)
                .toList();
    }

    static void write(DeviceProposal proposal, JsonObjectWriter item) {
        item.object("proposal", entry -> {
            entry.put("changes", proposal.changes());
            candidate(proposal.chosen(), entry);
            entry.array(
                    "types", array -> proposal.types().forEach(type -> array.object(each -> candidate(type, each))));
        });
    }

    private static void candidate(TypeCandidate candidate, JsonObjectWriter entry) {
        entry.put("type", candidate.device().series());
        entry.put("kind", candidate.device().kind() == ProtectiveDevice.Kind.FUSE ? "fuse" : "breaker");
        entry.put("ratingAmps", candidate.device().ratingAmps());
        entry.put("ratedVolts", candidate.device().ratedVolts());
        entry.put("breakingAmps", candidate.device().breakingAmps());
        entry.put("outcome", candidate.outcome().name());
        entry.texts(
                "notMet",
                candidate.failed().stream().map(check -> check.aspect().words()).toList());
        entry.texts(
                "open",
                candidate.open().stream().map(check -> check.aspect().words()).toList());
        entry.put("reason", candidate.reason());
        entry.put("source", candidate.source().english());
    }
}
