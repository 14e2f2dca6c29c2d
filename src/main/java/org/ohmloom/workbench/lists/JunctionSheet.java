package org.ohmloom.workbench.lists;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.WireEnd;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ElementSheet;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** Splices and ground points as one list. */
final class JunctionSheet implements ElementSheet<JunctionSheet.Row> {
    private static final Words WORDS = Words.of("lists");

    private static final double MILLIOHMS_IN_AN_OHM = 1000;

    /**
     * One splice or ground point.
     *
     * @param element   the splice or ground point
     * @param kind      splice or ground point
     * @param name      what people call it
     * @param place     where it is
     * @param jointOhms resistance of its joint, ohm
     * @param wires     count of wires at it
     * @param volts     its voltage farthest from the datum, V
     */
    record Row(
            Element element,
            String kind,
            String name,
            String place,
            double jointOhms,
            int wires,
            OptionalDouble volts) {
        ElementId id() {
            return element.id();
        }
    }

    @Override
    public String title() {
        return WORDS.get("junction.splices-grounds");
    }

    @Override
    public List<Column<Row>> columns() {
        return List.of(
                Column.<Row>text(
                        WORDS.term("junction.junction"), WORDS.get("junction.junction.about"), 9, row -> row.id()
                                .value()),
                Column.text(WORDS.term("junction.kind"), WORDS.get("junction.kind.about"), 13, Row::kind),
                Column.text(WORDS.term("junction.name"), WORDS.get("junction.name.about"), 30, Row::name),
                Column.<Row>text(WORDS.term("junction.where"), WORDS.get("junction.where.about"), 26, Row::place)
                        .quantities(),
                Column.<Row>number(
                        WORDS.term("junction.joint"),
                        "mΩ",
                        WORDS.get("junction.joint.about"),
                        row -> CellText.of(row.jointOhms() * MILLIOHMS_IN_AN_OHM)),
                Column.number(
                        WORDS.term("junction.wires"),
                        "",
                        WORDS.get("junction.wires.about"),
                        row -> CellText.of(row.wires())),
                Column.number(
                        WORDS.term("junction.volts"),
                        "V",
                        WORDS.get("junction.volts.about"),
                        row -> CellText.of(row.volts())));
    }

    @Override
    public List<Row> rows(Readout readout) {
        Harness harness = readout.harness();
        List<Row> rows = new ArrayList<>();
        for (Splice splice : harness.splices().all()) {
            rows.add(new Row(
                    splice,
                    "splice",
                    splice.name(),
                    splice.place().map(TradeWords::place).orElse(""),
                    splice.jointOhms(),
                    count(harness, new WireEnd.AtSplice(splice.id())),
                    volts(readout, splice.id())));
        }
        for (GroundPoint ground : harness.grounds().all()) {
            rows.add(new Row(
                    ground,
                    WORDS.get("junction.ground-point"),
                    ground.name(),
                    harness.bodies().get(ground.body()).name(),
                    ground.jointOhms(),
                    count(harness, new WireEnd.AtGround(ground.id())),
                    volts(readout, ground.id())));
        }
        return rows;
    }

    private static int count(Harness harness, WireEnd end) {
        return (int) harness.wires().all().stream()
                .filter(wire -> wire.ends().contains(end))
                .count();
    }

    private static OptionalDouble volts(Readout readout, ElementId id) {
        Optional<Double> found = readout.volts(new PointId(id.value()));
        return found.isPresent() ? OptionalDouble.of(found.get()) : OptionalDouble.empty();
    }

    @Override
    public ElementId id(Row row) {
        return row.id();
    }
}
