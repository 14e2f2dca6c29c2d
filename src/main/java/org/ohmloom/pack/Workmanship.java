package org.ohmloom.pack;

import org.ohmloom.analysis.Analysis;
import org.ohmloom.pack.page.Block;

/** The class of workmanship that is asked for, as documents say it. */
final class Workmanship {
    private Workmanship() {}

    /** "class 2, dedicated service (IPC/WHMA-A-620)", or what to agree on. */
    static String text(Analysis analysis) {
        return analysis.harness()
                .rules()
                .fabricationRules()
                .workmanshipClass()
                .map(number -> analysis.evidence()
                        .tables()
                        .fabrication()
                        .workmanshipClass(number)
                        .text())
                .orElse("not entered: agree on class 1, 2 or 3 of IPC/WHMA-A-620");
    }

    static Block.Fact fact(Analysis analysis) {
        return new Block.Fact("Workmanship asked for", text(analysis));
    }
}
