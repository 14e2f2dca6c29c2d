package org.ohmloom.judged;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/** Small changes of generated harnesses that put a fault in. */
final class Harnesses {

    private Harnesses() {}

    static Wire wire(Harness harness, String id) {
        return harness.wires().get(new WireId(id));
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
}
