package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.draw.study.CalibrationCharts;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Measurement;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.UpdateRate;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.study.Picture;
import org.ohmloom.workbench.study.Study;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.CalibrationText;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The curve of every channel, how finely its input tells it, and what does not serve. */
final class CalibrationStudy implements Study<ChannelReading> {

    private final Words words = Words.of("channels");

    @Override
    public String key() {
        return "channels-calibration";
    }

    @Override
    public String title() {
        return words.get("calibration");
    }

    @Override
    public String about() {
        return words.get("calibration.about");
    }

    @Override
    public List<Column<ChannelReading>> columns() {
        return List.of(
                text("calibration.channel", 18, row -> row.channel().name()),
                text(
                        "calibration.sensor",
                        8,
                        row -> row.channel().component().id().value()),
                text("calibration.read-at", 10, row -> row.channel().at()),
                text("calibration.kind", 18, row -> row.channel()
                        .measurement()
                        .map(each -> TradeWords.kind(each.calibration()))
                        .orElse("")),
                text("calibration.gives", 24, row -> row.channel()
                        .measurement()
                        .map(each -> CalibrationText.of(each.calibration()))
                        .orElse("")),
                text("calibration.use", 14, row -> PinWords.use(row.channel().sensor())),
                text("calibration.step", 12, CalibrationStudy::step),
                text(
                        "calibration.rate",
                        8,
                        row -> row.rate().hertz().isPresent()
                                ? Formats.hertz(row.rate().hertz().getAsDouble())
                                : ""),
                new Column<>(
                        words.term("calibration.wrong"),
                        "",
                        words.get("calibration.wrong.about"),
                        40,
                        row -> CellText.of(String.join("; ", problems(row))).in(Tone.WARNING),
                        Optional.empty()));
    }

    private Column<ChannelReading> text(String key, int letters, Function<ChannelReading, String> cell) {
        return Column.text(words.term(key), words.get(key + ".about"), letters, cell);
    }

    private static String step(ChannelReading row) {
        return row.calibration()
                .flatMap(SensorCalibration::resolution)
                .map(step -> Formats.number(step.coarsest()) + " " + unit(row))
                .orElse("");
    }

    private static String unit(ChannelReading row) {
        return row.channel().measurement().map(Measurement::unit).orElse("");
    }

    private static List<String> problems(ChannelReading row) {
        List<String> all = new ArrayList<>();
        row.calibration().ifPresent(each -> each.problems().stream()
                .map(problem -> Words.said(problem.words()))
                .forEach(all::add));
        row.rate().remarks().stream().map(remark -> Words.said(remark.words())).forEach(all::add);
        return all;
    }

    @Override
    public List<ChannelReading> rows(Readout readout) {
        return readout.analysis()
                .map(results -> results.evidence().signals().channels())
                .orElse(List.of());
    }

    @Override
    public ElementId id(ChannelReading row) {
        return row.channel().component().id();
    }

    @Override
    public String nothing(Readout readout) {
        return words.get("calibration.nothing");
    }

    @Override
    public Optional<Picture> picture(Readout readout, ChannelReading row, Optional<String> selected) {
        return row.calibration()
                .flatMap(CalibrationCharts::of)
                .map(chart -> new Picture(Words.said(chart.title()), chart::scene));
    }

    @Override
    public List<String> steps(Readout readout, ChannelReading row) {
        List<String> steps = new ArrayList<>();
        row.calibration().map(each -> new CalibrationTold(words, each)).ifPresent(each -> {
            steps.addAll(each.figures());
            steps.addAll(each.problems());
        });
        row.rate().hertz().ifPresent(hertz -> steps.add(words.get("calibration.sent", Formats.hertz(hertz))));
        row.rate()
                .timeConstantSeconds()
                .ifPresent(seconds -> steps.add(words.get(
                        "calibration.tau",
                        Formats.seconds(seconds),
                        row.rate().timeConstantSource(),
                        Formats.hertz(UpdateRate.suggested(seconds)))));
        row.rate()
                .remarks()
                .forEach(remark -> steps.add(words.get(
                        "calibration.problem", row.channel().component().id(), remark.words())));
        return steps;
    }
}
