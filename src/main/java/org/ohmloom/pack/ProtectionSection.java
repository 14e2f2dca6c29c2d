package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.ProtectionCharts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.DeviceProposal;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.Fault;
import org.ohmloom.size.protection.OutputProtection;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.size.protection.TypeCandidate;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/** What every protective device is judged by, the reasons, and its opening times against what it protects. */
final class ProtectionSection {

    private static final double PICTURE_HEIGHT_MM = 72;

    private static final List<Column> COLUMNS = List.of(
            Column.code("Device"),
            Column.number("Rating", Unit.AMP, 1),
            Column.number("Runs at", Unit.AMP, 2),
            Column.number("May carry", Unit.AMP, 2),
            Column.code("Weakest wire"),
            Column.number("Smallest fault", Unit.AMP, 0),
            Column.number("Opens in", Unit.SECOND, 2),
            Column.number("Asked", Unit.SECOND, 1),
            Column.number("Largest fault", Unit.AMP, 0),
            Column.number("Breaks up to", Unit.AMP, 0),
            Column.words("Carries"),
            Column.words("Starts"),
            Column.words("Protects"),
            Column.words("Clears"),
            Column.words("Breaks"),
            Column.words("Volts"),
            Column.words("Selective"));

    private static final List<Column> REASONS = List.of(
            Column.code("Device"),
            Column.words("Point"),
            Column.words("Met"),
            Column.words("Because"),
            Column.words("By"));

    private static final List<Column> PROPOSED = List.of(
            Column.code("Device"),
            Column.words("Has"),
            Column.words("Proposed"),
            Column.words("Because"),
            Column.words("Would serve too"),
            Column.words("By"));

    private static final List<Column> TYPES = List.of(
            Column.code("Device"),
            Column.words("Type"),
            Column.number("Rating", Unit.AMP, 1),
            Column.words("Outcome"),
            Column.words("Because"),
            Column.words("By"));

    private static final List<Column> OUTPUTS = List.of(
            Column.code("Output"),
            Column.number("Limit", Unit.AMP, 1),
            Column.number("Fault without it", Unit.AMP, 0),
            Column.number("Heats like", Unit.AMP, 1),
            Column.words("Fuses it blinds"),
            Column.words("Conductors"),
            Column.words("How it was worked out"));

    private final Analysis analysis;
    private final SceneFonts fonts;

    ProtectionSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    List<Block> blocks() {
        ProtectionResults results = analysis.evidence().protection();
        if (results.devices().isEmpty() && results.outputs().isEmpty()) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        List<Row> reasons = new ArrayList<>();
        List<Scene> pictures = new ArrayList<>();
        results.devices().values().forEach(device -> {
            rows.add(row(device));
            device.checks().forEach(check -> reasons.add(reason(device, check)));
            ProtectionCharts.ofDevice(analysis.harness(), results, device.device())
                    .map(chart -> chart.scene(fonts, Block.Pictures.HALF_MM, PICTURE_HEIGHT_MM))
                    .ifPresent(pictures::add);
        });
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Protection"));
        blocks.add(
                new Block.Prose("Smallest fault: cold, discharged battery, hot conductors, all contacts and the return"
                        + " in the way. Largest fault: full, warm battery and alternator, cold conductors, at the device."
                        + " A device has opened by the longest time of the last published row at or below the current;"
                        + " between rows nothing is read. \"open\" could not be judged."));
        blocks.add(new Block.Table("protection", COLUMNS, rows, "The harness has no protective device."));
        if (!results.outputs().isEmpty()) {
            blocks.add(new Block.Table(
                    "limiting-outputs",
                    OUTPUTS,
                    results.outputs().stream().map(ProtectionSection::output).toList(),
                    ""));
        }
        blocks.add(new Block.Heading("Proposed types and ratings"));
        blocks.add(new Block.Prose(
                "Every fuse and breaker type of the tables was judged in the place of each device, at the rating of it"
                        + " that meets most. What is there stays where it meets all that is judged; otherwise its"
                        + " own type comes first. Why each of the others was refused is in the file"
                        + " protection-proposals beside this report."));
        blocks.add(new Block.Table(
                "proposed-devices",
                PROPOSED,
                results.proposals().values().stream()
                        .map(ProtectionSection::proposed)
                        .toList(),
                "The harness has no protective device."));
        blocks.add(new Block.Table(
                        "protection-proposals",
                        TYPES,
                        results.proposals().values().stream()
                                .flatMap(proposal -> proposal.types().stream().map(type -> judged(proposal, type)))
                                .toList(),
                        "")
                .inFileOnly());
        blocks.add(new Block.Heading("Opening times against conductors, starts and faults"));
        blocks.add(new Block.Pictures(pictures));
        blocks.add(new Block.Heading("Why each point of protection is met or not"));
        blocks.add(new Block.Table("protection-checks", REASONS, reasons, "Nothing was judged."));
        return blocks;
    }

    private static Row row(DeviceProtection device) {
        return Row.of(
                Cell.text(device.device().value()).toned(Cell.Tone.STRONG),
                Cell.number(device.ratingAmps()),
                Cell.number(device.loadAmps()),
                Cell.number(device.rating().continuousAmps()),
                Cell.text(device.weakest().map(each -> each.wire().value())),
                Cell.number(fault(device.minimumFault())),
                Cell.number(device.openSeconds()),
                Cell.number(device.askedSeconds()),
                Cell.number(fault(device.maximumFault())),
                Cell.number(device.breakingAmps()),
                verdict(device, Check.Aspect.CARRIES),
                verdict(device, Check.Aspect.RIDES_THROUGH),
                verdict(device, Check.Aspect.PROTECTS),
                verdict(device, Check.Aspect.CLEARS_SMALLEST),
                verdict(device, Check.Aspect.BREAKS_LARGEST),
                verdict(device, Check.Aspect.VOLTAGE),
                verdict(device, Check.Aspect.SELECTIVE));
    }

    private static OptionalDouble fault(Optional<Fault> fault) {
        return fault.map(each -> OptionalDouble.of(each.deviceAmps())).orElse(OptionalDouble.empty());
    }

    private static Cell verdict(DeviceProtection device, Check.Aspect aspect) {
        return device.check(aspect).map(ProtectionSection::verdict).orElse(Cell.empty());
    }

    private static Cell verdict(Check check) {
        return switch (check.verdict()) {
            case MET -> Cell.text("yes");
            case NOT_MET -> Cell.missing("NO");
            case NOT_JUDGED -> Cell.text("open").toned(Cell.Tone.SOFT);
        };
    }

    private static Row reason(DeviceProtection device, Check check) {
        return Row.of(
                Cell.text(device.device().value()).toned(Cell.Tone.STRONG),
                Cell.text(check.aspect().words()),
                verdict(check),
                Cell.text(Wording.printed(check.sentence())),
                Cell.text(Wording.printed(check.source().english())));
    }

    private static Row proposed(DeviceProposal proposal) {
        TypeCandidate chosen = proposal.chosen();
        String others = proposal.types().stream()
                .filter(type -> type.outcome() == TypeCandidate.Outcome.WOULD_SERVE)
                .map(TypeCandidate::words)
                .reduce((one, other) -> one + ", " + other)
                .orElse("");
        return Row.of(
                Cell.text(proposal.device().value()).toned(Cell.Tone.STRONG),
                Cell.text(proposal.present().series() + " "
                        + Formats.amps(proposal.present().ratingAmps())),
                proposal.changes()
                        ? Cell.text(
                                        proposal.changesType()
                                                ? chosen.words()
                                                : Formats.amps(chosen.device().ratingAmps()))
                                .toned(Cell.Tone.STRONG)
                        : Cell.text("stays").toned(Cell.Tone.SOFT),
                Cell.text(Wording.printed(chosen.reason().replaceFirst("^stays: ", ""))),
                Cell.text(others),
                Cell.text(Wording.printed(chosen.source().english())));
    }

    private static Row judged(DeviceProposal proposal, TypeCandidate type) {
        return Row.of(
                Cell.text(proposal.device().value()).toned(Cell.Tone.STRONG),
                Cell.text(type.words()),
                Cell.number(type.device().ratingAmps()),
                switch (type.outcome()) {
                    case CHOSEN -> Cell.text(proposal.changes() ? "proposed" : "stays")
                            .toned(Cell.Tone.STRONG);
                    case WOULD_SERVE -> Cell.text("would serve");
                    case REFUSED -> Cell.text("refused").toned(Cell.Tone.SOFT);
                },
                Cell.text(Wording.printed(type.reason())),
                Cell.text(Wording.printed(type.source().english())));
    }

    private static Row output(OutputProtection output) {
        return Row.of(
                Cell.text(output.output()).toned(Cell.Tone.STRONG),
                Cell.number(output.limit().limitAmps()),
                Cell.number(output.faultAmps()),
                Cell.number(output.heatingAmps()),
                Cell.text(output.blindDevices().stream()
                        .map(id -> id.value())
                        .reduce((one, other) -> one + ", " + other)
                        .orElse("none")),
                output.burnt()
                        .map(burnt -> Cell.missing(burnt.wire() + " does not stand it"))
                        .orElse(Cell.text("stand it")),
                Cell.text(Wording.printed(output.told().english())));
    }
}
