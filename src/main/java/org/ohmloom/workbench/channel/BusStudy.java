package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.study.BusCharts;
import org.ohmloom.model.ElementId;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.bus.traffic.BusSignal;
import org.ohmloom.signal.bus.wiring.BusWiring;
import org.ohmloom.signal.study.BusReading;
import org.ohmloom.tables.BusFigure;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.study.Picture;
import org.ohmloom.workbench.study.Study;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** The data buses with their messages: how they are wired, how busy they are, and how late each message can come. */
final class BusStudy implements Study<BusRow> {

    private final Words words = Words.of("channels");

    @Override
    public String key() {
        return "channels-bus";
    }

    @Override
    public String title() {
        return words.get("bus");
    }

    @Override
    public String about() {
        return words.get("bus.about");
    }

    @Override
    public List<Column<BusRow>> columns() {
        return List.of(
                text("bus.which", 10, row -> row.reading().bus().id().value()),
                text("bus.message", 22, row -> row.message()
                        .map(each -> each.message().id())
                        .orElseGet(
                                () -> words.get("bus.whole", row.reading().bus().name()))),
                text("bus.identifier", 11, row -> row.message()
                        .map(each -> each.identifierText())
                        .orElseGet(
                                () -> Formats.in(row.reading().bus().bitsPerSecond() / 1000, Unit.KILOBIT_PER_SECOND))),
                text("bus.sender", 8, row -> row.message()
                        .map(each -> each.sender().value())
                        .orElse("")),
                text("bus.bytes", 6, row -> row.message()
                        .map(each -> String.valueOf(each.message().dataBytes()))
                        .orElse("")),
                text("bus.period", 8, row -> row.message()
                        .map(each -> Formats.seconds(each.message().periodSeconds()))
                        .orElse("")),
                cell("bus.load", 8, BusStudy::load),
                cell("bus.response", 12, this::response),
                text("bus.deadline", 8, row -> row.message()
                        .map(each -> Formats.seconds(each.message().deadlineSeconds()))
                        .orElse("")),
                text("bus.values", 40, BusStudy::values));
    }

    private Column<BusRow> text(String key, int letters, Function<BusRow, String> cell) {
        return Column.text(words.term(key), words.get(key + ".about"), letters, cell);
    }

    private Column<BusRow> cell(String key, int letters, Function<BusRow, CellText> cell) {
        return new Column<>(words.term(key), "", words.get(key + ".about"), letters, cell, Optional.empty());
    }

    private static CellText load(BusRow row) {
        double share = row.timing()
                .map(each -> each.frameSeconds() / each.message().periodSeconds())
                .orElseGet(() -> row.reading().traffic().loadFraction());
        boolean over = row.message().isEmpty() && share > mostLoad();
        return CellText.of(Formats.percent(share)).in(over ? Tone.WARNING : Tone.PLAIN);
    }

    private static double mostLoad() {
        return WireTables.bundled().signals().figure(BusFigure.LOAD_MOST).value();
    }

    private CellText response(BusRow row) {
        return row.timing()
                .map(each -> CellText.of(
                                each.responseSeconds().isPresent()
                                        ? Formats.seconds(each.responseSeconds().getAsDouble())
                                        : words.get("bus.no-bound"))
                        .in(each.isInTime() ? Tone.PLAIN : Tone.ERROR))
                .orElse(CellText.EMPTY);
    }

    private static String values(BusRow row) {
        return row.message()
                .map(each -> each.signals().stream().map(BusSignal::name).collect(Collectors.joining(", ")))
                .orElse("");
    }

    @Override
    public List<BusRow> rows(Readout readout) {
        List<BusRow> rows = new ArrayList<>();
        readout.analysis()
                .ifPresent(results -> results.evidence().signals().buses().forEach(reading -> {
                    rows.add(new BusRow(reading, Optional.empty()));
                    reading.traffic().messages().forEach(each -> rows.add(new BusRow(reading, Optional.of(each))));
                }));
        return rows;
    }

    @Override
    public ElementId id(BusRow row) {
        return row.reading().bus().id();
    }

    @Override
    public String key(BusRow row) {
        return row.reading().bus().id()
                + row.message().map(each -> " " + each.identifierText()).orElse("");
    }

    @Override
    public List<String> about(BusRow row) {
        List<String> ids = new ArrayList<>();
        row.message().ifPresent(each -> ids.add(each.sender().value()));
        row.reading().wiring().wires().forEach(wire -> ids.add(wire.value()));
        return ids;
    }

    @Override
    public String nothing(Readout readout) {
        return words.get("bus.nothing");
    }

    @Override
    public Optional<Picture> picture(Readout readout, BusRow row, Optional<String> selected) {
        Optional<BarChart> chart = row.message().isEmpty()
                ? BusCharts.load(row.reading(), mostLoad())
                : BusCharts.responses(row.reading());
        return chart.map(each ->
                new Picture(Words.said(each.title()), (fonts, widthMm, heightMm) -> each.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, BusRow row) {
        List<String> steps = new ArrayList<>();
        row.timing().ifPresentOrElse(timing -> steps.add(late(timing)), () -> wiring(row.reading(), steps));
        return steps;
    }

    private String late(MessageTiming timing) {
        return words.get(
                "bus.timing",
                Formats.seconds(timing.frameSeconds()),
                Formats.seconds(timing.blockingSeconds()),
                timing.responseSeconds().isPresent()
                        ? Formats.seconds(timing.responseSeconds().getAsDouble())
                        : words.get("bus.no-bound"),
                Formats.seconds(timing.message().deadlineSeconds()));
    }

    private void wiring(BusReading reading, List<String> steps) {
        BusWiring wiring = reading.wiring();
        steps.add(words.get(
                "bus.lengths",
                Formats.metres(wiring.trunkMetres()),
                Formats.metres(wiring.stubsMetres()),
                wiring.nodes().size()));
        wiring.loopOhms()
                .ifPresent(ohms ->
                        steps.add(words.get("bus.loop", Formats.ohms(ohms), Formats.ohms(wiring.allowedOhms()))));
        wiring.problems().stream().map(problem -> Words.said(problem.words())).forEach(steps::add);
        if (!reading.traffic().unsent().isEmpty()) {
            steps.add(
                    words.get("bus.unsent", String.join(", ", reading.traffic().unsent())));
        }
        if (!reading.traffic().seldom().isEmpty()) {
            steps.add(
                    words.get("bus.seldom", String.join(", ", reading.traffic().seldom())));
        }
        if (!reading.traffic().clashing().isEmpty()) {
            steps.add(words.get(
                    "bus.clashing", String.join(", ", reading.traffic().clashing())));
        }
    }
}
