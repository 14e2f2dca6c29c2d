package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Driver;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Measurement;
import org.ohmloom.model.Pin;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/** Small changes of generated harnesses that put a fault in. */
final class Harnesses {

    private Harnesses() {}

    static Wire wire(Harness harness, String id) {
        return harness.wires().get(new WireId(id));
    }

    /** The first wire with that end. */
    static Wire wireAt(Harness harness, WireEnd end) {
        return harness.wires().all().stream()
                .filter(wire -> wire.ends().contains(end))
                .findFirst()
                .orElseThrow();
    }

    /** A wire with another resistance, ohm, as if it were longer or thinner. */
    static Harness resisting(Harness harness, String wire, double ohms) {
        Wire now = wire(harness, wire);
        return harness.with(new Wire(
                now.id(),
                now.from(),
                now.to(),
                now.gauge(),
                now.family(),
                now.insulation(),
                now.colour(),
                now.lengthMetres(),
                now.signalClass(),
                now.circuit(),
                now.cable(),
                OptionalDouble.of(ohms),
                now.presentAmps(),
                now.existing(),
                now.assembly()));
    }

    /** A ground point with another joint, ohm. */
    static Harness jointed(Harness harness, String ground, double ohms) {
        GroundPoint now = harness.grounds().get(new GroundPointId(ground));
        return harness.with(Plan.groundPoint(ground, now.body().value(), ohms));
    }

    static Harness strapped(Harness harness, String strap, double ohms) {
        Strap now = harness.straps().get(new StrapId(strap));
        return harness.with(
                Plan.strapBetween(strap, now.from().value(), now.to().value(), ohms));
    }

    /** A cavity with a contact of its own of that resistance, ohm. */
    static Harness contacted(Harness harness, String connector, String cavity, double ohms) {
        Connector now = harness.connectors().get(new ConnectorId(connector));
        return harness.withAll(List.of(
                Plan.contactPart("CT-BAD", ohms),
                now.withCavity(new Cavity(
                        cavity,
                        now.cavity(cavity).orElseThrow().terminal(),
                        Optional.of(new ContactId("CT-BAD")),
                        Optional.empty(),
                        false))));
    }

    /** A load drawing another current, A. */
    static Harness drawing(Harness harness, String load, double amps) {
        Component now = harness.components().get(new ComponentId(load));
        Load device = (Load) now.device();
        return harness.with(now.withDevice(device.withDraw(device.draw().withRatedAmps(amps))));
    }

    /** A control unit drawing another current, A. */
    static Harness unitDrawing(Harness harness, String unit, double amps) {
        Component now = harness.components().get(new ComponentId(unit));
        ControlUnit device = (ControlUnit) now.device();
        return harness.with(now.withDevice(
                new ControlUnit(device.pins(), amps, device.groundToSensorReturnOhms(), device.groundToCaseOhms())));
    }

    /** An output whose edges take another time, s: {@code Q1} or a pin of the first unit. */
    static Harness switching(Harness harness, String output, double seconds) {
        Component alone = harness.components().find(new ComponentId(output)).orElse(null);
        if (alone != null && alone.device() instanceof SolidStateOutput device) {
            return harness.with(alone.withDevice(new SolidStateOutput(
                    device.onOhms(), device.limitAmps(), device.driver().map(at(seconds)), device.ratedVolts())));
        }
        Component unit = harness.components().get(new ComponentId(SoundHarness.UNIT));
        ControlUnit device = (ControlUnit) unit.device();
        return harness.with(unit.withDevice(device.withPins(device.pins().stream()
                .map(pin -> pin.name().equals(output)
                        ? new Pin(
                                pin.name(),
                                pin.role(),
                                pin.capabilities(),
                                pin.limitAmps(),
                                pin.onOhms(),
                                pin.referenceVolts(),
                                pin.pullUpVolts(),
                                pin.pullUpOhms(),
                                pin.driver().map(at(seconds)))
                        : pin)
                .toList())));
    }

    private static UnaryOperator<Driver> at(double seconds) {
        return driver -> driver.withEdgeSeconds(OptionalDouble.of(seconds));
    }

    /** A thermocouple whose copper wires begin at another temperature, deg C. */
    static Harness joint(Harness harness, String thermocouple, double celsius) {
        Component now = harness.components().get(new ComponentId(thermocouple));
        Sensor sensor = (Sensor) now.device();
        Measurement measurement = sensor.measurement().orElseThrow();
        Calibration.Thermocouple couple = (Calibration.Thermocouple) measurement.calibration();
        return harness.with(now.withDevice(sensor.measuring(Optional.of(Measurement.of(
                measurement.quantity(),
                measurement.unit(),
                measurement.lowest(),
                measurement.highest(),
                new Calibration.Thermocouple(couple.type(), couple.extension(), OptionalDouble.of(celsius)))))));
    }

    /** Every load a resistance of as much current at its rated voltage. */
    static Harness resistive(Harness harness) {
        List<Component> changed = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (component.device() instanceof Load load && load.draw() instanceof Draw.ConstantCurrent draw) {
                changed.add(
                        component.withDevice(load.withDraw(new Draw.Resistive(draw.ratedAmps(), draw.ratedVolts()))));
            }
        }
        return harness.withAll(changed);
    }
}
