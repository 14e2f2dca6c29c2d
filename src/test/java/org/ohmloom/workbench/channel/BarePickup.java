package org.ohmloom.workbench.channel;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.workbench.words.CalibrationText;

/** The example of the rescue pickup before its sensors are planned. */
final class BarePickup {

    private static final Set<SignalClass> SIGNALS = EnumSet.of(
            SignalClass.REFERENCE_SUPPLY,
            SignalClass.REFERENCE_RETURN,
            SignalClass.ANALOGUE_SIGNAL,
            SignalClass.PULSE_SIGNAL,
            SignalClass.DATA_BUS);

    private BarePickup() {}

    /** With its units, without the wires of its sensors and its data bus. */
    static Harness withUnits() throws HarnessFileException {
        Harness harness = HarnessFiles.read(Path.of("examples", "rescue-pickup" + HarnessFiles.ENDING));
        List<ElementId> gone = new ArrayList<>(harness.cables().ids());
        for (Wire wire : harness.wires().all()) {
            if (SIGNALS.contains(wire.signalClass())) {
                gone.add(wire.id());
                for (WireEnd end : wire.ends()) {
                    if (end instanceof WireEnd.AtSplice at) {
                        gone.add(at.splice());
                    }
                }
            }
        }
        return new TakeOut(gone.stream().distinct().toList()).apply(harness);
    }

    /** Without its sensors, its units and everything that only served them: what a builder has before the sensors come. */
    static Harness withoutUnits() throws HarnessFileException {
        Harness harness = HarnessFiles.read(Path.of("examples", "rescue-pickup" + HarnessFiles.ENDING));
        Set<ElementId> gone = new LinkedHashSet<>(harness.cables().ids());
        Deque<String> open = new ArrayDeque<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor || component.device() instanceof ControlUnit) {
                gone.add(component.id());
                harness.connectors().all().stream()
                        .filter(each ->
                                each.component().filter(component.id()::equals).isPresent())
                        .forEach(each -> {
                            gone.add(each.id());
                            each.cavities().forEach(cavity -> open.add(each.id() + "." + cavity.name()));
                        });
            }
        }
        Set<String> seen = new HashSet<>(open);
        while (!open.isEmpty()) {
            String place = open.pop();
            for (Wire wire : harness.wires().all()) {
                List<String> ends =
                        wire.ends().stream().map(end -> place(harness, end)).toList();
                if (ends.contains(place) && gone.add(wire.id())) {
                    boolean signal = SIGNALS.contains(wire.signalClass());
                    wire.ends().forEach(end -> {
                        if (signal && end instanceof WireEnd.AtSplice at) {
                            gone.add(at.splice());
                        }
                        // What feeds other things too is left beyond the splice.
                        if ((signal || !(end instanceof WireEnd.AtSplice))
                                && goesOn(harness, end)
                                && seen.add(place(harness, end))) {
                            open.add(place(harness, end));
                        }
                    });
                }
            }
        }
        return new TakeOut(List.copyOf(gone)).apply(harness);
    }

    /** Splices and in-line pairs lead on; the terminals of components and ground points do not. */
    private static boolean goesOn(Harness harness, WireEnd end) {
        return end instanceof WireEnd.AtSplice
                || end instanceof WireEnd.AtCavity at
                        && harness.connectors().get(at.connector()).mate().isPresent();
    }

    /** Where an end is; the two sides of an in-line pair are one place. */
    static String place(Harness harness, WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            ConnectorId mate = harness.connectors().get(at.connector()).mate().orElse(at.connector());
            return (mate.compareTo(at.connector()) < 0 ? mate : at.connector()) + "." + at.cavity();
        }
        return end.text();
    }

    /** Its sensors as a spreadsheet hands them over. */
    static String sensorList() throws HarnessFileException {
        Harness harness = HarnessFiles.read(Path.of("examples", "rescue-pickup" + HarnessFiles.ENDING));
        StringBuilder text = new StringBuilder("Name\tType\tWhere\tMeasures\tRange\tGives\tCurrent\tRate\n");
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Sensor sensor) {
                BreakoutId at = harness.connectors().all().stream()
                        .filter(each ->
                                each.component().filter(component.id()::equals).isPresent())
                        .findFirst()
                        .flatMap(harness::breakout)
                        .orElseThrow();
                Measurement measured = sensor.measurement().orElseThrow();
                text.append(String.join(
                                "\t",
                                component.name(),
                                type(sensor),
                                at.value(),
                                measured.quantity(),
                                measured.lowest() + " to " + measured.highest() + " " + measured.unit(),
                                CalibrationText.of(measured.calibration()),
                                sensor.drawAmps() + " A",
                                rate(measured)))
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String rate(Measurement measured) {
        OptionalDouble hertz = measured.use().map(Measurement.Use::updateHertz).orElse(OptionalDouble.empty());
        return hertz.isPresent() ? hertz.getAsDouble() + " Hz" : "";
    }

    private static String type(Sensor sensor) {
        return (switch (sensor.kind()) {
                    case THERMISTOR -> ListedType.NTC;
                    case RESISTANCE_THERMOMETER -> ListedType.RTD;
                    case THERMOCOUPLE -> ListedType.THERMOCOUPLE;
                    case HALL -> ListedType.HALL_SPEED;
                    case VARIABLE_RELUCTANCE -> ListedType.VR_SPEED;
                    case SENDER -> ListedType.FUEL_SENDER;
                    case SWITCH -> ListedType.SWITCH;
                    default -> ListedType.PRESSURE;
                })
                .shown();
    }
}
