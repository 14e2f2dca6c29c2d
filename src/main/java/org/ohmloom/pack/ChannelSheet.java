package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Wire;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.signal.calibration.ConverterInput;
import org.ohmloom.signal.calibration.SensorCalibration;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.signal.study.SignalStudy;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;
import org.ohmloom.words.Constants;

/** Every channel with its sensor, rate, colours and what is typed into the unit; then every pin of every unit. */
final class ChannelSheet {

    private static final String REMARK = "Rates are suggestions of 10/(2 pi time constant) where none is entered.";

    private static final List<Column> CHANNELS = List.of(
            Column.code("Unit"),
            Column.code("Pin"),
            Column.words("Channel"),
            Column.code("Sensor").mentioning(),
            Column.words("Measures"),
            Column.words("Type"),
            Column.number("Rate", Unit.HERTZ, 0),
            Column.words("Message"),
            Column.words("Colours: supply, signal, return"),
            Column.words("Set up in the unit"),
            Column.words("Mind"));

    private static final List<Column> PINS = List.of(
            Column.code("Unit"),
            Column.code("Pin"),
            Column.words("Used as"),
            Column.words("Channel"),
            Column.code("Cavity").mentioning(),
            Column.code("Wires").mentioning(),
            Column.words("Colour"),
            Column.code("To").mentioning(),
            Column.number("Limit", Unit.AMP, 2),
            Column.words("Can be"));

    private final Harness harness;
    private final SignalStudy study;
    private final PinEnds ends;

    ChannelSheet(Analysis analysis) {
        this.harness = analysis.harness();
        this.study = analysis.evidence().signals();
        this.ends = new PinEnds(harness);
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(new Block.Heading("Channels"));
        blocks.add(new Block.Table(
                "channels",
                CHANNELS,
                study.channels().stream().map(this::row).toList(),
                "No sensor is read by a unit."));
        boolean any = false;
        for (Component unit : harness.components().all()) {
            if (unit.device() instanceof ControlUnit device) {
                any = true;
                blocks.add(new Block.Heading("Pins of " + unit.id() + ", " + unit.name()));
                blocks.add(new Block.Table(
                        "pins",
                        PINS,
                        device.pins().stream()
                                .map(pin -> pin(unit, device, pin))
                                .toList(),
                        ""));
            }
        }
        if (!any) {
            blocks.add(new Block.Prose("The harness has no control unit."));
        }
        return new Report(blocks, REMARK);
    }

    private Row row(ChannelReading reading) {
        SensorChannel channel = reading.channel();
        Optional<Measurement> measurement = channel.measurement();
        ComponentId sensor = channel.component().id();
        return Row.of(
                Cell.text(channel.unit().id().value()).toned(Cell.Tone.STRONG),
                Cell.text(channel.pin().name()).toned(Cell.Tone.STRONG),
                Cell.text(channel.name()),
                Cell.text(sensor.value()),
                Cell.text(measurement.map(ChannelSheet::measures)),
                Cell.text(words(channel.sensor().kind())),
                Cell.number(reading.rate().hertz()),
                Cell.text(messages(channel)),
                Cell.text(colour(sensor, Sensor.SUPPLY) + ", " + colour(sensor, Sensor.SIGNAL) + ", "
                        + colour(sensor, Sensor.RETURN)),
                reading.calibration().isPresent()
                        ? Cell.text(setUp(reading))
                        : Cell.missing("what it measures is not entered"),
                Cell.text(mind(reading)));
    }

    private static String measures(Measurement of) {
        return of.calibration() instanceof Calibration.SwitchContact
                ? of.quantity()
                : of.quantity() + ", " + Formats.number(of.lowest()) + " to " + Formats.number(of.highest()) + " "
                        + of.unit();
    }

    private String colour(ComponentId sensor, String terminal) {
        String colours = ends.colours(sensor, terminal);
        return colours.isEmpty() ? "none" : colours;
    }

    private String messages(SensorChannel channel) {
        return study.buses().stream()
                .flatMap(bus -> bus.traffic().messageOf(channel).stream()
                        .map(message ->
                                message.message().id() + " on " + bus.bus().id()))
                .collect(Collectors.joining(", "));
    }

    /** What a person types into the unit. */
    private static String setUp(ChannelReading reading) {
        List<String> words = new ArrayList<>();
        Calibration calibration = reading.channel().measurement().orElseThrow().calibration();
        if (calibration instanceof Calibration.Thermocouple bare) {
            words.add("thermocouple, type " + Constants.text(bare.type()).english());
        } else if (calibration instanceof Calibration.SwitchContact) {
            words.add("contact");
        } else {
            reading.calibration()
                    .flatMap(SensorCalibration::curve)
                    .ifPresent(curve -> words.add(
                            curve.rows().isEmpty()
                                    ? curve.formula().english()
                                    : "table of " + curve.formula().english() + " on the calibration sheet"));
        }
        if (calibration instanceof Calibration.AmplifiedThermocouple amplified) {
            words.add("E(T) of thermocouple type "
                    + Constants.text(amplified.type()).english());
        }
        ConverterInput input = reading.calibration().orElseThrow().input();
        if (input.pullUpOhms().isPresent() && input.pullUpVolts().isPresent()) {
            words.add("pull-up " + Formats.ohms(input.pullUpOhms().getAsDouble()) + " to "
                    + Formats.volts(input.pullUpVolts().getAsDouble()));
        }
        input.shuntOhms().ifPresent(ohms -> words.add("shunt " + Formats.ohms(ohms)));
        input.ratiometric()
                .ifPresent(share -> words.add(share ? "against the reference supply" : "against a fixed voltage"));
        input.converterBits().ifPresent(bits -> words.add(bits + " bits"));
        return String.join("; ", words);
    }

    private static String mind(ChannelReading reading) {
        List<String> words = new ArrayList<>();
        if (!reading.channel().wired()) {
            words.add("planned, no wire yet");
        }
        reading.calibration().ifPresent(each -> each.problems()
                .forEach(problem -> words.add(problem.words().english())));
        reading.rate().remarks().forEach(remark -> words.add(remark.words().english()));
        return String.join("; ", words);
    }

    private Row pin(Component unit, ControlUnit device, Pin pin) {
        List<Wire> wires = ends.wires(unit.id(), pin.name());
        String can = pin.capabilities().stream()
                .filter(role -> role != pin.role())
                .map(ChannelSheet::words)
                .collect(Collectors.joining(", "));
        return Row.of(
                Cell.text(unit.id().value()),
                Cell.text(pin.name()).toned(Cell.Tone.STRONG),
                Cell.text(words(pin.role())).toned(pin.role() == PinRole.SPARE ? Cell.Tone.SOFT : Cell.Tone.PLAIN),
                Cell.text(channels(unit, device, pin)),
                Cell.text(ends.cavity(unit.id(), pin.name())),
                Cell.text(Wording.ids(wires.stream().map(Wire::id).toList())),
                Cell.text(ends.colours(unit.id(), pin.name())),
                Cell.text(ends.others(unit.id(), pin.name())),
                Cell.number(pin.limitAmps()),
                Cell.text(can));
    }

    private String channels(Component unit, ControlUnit device, Pin pin) {
        List<String> names = new ArrayList<>(device.channels().stream()
                .filter(each -> each.pin().equals(pin.name()))
                .map(Channel::name)
                .toList());
        study.channels().stream()
                .map(ChannelReading::channel)
                .filter(each ->
                        each.unit().id().equals(unit.id()) && each.pin().name().equals(pin.name()))
                .map(SensorChannel::name)
                .filter(name -> !names.contains(name))
                .forEach(names::add);
        return String.join(", ", names);
    }

    private static String words(Enum<?> constant) {
        return Constants.text(constant).english();
    }
}
