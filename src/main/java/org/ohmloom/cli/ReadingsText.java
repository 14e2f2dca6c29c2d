package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.AsBuiltRecord;
import org.ohmloom.bench.Judgement;
import org.ohmloom.bench.Replacement;

/** Prints the as-built record, and which measured resistances the calculation uses. */
final class ReadingsText {

    private ReadingsText() {}

    static void print(Analysis analysis, PrintWriter out) {
        AsBuiltRecord record = analysis.evidence().tests().record();
        if (record.judgements().isEmpty()) {
            return;
        }
        print(record, out);
        List<Replacement> used = Replacement.of(analysis.evidence().bench());
        if (!used.isEmpty()) {
            out.println("MEASURED RESISTANCES IN THE PLACE OF CALCULATED ONES (of wires at 20 °C)");
            used.forEach(each -> out.println("  " + each.text()));
            out.println();
        }
    }

    static void print(AsBuiltRecord record, PrintWriter out) {
        out.println("AS-BUILT RECORD (" + record.summary() + ")");
        TextTable table = new TextTable()
                .left("READING")
                .left("SERIAL")
                .left("WHERE")
                .right("MEASURED")
                .right("LIMIT")
                .left("VERDICT");
        for (Judgement judgement : record.judgements()) {
            table.row(
                    judgement.reading().id().value(),
                    judgement.reading().serialNumber().orElse(""),
                    judgement.reading().measured().place(),
                    judgement.valueText(),
                    judgement.limitText(),
                    judgement
                            .superseded()
                            .map(later -> "measured again: " + later.id())
                            .orElseGet(() -> judgement.verdict().words()));
        }
        table.print(out);
        out.println();
    }
}
