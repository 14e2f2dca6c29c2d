package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

@BesideOthers
class CrimpDemandTest {

    /** The fed load's wire W1 of 1 m with its end in a contact for that range of conductors, mm2. */
    private static ConductorChoice choice(double fromMm2, double toMm2) {
        DesignRules rules = new DesignRules(
                "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
        FedLoad fed = new FedLoad(rules, 10, 0.6, 0.1, FedLoad.fuse(15)).wire("W1", 1);
        SizingInput plain = fed.input(fed.largest());
        Cavity cavity = new Cavity("1", Optional.empty(), Optional.of(new ContactId("CT")), Optional.empty(), false);
        Connector connector = new Connector(
                new ConnectorId("X1"),
                "X1",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(cavity),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
        ContactPart contact = new ContactPart(
                new ContactId("CT"),
                Optional.empty(),
                0.002,
                List.of(),
                fromMm2,
                toMm2,
                0.5,
                8,
                List.of(),
                5,
                "Sn",
                Optional.empty(),
                Optional.empty());
        Wire wire = plain.harness().wires().get(new WireId("W1"));
        Harness harness = plain.harness()
                .with(contact)
                .with(connector)
                .with(wire.withEnds(new WireEnd.AtCavity(new ConnectorId("X1"), "1"), wire.to()));
        SizingInput input = new SizingInput(
                harness, plain.tables(), plain.basis(), plain.routes(), plain.solutions(), plain.upstream());
        return new ConductorChooser(input).chooseAll().get(new WireId("W1"));
    }

    private static Requirement crimp(ConductorChoice choice) {
        return choice.requirements().stream()
                .filter(each -> each.governor() == Governor.CRIMP)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aContactForThickConductorsGovernsAThinWire() {
        ConductorChoice choice = choice(4, 6);
        assertEquals(Optional.of(Gauge.metric(4)), choice.gauge());
        assertEquals(Governor.CRIMP, choice.governing().governor());
        assertTrue(choice.governing().reason().contains("contact CT takes conductors of 4 to 6"));
    }

    @Test
    void aContactForThinConductorsDoesNotMakeAWireTooThin() {
        ConductorChoice choice = choice(0.22, 0.35);
        double areaMm2 = choice.gauge().orElseThrow().nominalAreaMm2();
        assertTrue(areaMm2 > 0.35, "the current and the fuse ask for more, and the review says so");
        assertEquals(Optional.of(Gauge.metric(0.22)), crimp(choice).smallest());
        assertFalse(choice.governing().governor() == Governor.CRIMP);
    }
}
