package org.ohmloom.workbench;

import java.util.ArrayList;
import java.util.List;

/** The studies in the order of their tabs. */
final class Studies {

    /** All of them. */
    static final List<Study<?>> ALL = List.of(new DutyStudy());

    private Studies() {}

    /** A command for each that brings it to the front. */
    static List<Command> commands(Bench bench) {
        List<Command> all = new ArrayList<>();
        all.add(new ShowStudy(bench, ALL.get(0), 'D'));
        return all;
    }
}
