package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmloom.draw.chart.TimeCurrentChart;
import org.ohmloom.draw.study.ProtectionCharts;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.ConductorProtection;
import org.ohmloom.size.protection.DeviceProposal;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.Fault;
import org.ohmloom.size.protection.OutputProtection;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.size.protection.TypeCandidate;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.TradeWords;

/** Fuses, breakers and outputs that limit: what each carries, protects, clears and rides through. */
public final class ProtectionStudy implements Study<ProtectionStudy.Row> {

    private static final int MOST_CONDUCTORS = 4;

    /**
     * A protective device, or an output that limits its current.
     *
     * @param id     the component
     * @param label  the component, with the pin of an output
     * @param name   what people call it
     * @param device the study of a device
     * @param output the study of an output
     * @param proposal type and rating proposed for a device
     */
    record Row(
            ComponentId id,
            String label,
            String name,
            Optional<DeviceProtection> device,
            Optional<OutputProtection> output,
            Optional<DeviceProposal> proposal) {

        CellText proposed() {
            return proposal.map(each -> each.changes()
                            ? CellText.of(each.chosen().words(), 0)
                                    .in(Tone.WARNING)
                                    .saying(each.chosen().reason())
                            : CellText.of("stays", 1).saying(each.chosen().reason()))
                    .orElse(CellText.EMPTY);
        }

        CellText verdict(Check.Aspect aspect) {
            Optional<Check> check = device.flatMap(each -> each.check(aspect));
            if (check.isEmpty()) {
                return CellText.EMPTY;
            }
            String tip = check.get().sentence();
            return switch (check.get().verdict()) {
                case MET -> CellText.of("yes", 2).saying(tip);
                case NOT_MET -> CellText.of("no", 0).in(Tone.ERROR).saying(tip);
                case NOT_JUDGED -> CellText.of("open", 1).in(Tone.SOFT).saying(tip);
            };
        }

        CellText number(Function<DeviceProtection, java.util.OptionalDouble> value) {
            return device.map(value).map(CellText::of).orElse(CellText.EMPTY);
        }

        CellText rating() {
            return device.map(each -> CellText.of(each.ratingAmps()))
                    .or(() -> output.map(each -> CellText.of(each.limit().limitAmps())))
                    .orElse(CellText.EMPTY);
        }

        CellText protects() {
            if (output.isPresent()) {
                return output.get()
                        .burnt()
                        .map(burnt -> CellText.of("no", 0)
                                .in(Tone.ERROR)
                                .saying(burnt.wire() + " does not stand a lasting fault"))
                        .orElse(CellText.of("yes", 2));
            }
            return verdict(Check.Aspect.PROTECTS);
        }
    }

    @Override
    public String key() {
        return "protection";
    }

    @Override
    public String title() {
        return "Protection";
    }

    @Override
    public String about() {
        return "What every fuse, breaker and limiting output carries, protects, clears and rides through";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Device", "Identity of the device", 7, Row::label),
                Column.number("Rating", "A", "Rated current, or the limit of an output", Row::rating),
                Column.number(
                        "Runs at",
                        "A",
                        "Largest lasting current through it",
                        row -> row.number(each -> java.util.OptionalDouble.of(each.loadAmps()))),
                verdict("Carries", "Carries its running current where it sits", Check.Aspect.CARRIES),
                verdict("Starts", "Rides through starts", Check.Aspect.RIDES_THROUGH),
                new Column<>(
                        "Protects",
                        "",
                        "Opens before any conductor behind it is harmed",
                        8,
                        Row::protects,
                        Optional.empty()),
                verdict("Clears", "Clears the smallest fault in the time asked", Check.Aspect.CLEARS_SMALLEST),
                verdict("Breaks", "Can interrupt the largest fault", Check.Aspect.BREAKS_LARGEST),
                verdict("Volts", "Is made for the voltage there", Check.Aspect.VOLTAGE),
                verdict("Selective", "Opens before the device upstream", Check.Aspect.SELECTIVE),
                Column.number(
                        "May carry",
                        "A",
                        "For good, where it sits",
                        row -> row.number(each ->
                                java.util.OptionalDouble.of(each.rating().continuousAmps()))),
                Column.text("Weakest", "Conductor with the least reserve", 8, row -> row.device()
                        .flatMap(DeviceProtection::weakest)
                        .map(each -> each.wire().value())
                        .orElse("")),
                Column.number(
                        "Smallest fault",
                        "A",
                        "Cold, discharged battery, hot conductors",
                        row -> row.number(each -> fault(each.minimumFault()))),
                Column.number(
                        "Opens in",
                        "s",
                        "By when it has opened that fault",
                        row -> row.number(DeviceProtection::openSeconds)),
                Column.number(
                        "Largest fault",
                        "A",
                        "Full, warm battery, cold conductors, at the device",
                        row -> row.number(each -> fault(each.maximumFault()))),
                Column.number(
                        "Breaks up to",
                        "A",
                        "Current it can interrupt",
                        row -> row.number(DeviceProtection::breakingAmps)),
                new Column<Row>(
                                "Proposed",
                                "",
                                "Type and rating that meets most, the present type first",
                                18,
                                Row::proposed,
                                Optional.empty())
                        .quantities(),
                Column.text("Name", "What people call it", 22, Row::name));
    }

    private static Column<Row> verdict(String title, String tip, Check.Aspect aspect) {
        return new Column<>(title, "", tip, 6, row -> row.verdict(aspect), Optional.empty());
    }

    private static java.util.OptionalDouble fault(Optional<Fault> fault) {
        return fault.map(each -> java.util.OptionalDouble.of(each.deviceAmps()))
                .orElse(java.util.OptionalDouble.empty());
    }

    private static ProtectionResults results(Readout readout) {
        return readout.analysis().map(each -> each.evidence().protection()).orElse(ProtectionResults.NONE);
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.PROTECTION);
    }

    @Override
    public List<Row> rows(Readout readout) {
        List<Row> rows = new ArrayList<>();
        results(readout)
                .devices()
                .forEach((id, device) -> rows.add(new Row(
                        id,
                        id.value(),
                        name(readout, id),
                        Optional.of(device),
                        Optional.empty(),
                        results(readout).proposal(id))));
        results(readout)
                .outputs()
                .forEach(output -> rows.add(new Row(
                        output.component(),
                        output.output(),
                        name(readout, output.component()),
                        Optional.empty(),
                        Optional.of(output),
                        Optional.empty())));
        return rows;
    }

    private static String name(Readout readout, ComponentId id) {
        return readout.harness()
                .components()
                .find(id)
                .map(found -> found.name())
                .orElse("");
    }

    @Override
    public ElementId id(Row row) {
        return row.id();
    }

    @Override
    public Optional<ElementId> lead(Readout readout, String selected) {
        return relying(readout, selected).stream()
                .flatMap(wire -> results(readout).relying().get(wire).stream())
                .map(id -> (ElementId) id)
                .findFirst();
    }

    /** The wire of an id, if it relies on some device. */
    private static Optional<WireId> relying(Readout readout, String id) {
        return results(readout).relying().keySet().stream()
                .filter(wire -> wire.value().equals(id))
                .findFirst();
    }

    @Override
    public String nothing(Readout readout) {
        return "The harness has no fuse, no breaker and no output with an electronic limit. Put one near the source of"
                + " every feed; name its type and rating (list Components) to see its opening times here.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        Optional<TimeCurrentChart> chart = selected.flatMap(id -> relying(readout, id)).stream()
                .filter(wire -> results(readout).relying().get(wire).contains(row.id()))
                .flatMap(wire -> ProtectionCharts.ofWire(readout.harness(), results(readout), wire).stream())
                .findFirst()
                .or(() -> ProtectionCharts.ofDevice(readout.harness(), results(readout), row.id()));
        return chart.map(each -> new Picture(
                "Opening times over currents: " + each.title() + ". "
                        + each.currents().stream()
                                .map(current -> current.label())
                                .collect(Collectors.joining(", ")),
                each::scene));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        row.device().ifPresent(device -> {
            for (Check check : device.checks()) {
                steps.add(TradeWords.capital(check.aspect().words()) + ": "
                        + check.verdict().words().toLowerCase(java.util.Locale.ROOT) + ". "
                        + TradeWords.capital(check.sentence()) + " ("
                        + check.source() + ")");
            }
            steps.add("May carry: " + device.rating().words() + ".");
            device.minimumFault().ifPresent(fault -> steps.add("Smallest fault: " + fault.sentence()));
            device.maximumFault().ifPresent(fault -> steps.add("Largest fault: " + fault.sentence()));
            device.starts().forEach(start -> steps.add("Start of " + start.load() + ": " + start.sentence()));
            device.conductors().stream()
                    .limit(MOST_CONDUCTORS)
                    .map(ConductorProtection::words)
                    .forEach(steps::add);
            device.selectivity().forEach(each -> steps.add("Upstream: " + each.sentence() + "."));
        });
        row.proposal().ifPresent(proposal -> proposal.types().forEach(type -> steps.add(told(type))));
        row.output().ifPresent(output -> {
            steps.add(output.sentence());
            output.conductors().stream()
                    .limit(MOST_CONDUCTORS)
                    .forEach(each -> steps.add(each.wire() + " comes to " + Formats.celsius(each.hottestCelsius())
                            + (each.stands() ? ", which it stands." : ", which it does not stand.")));
        });
        return steps;
    }

    private static String told(TypeCandidate type) {
        String outcome =
                switch (type.outcome()) {
                    case CHOSEN -> "Proposed: ";
                    case WOULD_SERVE -> "Not needed: ";
                    case REFUSED -> "Refused: ";
                };
        return outcome + type.words() + "; " + type.reason() + " (" + type.source() + ")";
    }
}
