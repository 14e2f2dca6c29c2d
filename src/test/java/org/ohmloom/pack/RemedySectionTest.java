package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.model.WireId;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Row;
import org.ohmloom.remedy.Effect;
import org.ohmloom.remedy.Remedy;
import org.ohmloom.remedy.RemedyKind;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.review.Finding;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/** Remedies that were tried, in the calculation report. */
@BesideOthers
class RemedySectionTest {

    private static Remedy remedy(RemedyKind kind, Edit edit, boolean clears, List<String> unmeasured) {
        return new Remedy(
                kind,
                edit,
                Optional.of(new Effect(Text.of("offset of U1"), 0.13, 0.0245, "V")),
                -0.0089,
                0.6,
                unmeasured,
                clears,
                List.of(),
                List.of());
    }

    @Test
    void nothingIsPrintedWhereNothingWasTried() {
        assertEquals(List.of(), new RemedySection(List.of()).blocks());
    }

    @Test
    void eachFindingIsNamedOnceWithTheStepsAndNumbersOfItsBest() {
        Analysis analysis = Packs.analysis("faults");
        Finding finding = analysis.findings().stream()
                .filter(each -> each.rule().equals("unit-ground-offset"))
                .findFirst()
                .orElseThrow();
        Edit larger = SetWireGauge.of(new WireId("W3"), Gauge.parse("25 mm2"));
        Edit other = SetWireGauge.of(new WireId("W26"), Gauge.parse("4 mm2"));
        RemedyList list = new RemedyList(
                finding,
                List.of(
                        remedy(
                                RemedyKind.COMBINED,
                                new Compound(Text.of("both"), List.of(larger, other)),
                                true,
                                List.of()),
                        remedy(RemedyKind.LARGER_RETURN, larger, false, List.of("ST1-2"))),
                0,
                12,
                false);
        Block.Table table =
                (Block.Table) new RemedySection(List.of(list)).blocks().get(2);
        assertEquals(2, table.rows().size());
        Row best = table.rows().get(0);
        assertEquals(finding.message(), best.cells().get(0).text());
        assertEquals(
                "Set conductor of W3 to 25 mm²; Set conductor of W26 to 4 mm²",
                best.cells().get(1).text());
        assertEquals("yes", best.cells().get(2).text());
        assertEquals("offset of U1: 130 mV → 24.5 mV", best.cells().get(3).text());
        assertEquals(-8.9, best.cells().get(4).number().orElseThrow(), 1e-9);
        assertEquals(0.6, best.cells().get(5).number().orElseThrow());
        assertEquals("", table.rows().get(1).cells().get(0).text());
        assertEquals(
                "length of ST1-2 not entered",
                table.rows().get(1).cells().get(5).text());
    }
}
