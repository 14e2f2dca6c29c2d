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

/** Loops of the return network: their members in order, what flows round them, and what a field drives in them. */
public final class LoopStudy implements Study<LoopStudy.Row> {

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
        return "Loops";
    }

    @Override
    public String about() {
        return "Loops of the return network, their currents in order; the layout shows the loop that is chosen";
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.text("Loop", "Its wires, shields and straps in order", 22, Row::name),
                Column.number(
                        "Members",
                        "",
                        "Conductors, contacts and joints in it",
                        row -> CellText.of(row.loop().loop().members().size())),
                Column.number(
                        "Resistance",
                        "mΩ",
                        "Resistance round it",
                        row -> CellText.of(1000 * row.loop().ohms())),
                Column.number(
                        "Stray",
                        "A",
                        "Largest load current in a member meant for signals, shield or case",
                        row -> row.loop()
                                .stray()
                                .map(stray -> ReturnRows.over(CellText.of(stray.amps()), "in " + stray.member()))
                                .orElse(CellText.EMPTY)),
                Column.text("in", "The member with the stray current", 8, row -> row.loop()
                        .stray()
                        .map(stray -> stray.member().value())
                        .orElse("")),
                Column.number("Area", "cm²", "Area it encloses on the layout", row -> row.loop()
                        .enclosed()
                        .map(enclosed -> CellText.of(1e4 * enclosed.squareMetres()))
                        .orElse(CellText.EMPTY)),
                Column.number("Induced", "mV", "Voltage the stated field induces", row -> row.loop()
                        .field()
                        .map(field -> ReturnRows.millivolts(field.volts()))
                        .orElse(CellText.EMPTY)),
                Column.number("drives", "A", "Current that drives round it", row -> row.loop()
                        .field()
                        .map(field -> CellText.of(field.amps()))
                        .orElse(CellText.EMPTY)),
                Column.text("Intended", "Why it is meant to be", 16, row -> row.loop()
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
        return "No return makes a loop. One appears where two returns lead to the same place: two ground wires from one unit,"
                + " a shield joined at both ends, a device with a return wire and a grounded case.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, Row row, Optional<String> selected) {
        return readout.analysis()
                .flatMap(results ->
                        LoopCharts.of(readout.harness(), results.evidence().drawn(), row.loop(), readout.state()))
                .map(chart -> new Picture(
                        chart.title() + ": its members in order with the current in each",
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, Row row) {
        List<String> steps = new ArrayList<>();
        LoopReading loop = row.loop();
        row.loop().intended().ifPresent(reason -> steps.add("Intended: " + reason + "."));
        steps.add("Round it: " + Formats.ohms(loop.ohms()) + " through "
                + TradeWords.count(loop.loop().members().size(), "member")
                + "; chosen here, it lights up on the layout.");
        loop.stray()
                .ifPresent(
                        stray -> steps.add("Stray: " + Formats.amps(stray.amps()) + " of load return current (largest "
                                + Formats.amps(stray.onAmps()) + ") in " + stray.member()
                                + ", which is meant for signals, shield or"
                                + " case only, in " + readout.stateName(stray.state()) + "."));
        loop.enclosed()
                .ifPresent(enclosed -> steps.add("Area: " + Formats.number(1e4 * enclosed.squareMetres()) + " cm², "
                        + enclosed.how() + ". Inductance: " + henries(enclosed.henries()) + enclosed.formula()));
        loop.field()
                .ifPresent(field -> steps.add("Field: 2 pi f B A with f = " + Formats.hertz(field.hertz()) + ", B = "
                        + Formats.number(1e6 * field.tesla()) + " µT gives " + Formats.volts(field.volts())
                        + ", which drives " + Formats.amps(field.amps()) + " over |R + j 2 pi f L|."));
        return steps;
    }

    private static String henries(OptionalDouble henries) {
        return henries.isPresent() ? Formats.quantity(henries.getAsDouble(), Dimension.INDUCTANCE) + ", " : "";
    }
}
