package org.ohmloom.analysis.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.edit.Field;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Register;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFileException;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.Unit;

@BesideOthers
class RevisionComparisonTest {
    private static final Analysis TEACHING = AnalysedExamples.of("teaching");
    private static final Harness HARNESS = TEACHING.harness();
    private static final WireId W5 = new WireId("W5");
    private static final WireId W7 = new WireId("W7");

    private static RevisionComparison against(Harness changed) {
        return RevisionComparison.of(TEACHING, Analyst.analyse(changed, WireTables.bundled(), Cancel.NEVER));
    }

    @Test
    void aHarnessHeldAgainstItselfSaysTheSame() {
        assertTrue(RevisionComparison.of(TEACHING, TEACHING).isSame());
    }

    @Test
    void aLargerConductorIsOneChangedFieldAndASmallerDrop() {
        RevisionComparison comparison =
                against(new SetWireGauge(List.of(W5), Optional.of(Gauge.parse("2.5 mm2"))).apply(HARNESS));

        assertEquals(1, comparison.elements().size());
        ElementChange change = comparison.elements().get(0);
        assertEquals("wire", change.kind());
        assertEquals("W5", change.id());
        assertEquals(Change.CHANGED, change.change());
        assertEquals(List.of("size", "1.5 mm²", "2.5 mm²"), told(change.fields().get(0)));
        assertEquals(1, change.fields().size());
        ResultChange drop = comparison.results().stream()
                .filter(each -> each.subject().equals("W5") && each.quantity().contains("drop"))
                .findFirst()
                .orElseThrow();
        // 3 A over 1.5 m: 12.7 milliohm/m before, 7.6 after (ISO 6722-1 at 20 C), each a little warmer than that.
        assertEquals(3 * 1.5 * 12.7e-3, drop.before().orElseThrow().value(), 0.001);
        assertEquals(3 * 1.5 * 7.6e-3, drop.after().orElseThrow().value(), 0.001);
    }

    @Test
    void aWireTakenAwayIsTheOnlyElementRemovedAndItsLoadIsFound() {
        RevisionComparison comparison = against(HARNESS.without(W7));

        assertEquals(1, comparison.count(Change.REMOVED));
        assertEquals("W7", comparison.elements().get(0).id());
        assertTrue(comparison.findings().stream().anyMatch(each -> each.change() == Change.ADDED));
    }

    @Test
    void anotherEndIsTheFieldOfThatEnd() {
        Wire wire = HARNESS.wires().get(W7);
        WireEnd old = HARNESS.wires().get(new WireId("W8")).from();
        RevisionComparison comparison = against(HARNESS.with(wire.withEnds(wire.from(), old)));

        assertEquals(
                List.of("to", "G2", "G1"),
                told(comparison.elements().get(0).fields().get(0)));
        assertEquals(1, comparison.elements().get(0).fields().size());
    }

    @Test
    void theSameContentsUnderAnotherIdAreRenumbered() {
        Harness before = HARNESS.with(spare("SP9"));
        Harness after = HARNESS.with(spare("SP12"));

        List<ElementChange> changes = ElementChanges.between(before, after);

        assertEquals(1, changes.size());
        assertEquals(Change.RENUMBERED, changes.get(0).change());
        assertEquals("SP9", changes.get(0).was());
        assertEquals("SP12", changes.get(0).id());
    }

    private static Splice spare(String id) {
        return new Splice(
                new SpliceId(id), "Spare splice", 0.0005, Optional.empty(), Optional.empty(), false, Optional.empty());
    }

    /** Two elements of one kind say the same in every field exactly when they are equal but for their identity. */
    @ParameterizedTest
    @ValueSource(strings = {"rescue-pickup", "workboat", "faults"})
    void noDifferenceBetweenTwoElementsStaysOutOfSight(String example) throws HarnessFileException {
        List<String> unseen = new ArrayList<>();
        for (Register<?, ?> register : HarnessFiles.read(Path.of("examples", example + HarnessFiles.ENDING))
                .registers()) {
            List<Element> elements = new ArrayList<>(register.all());
            for (int i = 1; i < elements.size(); i++) {
                Record one = (Record) elements.get(i - 1);
                Record other = (Record) elements.get(i);
                boolean seen = !Fields.changes(Fields.of(one), Fields.of(other)).isEmpty();
                if (seen != !contents(one).equals(contents(other))) {
                    unseen.add(
                            elements.get(i - 1).id() + " and " + elements.get(i).id());
                }
            }
        }
        assertEquals(List.of(), unseen);
    }

    /** What a record says without its identity, as the language prints it. */
    private static String contents(Record shown) {
        return shown.toString().replaceFirst("id=[^,\\]]*", "");
    }

    @Test
    void aFieldOfADeviceIsCalledByWhatItIsNotByItsUnit() {
        Harness before = AnalysedExamples.of("faults").harness();
        ComponentId fuse = new ComponentId("F2");
        Harness after = Field.of("device.ohms", Unit.OHM)
                .set(before, "resistance", List.of(before.components().get(fuse)), "3 mOhm")
                .apply(before);
        List<FieldChange> changes = ElementChanges.between(before, after).get(0).fields();
        assertEquals(
                List.of("resistance"), changes.stream().map(FieldChange::field).toList());
    }

    private static List<String> told(FieldChange field) {
        return List.of(field.field(), field.before(), field.after());
    }
}
