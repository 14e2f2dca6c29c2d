package org.ohmloom.workbench.inspect;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.desk.Readout;

/** What the inspector tells about the teaching harness, whose numbers are worked by hand in its notes. */
class InspectorTest {

    private final Inspector inspector;
    private final Harness harness;

    InspectorTest() {
        Analysis analysis = AnalysedExamples.of("teaching");
        harness = analysis.harness();
        inspector = new Inspector(new Readout(harness, Optional.of(analysis), Optional.empty()));
    }

    @Test
    void aWireTellsWhyItsSizeWasChosenDownToTheTableRow() {
        Inspection wire = inspector.of("W2").orElseThrow();
        Inspection.Reasons reasons = section(wire, Inspection.Reasons.class);
        assertTrue(reasons.title().startsWith("Why "), reasons.title());
        assertEquals(
                1, reasons.reasons().stream().filter(Inspection.Reason::governs).count());
        assertTrue(
                reasons.reasons().stream().anyMatch(reason -> reason.source().contains("row ")),
                reasons.reasons().toString());
    }

    @Test
    void aWireTellsItsNumbersInEveryState() {
        Inspection.Grid states = section(inspector.of("W2").orElseThrow(), Inspection.Grid.class);
        assertEquals(harness.states().size(), states.rows().size());
        // Note 5: W2 carries 7.9811 A, shown with three digits.
        assertEquals(
                List.of("Heater and pump", "7.98", "7.98", "7.98"),
                states.rows().get(0).subList(0, 4));
    }

    @Test
    void aBatteryTellsTheVoltageAtItsTerminalsAndWhatItGives() {
        Inspection.Grid states = section(inspector.of("BT1").orElseThrow(), Inspection.Grid.class);
        assertEquals(List.of("State", "Mean A", "RMS A", "On A", "Voltage V", "Gives W"), states.heads());
        List<String> row = states.rows().get(0);
        double amps = Double.parseDouble(row.get(3));
        double volts = 12.6 - 0.02 * amps;
        // three digits are shown of each
        assertEquals(volts, Double.parseDouble(row.get(4)), 0.006 * volts);
        assertEquals(volts * amps, Double.parseDouble(row.get(5)), 0.01 * volts * amps);
    }

    @Test
    void aLoadThatIsOffHasNoDropAndARelayTellsWhichOfItsBranchesIsMeant() {
        Analysis pickup = AnalysedExamples.of("rescue-pickup");
        Inspector ofPickup = new Inspector(new Readout(pickup.harness(), Optional.of(pickup), Optional.empty()));
        Inspection.Grid winch = section(ofPickup.of("WIN1").orElseThrow(), Inspection.Grid.class);
        assertTrue(winch.rows().contains(List.of("Idling", "0", "–", "–", "–", "–")), winch.toString());
        Inspection.Grid relay = section(ofPickup.of("K1").orElseThrow(), Inspection.Grid.class);
        assertEquals("In every state, K1.30 to K1.87", relay.title());
    }

    @Test
    void allFieldsAreShownWithUnits() {
        List<Inspection.Fact> facts = facts(inspector.of("BT1").orElseThrow());
        assertTrue(facts.contains(Inspection.Fact.of("Emf", "12.6 V")), facts.toString());
        assertTrue(facts.contains(Inspection.Fact.of("Internal", "20 mΩ")), facts.toString());
        assertTrue(facts.contains(Inspection.Fact.of("Capacity", "44 Ah")), facts.toString());
        List<Inspection.Fact> wire = facts(inspector.of("W1").orElseThrow());
        assertTrue(wire.contains(Inspection.Fact.of("Length", "150 mm")), wire.toString());
        assertTrue(wire.contains(Inspection.Fact.of("Gauge", "4 mm²")), wire.toString());
    }

    @Test
    void everythingThatHasAnIdCanBeInspected() {
        harness.elements().forEach(element -> {
            Inspection shown = inspector.of(element.id().value()).orElseThrow();
            assertEquals(element.id().value(), shown.title());
            assertTrue(!shown.sections().isEmpty());
        });
        assertEquals(Optional.empty(), inspector.of("no-such-thing"));
    }

    private static <S extends Inspection.Section> S section(Inspection shown, Class<S> kind) {
        return shown.sections().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .findFirst()
                .orElseThrow();
    }

    /** The fields without what explains them. */
    private static List<Inspection.Fact> facts(Inspection shown) {
        return shown.sections().stream()
                .filter(section -> section.title().equals("Fields"))
                .map(Inspection.Facts.class::cast)
                .findFirst()
                .orElseThrow()
                .facts()
                .stream()
                .map(fact -> fact.about(""))
                .toList();
    }
}
