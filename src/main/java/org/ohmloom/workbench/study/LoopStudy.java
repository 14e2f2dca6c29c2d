package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.draw.study.LoopCharts;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Loops of the return network: their members in order, what flows round them, and what a field drives in them. */
public final class LoopStudy implements Study<LoopStudy.Row> {
    private static final Words WORDS = Words.of("studies");

    /**
     * A loop.
     *
     * @param loop     the loop
     * @param elements elements it runs through, in order
     * @param name     its conductors
     * @param state    the state it is shown in
     */
    record Row(LoopReading loop, List<ElementId> elements, String name, Optional<StateId> state) {

        /** The element it is known by: its first wire; without one the first that is more than a stretch of chassis. */
        ElementId lead() {
            return elements.stream()
                    .filter(WireId.class::isInstance)
                    .findFirst()
                    .or(() -> elements.stream()
                            .filter(id -> !(id instanceof ChassisBodyId))
                            .findFirst())
                    .orElse(elements.get(0));
        }
    }

    @Override
    public String key() {
        return "returns-loops";
    }

    @Override
    public String title() {
        return WORDS.get("loop.loops");
    }

    @Override
    public String about() {
        return WORDS.get("loop.loops-of-the-return");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text(WORDS.term("loop.loop"), WORDS.get("loop.loop.about"), 22, Row::name),
                Column.number(
                        WORDS.term("loop.members"),
                        "",
                        WORDS.get("loop.members.about"),
                        row -> CellText.of(row.loop().loop().members().size())),
                Column.number(
                        WORDS.term("loop.resistance"),
                        "mΩ",
                        WORDS.get("loop.resistance.about"),
                        row -> CellText.of(1000 * row.loop().ohms())),
                Column.number(WORDS.term("loop.stray"), "A", WORDS.get("loop.stray.about"), row -> row.loop()
                        .stray()
                        .map(stray -> ReturnRows.over(CellText.of(stray.amps()), "in " + stray.member()))
                        .orElse(CellText.EMPTY)),
                Column.text(WORDS.term("loop.in"), WORDS.get("loop.in.about"), 8, row -> row.loop()
                        .stray()
                        .map(stray -> stray.member().value())
                        .orElse("")),
                Column.number(WORDS.term("loop.area"), "cm²", WORDS.get("loop.area.about"), row -> row.loop()
                        .enclosed()
                        .map(enclosed -> CellText.of(1e4 * enclosed.squareMetres()))
                        .orElse(CellText.EMPTY)),
                Column.number(WORDS.term("loop.induced"), "mV", WORDS.get("loop.induced.about"), row -> row.loop()
                        .field()
                        .map(field -> ReturnRows.millivolts(field.volts()))
                        .orElse(CellText.EMPTY)),
                Column.number(WORDS.term("loop.drives"), "A", WORDS.get("loop.drives.about"), row -> row.loop()
                        .field()
                        .map(field -> CellText.of(field.amps()))
                        .orElse(CellText.EMPTY)),
                Column.text(WORDS.term("loop.intended"), WORDS.get("loop.intended.about"), 16, row -> row.loop()
                        .intended()
                        .orElse("")));
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.LOOPS);
    }

    @Override
    public List<Row> rows(Readout readout) {
        if (readout.analysis().isEmpty()) {
            return List.of();
        }
        Network drawn = readout.analysis().get().evidence().drawn();
        List<Row> rows = new ArrayList<>();
        for (LoopReading loop : ReturnRows.study(readout).loops()) {
            List<ElementId> elements = LoopCharts.elements(drawn, loop);
            if (!elements.isEmpty()) {
                rows.add(new Row(
                        loop,
                        elements,
                        LoopCharts.conductors(drawn, loop),
                        ReturnReadings.state(loop, readout.state())));
            }
        }
        rows.sort(Comparator.comparing((Row row) -> row.loop().intended().isPresent())
                .thenComparing(Comparator.comparingDouble(LoopStudy::strayAmps).reversed()));
        return rows;
    }

    private static double strayAmps(Row row) {
        return row.loop().stray().map(LoopReading.Stray::amps).orElse(0.0);
    }

    @Override
    public ElementId id(Row row) {
        return row.lead();
    }

    @Override
    public Optional<ElementId> lead(Readout readout, String selected) {
        return rows(readout).stream()
                .filter(row -> row.elements().stream().anyMatch(id -> id.value().equals(selected)))
                .map(Row::lead)
                .findFirst();
    }

    @Override
    public List<ElementId> path(Readout readout, Row row) {
        return row.elements();
    }

    @Override
    public String nothing(Readout readout) {
        return WORDS.get("loop.no-return-makes-a");
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        return readout.analysis()
                .flatMap(results ->
                        LoopCharts.of(readout.harness(), results.evidence().drawn(), row.loop(), readout.state()))
                .map(chart -> new Picture(
                        WORDS.get("loop.its-members-in-order", chart.title()),
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        LoopReading loop = row.loop();
        row.loop().intended().ifPresent(reason -> steps.add(WORDS.get("loop.intended-2", reason)));
        steps.add(WORDS.get(
                "loop.round-it-through-chosen",
                Formats.ohms(loop.ohms()),
                TradeWords.count(loop.loop().members().size(), "member")));
        loop.stray()
                .ifPresent(stray -> steps.add(WORDS.get(
                        "loop.stray-of-load-return",
                        Formats.amps(stray.amps()),
                        Formats.amps(stray.onAmps()),
                        stray.member(),
                        readout.stateName(stray.state()))));
        loop.enclosed()
                .ifPresent(enclosed -> steps.add(WORDS.get(
                        "loop.area-cm-inductance",
                        Formats.number(1e4 * enclosed.squareMetres()),
                        enclosed.how(),
                        henries(enclosed.henries()),
                        enclosed.formula())));
        loop.field()
                .ifPresent(field -> steps.add(WORDS.get(
                        "loop.field-2-pi-f",
                        Formats.hertz(field.hertz()),
                        Formats.number(1e6 * field.tesla()),
                        Formats.volts(field.volts()),
                        Formats.amps(field.amps()))));
        return steps;
    }

    private static String henries(OptionalDouble henries) {
        return henries.isPresent() ? Formats.quantity(henries.getAsDouble(), Dimension.INDUCTANCE) + ", " : "";
    }
}
