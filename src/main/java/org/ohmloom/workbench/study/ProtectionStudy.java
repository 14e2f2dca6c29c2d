package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.ohmloom.size.protection.DeviceProposal;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.Fault;
import org.ohmloom.size.protection.OutputProtection;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.size.protection.TypeCandidate;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Constants;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Fuses, breakers and outputs that limit: what each carries, protects, clears and rides through. */
public final class ProtectionStudy implements Study<ProtectionStudy.Row> {
    private static final Words WORDS = Words.of("studies");

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
                            ? CellText.of(Words.said(each.chosen().text()), 0)
                                    .in(Tone.WARNING)
                                    .saying(Words.said(each.chosen().why()))
                            : CellText.of(WORDS.get("protection.stays"), 1)
                                    .saying(Words.said(each.chosen().why())))
                    .orElse(CellText.EMPTY);
        }

        CellText verdict(Check.Aspect aspect) {
            Optional<Check> check = device.flatMap(each -> each.check(aspect));
            if (check.isEmpty()) {
                return CellText.EMPTY;
            }
            String tip = Words.said(check.get().told());
            return switch (check.get().verdict()) {
                case MET -> CellText.of(WORDS.get("protection.yes"), 2).saying(tip);
                case NOT_MET -> CellText.of(WORDS.get("protection.no"), 0)
                        .in(Tone.ERROR)
                        .saying(tip);
                case NOT_JUDGED -> CellText.of(WORDS.get("protection.open"), 1)
                        .in(Tone.SOFT)
                        .saying(tip);
            };
        }

        CellText number(Function<DeviceProtection, OptionalDouble> value) {
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
                        .map(burnt -> CellText.of(WORDS.get("protection.no"), 0)
                                .in(Tone.ERROR)
                                .saying(WORDS.get("protection.does-not-stand-a", burnt.wire())))
                        .orElse(CellText.of(WORDS.get("protection.yes"), 2));
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
        return WORDS.get("protection.protection");
    }

    @Override
    public String about() {
        return WORDS.get("protection.what-every-fuse-breaker");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("protection.device"), WORDS.get("protection.device.about"), 7, Row::label),
                Column.number(WORDS.term("protection.rating"), "A", WORDS.get("protection.rating.about"), Row::rating),
                Column.number(
                        WORDS.term("protection.runs-at"),
                        "A",
                        WORDS.get("protection.runs-at.about"),
                        row -> row.number(each -> OptionalDouble.of(each.loadAmps()))),
                verdict(WORDS.term("protection.carries"), WORDS.get("protection.carries.about"), Check.Aspect.CARRIES),
                verdict(
                        WORDS.term("protection.starts"),
                        WORDS.get("protection.starts.about"),
                        Check.Aspect.RIDES_THROUGH),
                new Column<>(
                        WORDS.term("protection.protects"),
                        "",
                        WORDS.get("protection.protects.about"),
                        8,
                        Row::protects,
                        Optional.empty()),
                verdict(
                        WORDS.term("protection.clears"),
                        WORDS.get("protection.clears.about"),
                        Check.Aspect.CLEARS_SMALLEST),
                verdict(
                        WORDS.term("protection.breaks"),
                        WORDS.get("protection.breaks.about"),
                        Check.Aspect.BREAKS_LARGEST),
                verdict(WORDS.term("protection.volts"), WORDS.get("protection.volts.about"), Check.Aspect.VOLTAGE),
                verdict(
                        WORDS.term("protection.selective"),
                        WORDS.get("protection.selective.about"),
                        Check.Aspect.SELECTIVE),
                Column.number(
                        WORDS.term("protection.may-carry"),
                        "A",
                        WORDS.get("protection.may-carry.about"),
                        row -> row.number(
                                each -> OptionalDouble.of(each.rating().continuousAmps()))),
                Column.text(
                        WORDS.term("protection.weakest"), WORDS.get("protection.weakest.about"), 8, row -> row.device()
                                .flatMap(DeviceProtection::weakest)
                                .map(each -> each.wire().value())
                                .orElse("")),
                Column.number(
                        WORDS.term("protection.smallest-fault"),
                        "A",
                        WORDS.get("protection.smallest-fault.about"),
                        row -> row.number(each -> fault(each.minimumFault()))),
                Column.number(
                        WORDS.term("protection.opens-in"),
                        "s",
                        WORDS.get("protection.opens-in.about"),
                        row -> row.number(DeviceProtection::openSeconds)),
                Column.number(
                        WORDS.term("protection.largest-fault"),
                        "A",
                        WORDS.get("protection.largest-fault.about"),
                        row -> row.number(each -> fault(each.maximumFault()))),
                Column.number(
                        WORDS.term("protection.breaks-up-to"),
                        "A",
                        WORDS.get("protection.breaks-up-to.about"),
                        row -> row.number(DeviceProtection::breakingAmps)),
                new Column<Row>(
                                WORDS.term("protection.proposed"),
                                "",
                                WORDS.get("protection.proposed.about"),
                                18,
                                Row::proposed,
                                Optional.empty())
                        .quantities(),
                Column.text(WORDS.term("protection.name"), WORDS.get("protection.name.about"), 22, Row::name));
    }

    private static Column<Row> verdict(Term title, String tip, Check.Aspect aspect) {
        return new Column<>(title, "", tip, 6, row -> row.verdict(aspect), Optional.empty());
    }

    private static OptionalDouble fault(Optional<Fault> fault) {
        return fault.map(each -> OptionalDouble.of(each.deviceAmps())).orElse(OptionalDouble.empty());
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
        return WORDS.get("protection.the-harness-has-no");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        Optional<TimeCurrentChart> chart = selected.flatMap(id -> relying(readout, id)).stream()
                .filter(wire -> results(readout).relying().get(wire).contains(row.id()))
                .flatMap(wire -> ProtectionCharts.ofWire(readout.harness(), results(readout), wire).stream())
                .findFirst()
                .or(() -> ProtectionCharts.ofDevice(readout.harness(), results(readout), row.id()));
        return chart.map(each -> new Picture(
                WORDS.get(
                        "protection.opening-times-over-currents",
                        each.title(),
                        each.currents().stream()
                                .map(current -> Words.said(current.label()))
                                .collect(Collectors.joining(", "))),
                each::scene));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        row.device().ifPresent(device -> {
            for (Check check : device.checks()) {
                steps.add(TradeWords.capital(TradeWords.named(check.aspect())) + ": "
                        + Words.said(Constants.text(check.verdict()).lowerCase()) + ". "
                        + TradeWords.capital(Words.said(check.told())) + " ("
                        + Words.said(check.source()) + ")");
            }
            steps.add(WORDS.get("protection.may-carry-2", device.rating().text()));
            device.minimumFault().ifPresent(fault -> steps.add(WORDS.get("protection.smallest-fault-2", fault.told())));
            device.maximumFault().ifPresent(fault -> steps.add(WORDS.get("protection.largest-fault-2", fault.told())));
            device.starts().forEach(start -> steps.add(WORDS.get("protection.start-of", start.load(), start.told())));
            device.conductors().stream()
                    .limit(MOST_CONDUCTORS)
                    .map(conductor -> Words.said(conductor.text()))
                    .forEach(steps::add);
            device.selectivity().forEach(each -> steps.add(WORDS.get("protection.upstream", each.told())));
        });
        row.proposal().ifPresent(proposal -> proposal.types().forEach(type -> steps.add(told(type))));
        row.output().ifPresent(output -> {
            steps.add(Words.said(output.told()));
            output.conductors().stream()
                    .limit(MOST_CONDUCTORS)
                    .forEach(each -> steps.add(WORDS.get(
                            "protection.comes-to",
                            each.wire(),
                            Formats.celsius(each.hottestCelsius()),
                            each.stands()
                                    ? WORDS.get("protection.which-it-stands")
                                    : WORDS.get("protection.which-it-does-not"))));
        });
        return steps;
    }

    private static String told(TypeCandidate type) {
        String outcome =
                switch (type.outcome()) {
                    case CHOSEN -> WORDS.get("protection.proposed-2");
                    case WOULD_SERVE -> WORDS.get("protection.not-needed");
                    case REFUSED -> WORDS.get("protection.refused");
                };
        return outcome + Words.said(type.text()) + "; " + Words.said(type.why()) + " (" + Words.said(type.source())
                + ")";
    }
}
