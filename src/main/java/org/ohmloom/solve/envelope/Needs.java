package org.ohmloom.solve.envelope;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;
import org.ohmloom.graph.BranchId;

/**
 * What must be so that current reaches something.
 *
 * @param controls controls that must be on
 * @param atRest   coils that must not be pulled in: those of break contacts on its way
 * @param carriers switches, outputs, relay contacts and diodes its current passes
 */
record Needs(SortedSet<Control> controls, SortedSet<BranchId> atRest, SortedSet<BranchId> carriers) {
    /** Nothing. */
    static final Needs NONE = new Needs(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());

    Needs {
        controls = Collections.unmodifiableSortedSet(new TreeSet<>(controls));
        atRest = Collections.unmodifiableSortedSet(new TreeSet<>(atRest));
        carriers = Collections.unmodifiableSortedSet(new TreeSet<>(carriers));
    }

    /** These and those of something it depends on; the other's carriers are not its own. */
    Needs dependingOn(Needs other) {
        SortedSet<Control> all = new TreeSet<>(controls);
        all.addAll(other.controls);
        SortedSet<BranchId> rest = new TreeSet<>(atRest);
        rest.addAll(other.atRest);
        return new Needs(all, rest, carriers);
    }

    /** These and one control. */
    Needs with(Control control) {
        SortedSet<Control> all = new TreeSet<>(controls);
        all.add(control);
        return new Needs(all, atRest, carriers);
    }
}
