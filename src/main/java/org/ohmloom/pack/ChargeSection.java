package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.ChargeCharts;
import org.ohmloom.draw.study.Named;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.solve.charge.AlternatorBalance;
import org.ohmloom.solve.charge.BatteryBalance;
import org.ohmloom.solve.charge.BatteryRun;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.charge.SequenceRun;
import org.ohmloom.solve.charge.StateCharge;
import org.ohmloom.units.Unit;

/** What batteries and alternators give in every state, and the charge through timed sequences of states. */
final class ChargeSection {

    private static final double PICTURE_HEIGHT_MM = 70;

    private static final List<Column> STATES = List.of(
            Column.words("State"),
            Column.code("Source"),
            Column.words("Does"),
            Column.number("Gives", Unit.AMP, 1),
            Column.number("Limit", Unit.AMP, 0),
            Column.number("Voltage", Unit.VOLT, 2),
            Column.number("Open circuit, set point", Unit.VOLT, 2),
            Column.number("Charge", Unit.PERCENT, 0),
            Column.number("Temperature", Unit.DEGREE_CELSIUS, 0),
            Column.number("Resistance", Unit.MILLIOHM, 1),
            Column.number("Empty after", Unit.HOUR, 1),
            Column.number("By ampere hours", Unit.HOUR, 1));

    private static final List<Column> SEQUENCES = List.of(
            Column.words("Sequence"),
            Column.code("Battery"),
            Column.number("Capacity", Unit.AMP_HOUR, 0),
            Column.number("At first", Unit.PERCENT, 0),
            Column.number("At last", Unit.PERCENT, 0),
            Column.number("Drawn", Unit.AMP_HOUR, 1),
            Column.number("Charged", Unit.AMP_HOUR, 1),
            Column.number("Lowest", Unit.VOLT, 2),
            Column.number("Voltage asked for", Unit.VOLT, 1),
            Column.number("Reached after", Unit.MINUTE, 0),
            Column.number("Empty after", Unit.MINUTE, 0));

    private static final List<Column> LOADS = List.of(
            Column.words("State"),
            Column.number("Continuous", Unit.AMP, 1),
            Column.number("Over 5 s", Unit.AMP, 1),
            Column.number("Over 5 min", Unit.AMP, 1),
            Column.number("Over 30 min", Unit.AMP, 1),
            Column.number("Always on", Unit.AMP, 1),
            Column.number("Now and then", Unit.AMP, 1),
            Column.number("Two-column sum", Unit.AMP, 1),
            Column.number("Alternators", Unit.AMP, 0),
            Column.number("Of them", Unit.PERCENT, 0));

    private final Analysis analysis;
    private final SceneFonts fonts;

    ChargeSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    List<Block> blocks() {
        ChargeStudy charge = analysis.evidence().charge();
        List<Row> states = new ArrayList<>();
        charge.states().values().forEach(state -> {
            state.alternators().forEach(each -> states.add(alternator(state, each)));
            state.batteries().forEach(each -> states.add(battery(state, each)));
        });
        if (states.isEmpty()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.Heading("Batteries and alternators in every state"));
        blocks.add(new Block.Prose(
                "A battery that gives less than 0 A is charged. \"Empty after\" is at this steady current"
                        + " by Peukert's law; the plain count of ampere hours stands beside it."));
        blocks.add(new Block.Table("source-balance", STATES, states, ""));
        List<Row> loads = charge.tabulations().values().stream()
                .map(each -> Row.of(
                        Cell.text(Named.state(analysis.harness(), each.state())).toned(Cell.Tone.STRONG),
                        Cell.number(each.continuousAmps()),
                        Cell.number(each.fiveSecondAmps()),
                        Cell.number(each.fiveMinuteAmps()),
                        Cell.number(each.halfHourAmps()),
                        Cell.number(each.columnAAmps()),
                        Cell.number(each.columnBAmps()),
                        Cell.number(each.twoColumnAmps()),
                        each.limitAmps() > 0 ? Cell.number(each.limitAmps()) : Cell.empty(),
                        each.limitAmps() > 0 ? Cell.number(100 * each.shareFraction()) : Cell.empty()))
                .toList();
        blocks.add(new Block.Heading("Loads against the alternators"));
        blocks.add(new Block.Table("load-analysis", LOADS, loads, "No load draws in any state."));
        if (!charge.sequences().isEmpty()) {
            sequences(charge, blocks);
        }
        return blocks;
    }

    private void sequences(ChargeStudy charge, List<Block> blocks) {
        List<Row> rows = new ArrayList<>();
        List<Scene> pictures = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (SequenceRun run : charge.sequences()) {
            run.sentences().forEach(sentence -> sentences.add(run.name() + ": " + sentence));
            for (BatteryRun battery : run.batteries()) {
                rows.add(row(run, battery));
                ChargeCharts.sequence(analysis.harness(), run, battery)
                        .map(chart -> chart.scene(fonts, Block.Pictures.HALF_MM, PICTURE_HEIGHT_MM))
                        .ifPresent(pictures::add);
            }
        }
        blocks.add(new Block.Heading("Charge through sequences of states"));
        blocks.add(new Block.Points(sentences));
        blocks.add(new Block.Table("sequences", SEQUENCES, rows, "No battery is connected in a sequence."));
        blocks.add(new Block.Pictures(pictures));
    }

    private static Row row(SequenceRun run, BatteryRun battery) {
        return Row.of(
                Cell.text(run.name()).toned(Cell.Tone.STRONG),
                Cell.text(battery.battery().value()),
                Cell.number(battery.capacityAmpHours()),
                Cell.number(100 * battery.startFraction()),
                Cell.number(100 * battery.endFraction()),
                Cell.number(battery.drawnAmpHours()),
                Cell.number(battery.chargedAmpHours()),
                Cell.number(battery.lowestVolts()),
                Cell.number(run.untilVolts()),
                Cell.number(battery.untilMinutes()),
                Cell.number(battery.emptyMinutes()));
    }

    private Row alternator(StateCharge state, AlternatorBalance each) {
        Cell does =
                switch (each.mode()) {
                    case REGULATES -> Cell.text("holds its set point");
                    case AT_LIMIT -> Cell.missing("gives all it can");
                    case IDLE -> Cell.text("gives nothing");
                    case AT_REST -> Cell.text("at rest");
                };
        return Row.of(
                Cell.text(Named.state(analysis.harness(), state.state())).toned(Cell.Tone.STRONG),
                Cell.text(each.alternator().value()),
                does,
                Cell.number(each.amps()),
                Cell.number(each.limitAmps()),
                Cell.number(each.senseVolts()),
                Cell.number(each.setPointVolts()),
                Cell.empty(),
                Cell.empty(),
                Cell.empty(),
                Cell.empty(),
                Cell.empty());
    }

    private Row battery(StateCharge state, BatteryBalance each) {
        return Row.of(
                Cell.text(Named.state(analysis.harness(), state.state())).toned(Cell.Tone.STRONG),
                Cell.text(each.battery().value()),
                Cell.text(each.discharges() ? "gives" : each.charges() ? "is charged" : "rests"),
                Cell.number(each.amps()),
                Double.isInfinite(each.acceptanceAmps()) || !each.charges()
                        ? Cell.empty()
                        : Cell.number(each.acceptanceAmps()),
                Cell.number(each.volts()),
                Cell.number(each.emfVolts()),
                Cell.number(100 * each.chargeFraction()),
                Cell.number(each.celsius()),
                Cell.number(1000 * each.ohms()),
                hours(each.enduranceHours()),
                hours(each.plainHours()));
    }

    private static Cell hours(OptionalDouble hours) {
        return hours.isPresent() && Double.isFinite(hours.getAsDouble()) ? Cell.number(hours) : Cell.empty();
    }
}
