package org.ohmloom.workbench;

import java.util.ArrayList;
import java.util.List;

/** The studies in the order of their tabs. */
final class Studies {

    /** All of them. */
    static final List<Study<?>> ALL = List.of(
            new ProtectionStudy(),
            new StartStudy(),
            new ChargeView(),
            new CombinationStudy(),
            new DutyStudy(),
            new DutyRangeStudy(),
            new ConductorStudy());

    /** The studies of the return paths in the order of their lists, all behind one tab. */
    static final List<Study<?>> RETURNS = List.of(
            new GroundStudy(),
            new LoopStudy(),
            new OffsetStudy(),
            new SensorStudy(),
            new CouplingStudy(),
            new LossStudy());

    private Studies() {}

    /** The letter underlined in its menu. */
    private static char letter(String key) {
        return switch (key) {
            case "protection" -> 'T';
            case "start-up" -> 'A';
            case "charge" -> 'H';
            case "combinations" -> 'W';
            case "conductors" -> 'O';
            case "duty-range" -> 'Y';
            default -> 'D';
        };
    }

    /** A command for each that brings it to the front. */
    static List<Command> commands(Bench bench) {
        List<Command> all = new ArrayList<>();
        all.add(new ShowStudy(bench, CurrentsPane.KEY, CurrentsPane.TITLE, CurrentsPane.ABOUT, 'C'));
        ALL.forEach(
                study -> all.add(new ShowStudy(bench, study.key(), study.title(), study.about(), letter(study.key()))));
        all.add(new ShowStudy(bench, ReturnsPane.KEY, ReturnsPane.TITLE, ReturnsPane.ABOUT, 'R'));
        all.add(new ShowStudy(bench, FabricationPane.KEY, FabricationPane.TITLE, FabricationPane.ABOUT, 'K'));
        all.add(new ShowStudy(bench, RecordPane.KEY, RecordPane.TITLE, RecordPane.ABOUT, 'B'));
        all.add(new ShowStudy(bench, ComparePane.KEY, ComparePane.TITLE, ComparePane.ABOUT, 'M'));
        return all;
    }
}
