package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Seal;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** What a small harness takes, counted by hand. */
@BesideOthers
class BillOfMaterialsTest {
    private static final double EXACT = 1e-12;

    private static final DesignRules RULES =
            new DesignRules("road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 40);

    private final List<Element> elements = new ArrayList<>();

    private void part(String id) {
        elements.add(new Part(new PartId(id), "Example", "what " + id + " is", OptionalDouble.empty()));
    }

    private static Cavity cavity(String name, boolean contact, Optional<String> plug) {
        return new Cavity(
                name,
                Optional.empty(),
                contact ? Optional.of(new ContactId("CT")) : Optional.empty(),
                plug.map(PartId::new),
                true);
    }

    private void connector(String id, boolean existing, Optional<String> part, Cavity... cavities) {
        elements.add(new Connector(
                new ConnectorId(id),
                "Connector " + id,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(cavities),
                part.map(PartId::new),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                existing,
                Optional.empty()));
    }

    private void sealedContact() {
        part("EX-CT");
        part("EX-SEAL");
        elements.add(new ContactPart(
                new ContactId("CT"),
                Optional.of(new PartId("EX-CT")),
                0.003,
                List.of(),
                0.5,
                4,
                1,
                4,
                List.of(),
                5,
                "Sn",
                Optional.of(new Seal(new PartId("EX-SEAL"), 1, 4)),
                Optional.empty()));
    }

    private static WireEnd at(String connector, String cavity) {
        return new WireEnd.AtCavity(new ConnectorId(connector), cavity);
    }

    private void wire(String id, WireEnd from, WireEnd to, double metres, boolean existing, Optional<String> cable) {
        elements.add(new Wire(
                new WireId(id),
                from,
                to,
                Optional.of(Gauge.metric(1.5)),
                Optional.empty(),
                Optional.empty(),
                Optional.of(WireColour.parse("RDWH")),
                metres > 0 ? OptionalDouble.of(metres) : OptionalDouble.empty(),
                SignalClass.FEED,
                Optional.empty(),
                cable.map(CableId::new),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                existing,
                Optional.empty()));
    }

    private void cable(String id, boolean shielded, Cable.Kind kind, Optional<String> part) {
        elements.add(new Cable(
                new CableId(id),
                "Cable " + id,
                kind,
                shielded,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                part.map(PartId::new),
                Optional.empty()));
    }

    private Map<Material, MaterialCount> bill() {
        Harness harness = Harness.empty(TitleBlock.of("Counted", "EX-9"), RULES).withAll(elements);
        return new BillOfMaterials(Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER)).materials();
    }

    private static double count(Map<Material, MaterialCount> bill, MaterialKind kind, String part) {
        return bill.entrySet().stream()
                .filter(entry -> entry.getKey().kind() == kind
                        && entry.getKey().part().map(PartId::value).orElse("").equals(part))
                .mapToDouble(entry -> entry.getValue().quantity())
                .sum();
    }

    @Test
    void contactsAndSealsAreCountedForEachCavityInUseAndPlugsForEachUnusedOne() {
        sealedContact();
        part("EX-H3");
        part("EX-PLUG");
        connector(
                "X1",
                false,
                Optional.of("EX-H3"),
                cavity("1", true, Optional.empty()),
                cavity("2", true, Optional.empty()),
                cavity("3", true, Optional.of("EX-PLUG")));
        connector(
                "X2", true, Optional.empty(), cavity("1", true, Optional.empty()), cavity("2", true, Optional.empty()));
        // cavity X1.1 holds two wires in one contact; X2 is in the vehicle, its cavity 2 with a wire of the vehicle
        wire("W1", at("X1", "1"), at("X2", "1"), 1, false, Optional.empty());
        wire("W2", at("X1", "1"), at("X1", "2"), 1, false, Optional.empty());
        wire("W3", at("X2", "2"), new WireEnd.Loose(), 1, true, Optional.empty());
        Map<Material, MaterialCount> bill = bill();
        assertEquals(1, count(bill, MaterialKind.HOUSING, "EX-H3"), EXACT);
        // X1.1, X1.2 and X2.1
        assertEquals(3, count(bill, MaterialKind.CONTACT, "EX-CT"), EXACT);
        assertEquals(3, count(bill, MaterialKind.SEAL, "EX-SEAL"), EXACT);
        assertEquals(1, count(bill, MaterialKind.PLUG, "EX-PLUG"), EXACT);
    }

    @Test
    void anOpenCavityOfASealedConnectorAsksForAPlugNobodyHasChosen() {
        sealedContact();
        connector(
                "X1",
                false,
                Optional.empty(),
                cavity("1", true, Optional.empty()),
                cavity("2", false, Optional.empty()));
        wire("W1", at("X1", "1"), new WireEnd.Loose(), 1, false, Optional.empty());
        assertEquals(1, count(bill(), MaterialKind.PLUG, ""), EXACT);
        assertEquals(1, count(bill(), MaterialKind.HOUSING, ""), EXACT);
    }

    @Test
    void wireOfOneKindIsOneLineAndAnUnknownLengthIsSaid() {
        wire("W1", new WireEnd.Loose(), new WireEnd.Loose(), 1.25, false, Optional.empty());
        wire("W2", new WireEnd.Loose(), new WireEnd.Loose(), 0.5, false, Optional.empty());
        wire("W10", new WireEnd.Loose(), new WireEnd.Loose(), 0, false, Optional.empty());
        wire("W11", new WireEnd.Loose(), new WireEnd.Loose(), 9, true, Optional.empty());
        Map<Material, MaterialCount> bill = bill();
        assertEquals(1, bill.size());
        MaterialCount count = bill.values().iterator().next();
        // 1.25 + 0.5; W11 is in the vehicle already
        assertEquals(1.75, count.quantity(), EXACT);
        assertEquals(List.of("W1", "W2", "W10"), count.designators());
        assertEquals(List.of("W10"), count.withoutLength());
        Material material = bill.keySet().iterator().next();
        assertEquals("1.5 mm², ISO 6722-1 class B", material.description());
        assertEquals("RDWH", material.colour().orElseThrow().text());
    }

    @Test
    void coresComeWithTheirCableAndAPairWithoutAPartIsTwistedFromWire() {
        part("EX-CABLE");
        cable("C1", false, Cable.Kind.MULTICORE, Optional.of("EX-CABLE"));
        cable("C2", false, Cable.Kind.TWISTED_PAIR, Optional.empty());
        wire("W1", new WireEnd.Loose(), new WireEnd.Loose(), 2, false, Optional.of("C1"));
        wire("W2", new WireEnd.Loose(), new WireEnd.Loose(), 2.2, false, Optional.of("C1"));
        wire("W3", new WireEnd.Loose(), new WireEnd.Loose(), 3, false, Optional.of("C2"));
        wire("W4", new WireEnd.Loose(), new WireEnd.Loose(), 3, false, Optional.of("C2"));
        Map<Material, MaterialCount> bill = bill();
        // the cable is as long as its longest core
        assertEquals(2.2, count(bill, MaterialKind.CABLE, "EX-CABLE"), EXACT);
        assertEquals(6, count(bill, MaterialKind.WIRE, ""), EXACT);
    }

    /** A ring or spade is bought by what it is crimped to and by what it is screwed to. */
    @Test
    void everyTerminalSaysItsStudOrThatItIsToBeEnteredAndNoCoveringIsDescribedTwice() {
        int terminals = 0;
        for (Map.Entry<Material, MaterialCount> line :
                new BillOfMaterials(Packs.analysis("rescue-pickup")).materials().entrySet()) {
            Material material = line.getKey();
            if (material.kind() == MaterialKind.TERMINAL) {
                assertTrue(material.description().matches(".*, (M[\\d.]+|stud size: enter)"), material.description());
                terminals++;
            }
            if (material.kind() == MaterialKind.COVERING) {
                assertTrue(material.part().isEmpty() || material.description().isEmpty(), material.toString());
            }
        }
        assertTrue(terminals > 3, terminals + " kinds of terminal");
    }

    @Test
    void aProtectiveDeviceWithoutAPartIsDescribedAndOneInTheVehicleLeftOut() {
        for (String id : List.of("F1", "F2")) {
            elements.add(new Component(
                    new ComponentId(id),
                    "Fuse " + id,
                    new ProtectiveDevice(ProtectiveDevice.Kind.FUSE, "ISO 8820-3 type C", 15, OptionalDouble.empty()),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    id.equals("F2"),
                    Optional.empty()));
        }
        Map<Material, MaterialCount> bill = bill();
        assertEquals(1, bill.size());
        Material material = bill.keySet().iterator().next();
        assertEquals("fuse 15 A, ISO 8820-3 type C", material.description());
        assertTrue(material.part().isEmpty());
    }
}
