package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Report;
import org.ohmloom.remedy.RemedyList;

/** Findings first, then the numbers they rest on, then what those rest on. */
final class CalculationReport {
    private static final String REMARK =
            "Voltages are relative to the first source's negative terminal. Computed for the"
                    + " harness as drawn at this revision; change it and compute anew.";

    private final Analysis analysis;
    private final SceneFonts fonts;
    private final List<RemedyList> remedies;

    /** The report of an analysis; with remedies that were tried, if any were. */
    CalculationReport(Analysis analysis, SceneFonts fonts, List<RemedyList> remedies) {
        this.analysis = analysis;
        this.fonts = fonts;
        this.remedies = List.copyOf(remedies);
    }

    Report report() {
        Sources sources = new Sources();
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(analysis.harness()));
        blocks.addAll(new BasisSection(analysis).blocks());
        blocks.addAll(new FindingSection(analysis).blocks());
        blocks.addAll(new StateSection(analysis).blocks());
        blocks.addAll(new LoadSection(analysis).blocks());
        blocks.addAll(new WireSection(analysis, sources).blocks());
        blocks.addAll(new DutySection(analysis).blocks());
        blocks.addAll(new SweepSection(analysis).blocks());
        blocks.addAll(new ConductorSection(analysis, fonts).blocks());
        blocks.addAll(new MethodSection(analysis).blocks());
        blocks.addAll(new DeviceSection(analysis, sources).blocks());
        blocks.addAll(new ProtectionSection(analysis, fonts).blocks());
        blocks.addAll(new CombinationSection(analysis, fonts).blocks());
        blocks.addAll(new ChargeSection(analysis, fonts).blocks());
        blocks.addAll(new StartSection(analysis, fonts).blocks());
        blocks.addAll(new ReturnSections(analysis, fonts).blocks());
        blocks.addAll(new RemedySection(remedies).blocks());
        blocks.addAll(new AssumptionSection(analysis).blocks());
        blocks.add(new Block.Heading("Sources"));
        blocks.add(sources.table());
        return new Report(blocks, REMARK);
    }
}
