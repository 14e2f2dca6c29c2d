package org.ohmloom.workbench.compare;

import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.revision.RevisionComparison;
import org.ohmloom.pack.ChangeSheet;
import org.ohmloom.pack.PartChange;

/**
 * What came of holding two analysed harnesses side by side.
 *
 * @param name       what people call the old one
 * @param comparison what differs
 * @param parts      what has to be bought more or less of
 */
public record Compared(String name, RevisionComparison comparison, List<PartChange> parts) {

    public Compared {
        parts = List.copyOf(parts);
    }

    /** Compares; slow for a large harness, so not for the event thread. */
    public static Compared of(String name, Analysis before, Analysis after) {
        RevisionComparison comparison = RevisionComparison.of(before, after);
        return new Compared(name, comparison, ChangeSheet.parts(comparison));
    }
}
