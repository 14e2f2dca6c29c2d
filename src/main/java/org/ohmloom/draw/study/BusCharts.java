package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.MessageTiming;
import org.ohmloom.signal.study.BusReading;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Text;

/** The load of a data bus: what share of its time each message takes, and how late each can come. */
public final class BusCharts {

    private BusCharts() {}

    /** Share of the bus's time by message and altogether, against what practice keeps; empty without messages. */
    public static Optional<BarChart> load(BusReading reading, double mostFraction) {
        if (reading.traffic().timings().isEmpty()) {
            return Optional.empty();
        }
        List<BarRow> rows = new ArrayList<>();
        rows.add(new BarRow(
                StudyTexts.text("bus.all"),
                List.of(OptionalDouble.of(reading.traffic().loadFraction())),
                OptionalDouble.of(mostFraction),
                Optional.of(reading.bus().id().value())));
        for (MessageTiming timing : reading.traffic().timings()) {
            rows.add(new BarRow(
                    Text.of(timing.message().id()),
                    List.of(OptionalDouble.of(
                            timing.frameSeconds() / timing.message().periodSeconds())),
                    OptionalDouble.empty(),
                    Optional.of(reading.bus().id().value())));
        }
        return Optional.of(new BarChart(
                StudyTexts.text("bus.load", title(reading.bus())),
                StudyTexts.text("bus.load.about", rate(reading.bus())),
                Dimension.RATIO,
                List.of(StudyTexts.text("bus.share")),
                StudyTexts.text("bus.most"),
                rows));
    }

    /** Worst response time by message, first priority first, against its deadline; empty where none can be told. */
    public static Optional<BarChart> responses(BusReading reading) {
        List<BarRow> rows = new ArrayList<>();
        for (MessageTiming timing : reading.traffic().timings()) {
            rows.add(new BarRow(
                    Text.of(timing.message().id()),
                    List.of(timing.responseSeconds(), OptionalDouble.of(timing.frameSeconds())),
                    OptionalDouble.of(timing.message().deadlineSeconds()),
                    Optional.of(reading.bus().id().value())));
        }
        return reading.traffic().timings().stream()
                        .anyMatch(timing -> timing.responseSeconds().isPresent())
                ? Optional.of(new BarChart(
                        StudyTexts.text("bus.responses", title(reading.bus())),
                        StudyTexts.text("bus.responses.about", rate(reading.bus())),
                        Dimension.TIME,
                        List.of(StudyTexts.text("bus.worst"), StudyTexts.text("bus.frame")),
                        StudyTexts.text("bus.deadline"),
                        rows))
                : Optional.empty();
    }

    private static String title(DataBus bus) {
        return bus.id() + " " + bus.name();
    }

    private static String rate(DataBus bus) {
        return Formats.in(bus.bitsPerSecond() / 1000, Unit.KILOBIT_PER_SECOND);
    }
}
