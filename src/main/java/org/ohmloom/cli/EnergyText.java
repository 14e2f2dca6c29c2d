package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.EnergyBalance;
import org.ohmloom.solve.Solution;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.units.Formats;

/** Where the power of each operating state goes, as text and as JSON. */
final class EnergyText {

    private EnergyText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        TextTable table = new TextTable()
                .left("OPERATING STATE")
                .right("SOURCES GIVE")
                .right("BATTERIES TAKE")
                .right("LOADS TAKE")
                .right("LOST IN CONDUCTORS")
                .right("LOST IN DEVICES")
                .right("UNACCOUNTED");
        for (OperatingState state : states) {
            analysis.solution(state.id())
                    .map(EnergyBalance::of)
                    .ifPresent(energy -> table.row(
                            state.name(),
                            Formats.watts(energy.givenWatts()),
                            Formats.watts(energy.chargingWatts()),
                            Formats.watts(energy.loadsWatts()),
                            Formats.watts(energy.conductorsWatts()),
                            Formats.watts(energy.devicesWatts()),
                            energy.missWords()));
        }
        if (!table.isEmpty()) {
            out.println("POWER (means over time; contacts and chassis count as conductors)");
            table.print(out);
            out.println();
        }
    }

    /** Adds the key {@code energy} of a state. */
    static void write(Solution solution, JsonObjectWriter item) {
        EnergyBalance energy = EnergyBalance.of(solution);
        item.put("energyMissRatio", energy.missRatio());
        item.object("energy", entry -> {
            entry.put("givenWatts", energy.givenWatts());
            entry.put("chargingWatts", energy.chargingWatts());
            entry.put("loadsWatts", energy.loadsWatts());
            entry.put("conductorsWatts", energy.conductorsWatts());
            entry.put("devicesWatts", energy.devicesWatts());
            entry.put("missWatts", energy.missWatts());
        });
    }
}
