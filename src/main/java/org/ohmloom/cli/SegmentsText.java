package org.ohmloom.cli;

import java.io.PrintWriter;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.units.Formats;

/** The bundle segments as text. */
final class SegmentsText {

    private SegmentsText() {}

    static void print(Analysis analysis, PrintWriter out) {
        if (analysis.evidence().bundles().bySegment().isEmpty()) {
            return;
        }
        TextTable table = new TextTable()
                .left("SEGMENT")
                .right("LENGTH")
                .right("WIRES")
                .right("IDEAL")
                .right("PRACTICAL")
                .right("FINISHED")
                .right("BEND")
                .right("MASS")
                .left("COVERING THAT SERVES");
        for (SegmentSection section : analysis.evidence().bundles().bySegment().values()) {
            table.row(
                    section.segment().value(),
                    Formats.metres(
                            analysis.harness().segments().get(section.segment()).lengthMetres()),
                    String.valueOf(section.wireCount()),
                    Formats.millimetres(section.idealMm()),
                    Formats.millimetres(section.practicalMm()),
                    Formats.millimetres(section.finishedMm()),
                    Formats.millimetres(section.bendLastingMm()),
                    Formats.kilograms(section.massKg()),
                    section.chosen().map(fit -> fit.size().id()).orElse("-"));
        }
        out.println();
        out.println(
                "BUNDLE SEGMENTS (ideal packing, practical diameter, over the covering; least radius where it stays bent)");
        table.print(out);
    }
}
