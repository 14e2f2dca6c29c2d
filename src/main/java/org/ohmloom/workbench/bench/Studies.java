package org.ohmloom.workbench.bench;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.workbench.channel.ChannelsPane;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.compare.ComparePane;
import org.ohmloom.workbench.fabrication.FabricationPane;
import org.ohmloom.workbench.pinview.PinViewPane;
import org.ohmloom.workbench.record.RecordPane;
import org.ohmloom.workbench.states.StatesPane;
import org.ohmloom.workbench.study.ChargeView;
import org.ohmloom.workbench.study.CombinationStudy;
import org.ohmloom.workbench.study.ConductorStudy;
import org.ohmloom.workbench.study.CouplingStudy;
import org.ohmloom.workbench.study.CurrentsPane;
import org.ohmloom.workbench.study.DutyRangeStudy;
import org.ohmloom.workbench.study.DutyStudy;
import org.ohmloom.workbench.study.GroundStudy;
import org.ohmloom.workbench.study.LoopStudy;
import org.ohmloom.workbench.study.LossStudy;
import org.ohmloom.workbench.study.OffsetStudy;
import org.ohmloom.workbench.study.ProtectionStudy;
import org.ohmloom.workbench.study.ReturnsPane;
import org.ohmloom.workbench.study.SensorStudy;
import org.ohmloom.workbench.study.StartStudy;
import org.ohmloom.workbench.study.Study;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.study.TolerancePane;
import org.ohmloom.workbench.whatif.WhatIfPane;

/** The studies in the order of their tabs. */
public final class Studies {

    /** All of them. */
    public static final List<Study<?>> ALL = List.of(
            new ProtectionStudy(),
            new StartStudy(),
            new ChargeView(),
            new CombinationStudy(),
            new DutyStudy(),
            new DutyRangeStudy(),
            new ConductorStudy());

    /** The studies of the return paths in the order of their lists, all behind one tab. */
    public static final List<Study<?>> RETURNS = List.of(
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
    public static List<Command> commands(Bench bench) {
        List<Command> all = new ArrayList<>();
        all.add(new ShowStudy(bench, TabName.of(CurrentsPane.KEY)).withMnemonic('C'));
        ALL.forEach(study -> all.add(new ShowStudy(bench, TabName.of(study)).withMnemonic(letter(study.key()))));
        all.add(new ShowStudy(bench, TabName.of(ReturnsPane.KEY)).withMnemonic('R'));
        // No letter of this menu is left.
        all.add(new ShowStudy(bench, TabName.of(TolerancePane.KEY)));
        all.add(new ShowStudy(bench, TabName.of(PinViewPane.KEY)).withMnemonic('G'));
        all.add(new ShowStudy(bench, TabName.of(ChannelsPane.KEY)).withMnemonic('Z'));
        all.add(new ShowStudy(bench, TabName.of(StatesPane.KEY)).withMnemonic('Q'));
        all.add(new ShowStudy(bench, TabName.of(FabricationPane.KEY)).withMnemonic('K'));
        all.add(new ShowStudy(bench, TabName.of(RecordPane.KEY)).withMnemonic('B'));
        all.add(new ShowStudy(bench, TabName.of(ComparePane.KEY)).withMnemonic('M'));
        all.add(new ShowStudy(bench, TabName.of(WhatIfPane.KEY)).withMnemonic('J'));
        return all;
    }
}
