package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisPath;
import org.ohmloom.model.ChassisRule;
import org.ohmloom.model.ContactLimit;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Revision;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.BlockPaste;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.SheetModel;

/** What is typed about the whole harness, and where one cell holds several points. */
class TypedDesignTest {
    private static final Harness HARNESS = AnalysedExamples.harness("teaching");

    private static DesignSheet.Row row(DesignSheet.Item item) {
        return new DesignSheet()
                .rows(new Readout(HARNESS, Optional.empty(), Optional.empty()))
                .get(item.ordinal());
    }

    private static Harness typed(DesignSheet.Item item, String text) {
        Edit edit = new DesignSheet().columns().get(1).edit().orElseThrow().parse(List.of(row(item)), text);
        return edit.apply(HARNESS);
    }

    private static String refusal(DesignSheet.Item item, String text) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, () -> typed(item, text))
                .getMessage());
    }

    @Test
    void theRulesAHarnessIsJudgedByAreTyped() {
        assertEquals(24, typed(DesignSheet.Item.VOLTAGE, "24").rules().nominalVolts());
        assertEquals(0.03, typed(DesignSheet.Item.DROP, "3 %").rules().allowedDropFraction());
        assertEquals(
                GaugeSystem.AWG, typed(DesignSheet.Item.SIZES, "awg").rules().gaugeSystem());
        assertEquals(
                "ISO 6722-1 class C",
                typed(DesignSheet.Item.INSULATION, "iso 6722-1 CLASS c").rules().insulation());
        assertEquals(35, typed(DesignSheet.Item.AMBIENT, "95 °F").rules().ambientCelsius(), 1e-9);
        assertEquals("20 °C", row(DesignSheet.Item.AMBIENT).value());
        assertSame(
                HARNESS,
                typed(DesignSheet.Item.BASIS, row(DesignSheet.Item.BASIS).value()));
    }

    @Test
    void whatTheTablesDoNotHaveOrTheRulesRefuseIsSaidInOneLine() {
        assertTrue(refusal(DesignSheet.Item.BASIS, "submarine").contains("road-vehicle"));
        assertTrue(refusal(DesignSheet.Item.INSULATION, "paper").contains("ISO 6722-1 class B"));
        assertTrue(refusal(DesignSheet.Item.VOLTAGE, "60").contains("60 V DC and above is out of scope"));
        assertTrue(refusal(DesignSheet.Item.TITLE, " ").contains("empty"));
        assertTrue(refusal(DesignSheet.Item.REVISIONS, "A later").contains("A later"));
    }

    @Test
    void theTitleBlockWithItsRevisionsIsTypedAndComesBackAsItWas() {
        for (DesignSheet.Item item : DesignSheet.Item.values()) {
            assertSame(HARNESS, typed(item, row(item).value()), item.toString());
        }
        assertEquals(
                List.of(new Revision("C", "2025-04-01", "A. Example", "Fuse: 20 A")),
                typed(DesignSheet.Item.REVISIONS, "C 2025-04-01 A. Example: Fuse: 20 A")
                        .titleBlock()
                        .revisions());
        assertEquals(
                Optional.empty(), typed(DesignSheet.Item.OWNER, "").titleBlock().owner());
    }

    @Test
    void aChassisBodyTakesPathsBetweenItsGroundPoints() {
        ChassisBody frame = HARNESS.bodies().all().iterator().next();
        assertEquals("G1 to G2 2 mΩ", PointsText.paths(frame));
        Harness changed =
                PointsText.paths(HARNESS, List.of(frame), "g1 to G2 0,5 mOhm").apply(HARNESS);
        assertEquals(
                List.of(new ChassisPath(new GroundPointId("G1"), new GroundPointId("G2"), 0.0005)),
                changed.bodies().get(frame.id()).paths());
        assertThrows(IllegalArgumentException.class, () -> PointsText.paths(HARNESS, List.of(frame), "G1 to G9 2"));
        assertThrows(IllegalArgumentException.class, () -> PointsText.paths(HARNESS, List.of(frame), "2 mΩ"));
    }

    private static Harness bodyTyped(Harness now, String key, String text) {
        Column<?> any = new ThingLists(() -> Optional.of(now))
                .others().get("bodies").columns().stream()
                        .filter(each -> each.key().equals(key))
                        .findFirst()
                        .orElseThrow();
        @SuppressWarnings("unchecked") // the list of bodies has bodies in its rows
        Column<ChassisBody> column = (Column<ChassisBody>) any;
        List<ChassisBody> bodies = List.copyOf(now.bodies().all());
        assertTrue(column.edit().orElseThrow().suits(bodies.get(0)), key);
        return column.edit().orElseThrow().parse(bodies, text).apply(now);
    }

    @Test
    void aChassisBodyTakesAResistanceToItsMiddleAndWhereThatIsFrom() {
        ChassisBody frame = HARNESS.bodies().all().iterator().next();
        assertEquals(Optional.empty(), frame.rule());
        Harness ruled = bodyTyped(HARNESS, "to-middle", "0,8");
        assertEquals(
                Optional.of(new ChassisRule(0.0008, "entered without a source")),
                ruled.bodies().get(frame.id()).rule());
        Harness sourced = bodyTyped(ruled, "to-middle-source", " measured on the bench ");
        Harness changed = bodyTyped(sourced, "to-middle", "1.2 mOhm");
        assertEquals(
                Optional.of(new ChassisRule(0.0012, "measured on the bench")),
                changed.bodies().get(frame.id()).rule());
        assertEquals(frame.paths(), changed.bodies().get(frame.id()).paths(), "what else there is stays");
        assertEquals(HARNESS, bodyTyped(changed, "to-middle", ""));
        assertEquals(
                "resistance to the middle of a chassis body must be greater than 0, was -1.0E-4",
                assertThrows(IllegalArgumentException.class, () -> bodyTyped(HARNESS, "to-middle", "-0.1"))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> bodyTyped(HARNESS, "to-middle", "2 m"));
    }

    @Test
    void aContactTakesItsCurrentLimitsByTheTemperature() {
        assertEquals(
                "24 A at 20 °C; 18 A at 85 °C; 10 A at 120 °C",
                PointsText.limits(HARNESS.contacts().all().iterator().next()));
        assertEquals(
                List.of(new ContactLimit(20, 24), new ContactLimit(85, 18)), PointsText.limits("18 at 85; 24 A @ 20"));
        assertEquals(List.of(), PointsText.limits(" "));
        assertThrows(IllegalArgumentException.class, () -> PointsText.limits("24 A"));
    }

    @Test
    void aPastedBlockMayHoldTheIdentityAmongTheOtherCells() {
        SheetModel<Part> parts = new SheetModel<>(new ThingLists(() -> Optional.of(HARNESS)).parts(), edit -> {});
        parts.show(List.copyOf(HARNESS.parts().all()), true);
        Harness pasted = BlockPaste.of(parts, List.of(0), List.of(0, 1), "EX-B1\tSmall battery")
                .apply(HARNESS);
        assertEquals("Small battery", pasted.parts().get(new PartId("EX-B1")).description());
        assertEquals(HARNESS.parts().all().size(), pasted.parts().all().size());
    }
}
