package org.ohmloom.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.ground.GroundReading;
import org.ohmloom.ground.GroundReading.JointReading;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.units.Formats;

/** Ground points and the loops of the return network as text. */
final class LoopsText {

    private static final int MOST_SHARES = 3;
    private static final int WIDTH = 110;
    private static final double MM2_IN_A_SQUARE_METRE = 1e6;

    private LoopsText() {}

    static void print(Analysis analysis, List<OperatingState> states, PrintWriter out) {
        ReturnStudy study = analysis.evidence().returns();
        Set<StateId> asked = states.stream().map(OperatingState::id).collect(Collectors.toSet());
        grounds(analysis, asked, study.grounds(), out);
        loops(analysis, asked, study.loops(), out);
    }

    private static void grounds(Analysis analysis, Set<StateId> asked, List<GroundReading> grounds, PrintWriter out) {
        TextTable table = new TextTable()
                .left("GROUND POINT")
                .right("ON STUDS")
                .right("MAY HOLD")
                .left("WORST STATE")
                .right("CURRENT")
                .right("LARGEST")
                .right("JOINT")
                .right("OFFSET")
                .left("WHOSE CURRENT");
        for (GroundReading ground : grounds) {
            Optional<StateId> worst = worst(ground, asked);
            Optional<JointReading> joint = worst.map(ground.states()::get);
            table.row(
                    ground.ground().value(),
                    String.valueOf(ground.stacked().size()),
                    String.valueOf(ground.mostStacked()),
                    worst.map(id -> name(analysis, id)).orElse("-"),
                    joint.map(each -> Formats.amps(each.amps())).orElse("-"),
                    joint.map(each -> Formats.amps(each.onAmps())).orElse("-"),
                    joint.map(each -> Formats.volts(each.jointVolts())).orElse("-"),
                    joint.map(each -> Formats.volts(each.offsetVolts())).orElse("-"),
                    worst.equals(ground.worst()) ? shares(ground) : "-");
        }
        if (!table.isEmpty()) {
            out.println();
            out.println(
                    "GROUND POINTS (current from the stud into the body, mean and largest; voltage over the joint; offset of"
                            + " the stud from the first source's negative)");
            table.print(out);
        }
    }

    /** Of the states asked for the one with the most current through the joint. */
    private static Optional<StateId> worst(GroundReading ground, Set<StateId> asked) {
        return ground.states().keySet().stream()
                .filter(asked::contains)
                .filter(id -> ground.states().get(id).onAmps() != 0)
                .max(Comparator.comparingDouble(
                        id -> Math.abs(ground.states().get(id).onAmps())));
    }

    private static String shares(GroundReading ground) {
        String first = ground.returning().stream()
                .limit(MOST_SHARES)
                .map(share -> share.cause() + " " + Formats.amps(share.amps()))
                .collect(Collectors.joining(", "));
        int more = ground.returning().size() - MOST_SHARES;
        return first.isEmpty() ? "-" : first + (more > 0 ? ", " + more + " more" : "");
    }

    private static void loops(Analysis analysis, Set<StateId> asked, List<LoopReading> loops, PrintWriter out) {
        if (loops.isEmpty()) {
            return;
        }
        out.println();
        out.println("LOOPS OF THE RETURN NETWORK (smallest set; resistance at the solved temperatures)");
        int number = 0;
        for (LoopReading loop : loops) {
            number++;
            out.println(Wrap.indented(
                    number + ". "
                            + loop.loop().members().stream()
                                    .map(BranchId::value)
                                    .collect(Collectors.joining(" - ")),
                    2,
                    WIDTH));
            out.println(Wrap.indented(line(analysis, asked, loop), 5, WIDTH));
        }
    }

    private static String line(Analysis analysis, Set<StateId> asked, LoopReading loop) {
        StringBuilder line = new StringBuilder(Formats.ohms(loop.ohms()) + " round it");
        largest(analysis, asked, loop)
                .ifPresent(text -> line.append("; at most ").append(text));
        loop.stray().filter(stray -> asked.contains(stray.state())).ifPresent(stray -> line.append("; load current in ")
                .append(stray.member())
                .append(": ")
                .append(Formats.amps(stray.onAmps()))
                .append(" in ")
                .append(name(analysis, stray.state())));
        loop.enclosed().ifPresent(area -> line.append("; encloses ")
                .append(Formats.squareMillimetres(area.squareMetres() * MM2_IN_A_SQUARE_METRE))
                .append(" (")
                .append(area.how())
                .append(")"));
        loop.field().ifPresent(field -> line.append("; the field induces ")
                .append(Formats.volts(field.volts()))
                .append(" and drives ")
                .append(Formats.amps(field.amps())));
        loop.intended().ifPresent(reason -> line.append("; intended: ").append(reason));
        return line.append('.').toString();
    }

    /** The largest mean current of a member over all states, with where and when. */
    private static Optional<String> largest(Analysis analysis, Set<StateId> asked, LoopReading loop) {
        record Peak(double amps, BranchId member, StateId state) {}
        return loop.ampsByState().entrySet().stream()
                .filter(entry -> asked.contains(entry.getKey()))
                .flatMap(entry -> IntStream.range(0, entry.getValue().size())
                        .mapToObj(k -> new Peak(
                                Math.abs(entry.getValue().get(k)),
                                loop.loop().members().get(k),
                                entry.getKey())))
                .filter(peak -> peak.amps() > 0)
                .max(Comparator.comparingDouble(Peak::amps))
                .map(peak ->
                        Formats.amps(peak.amps()) + " in " + peak.member() + " in " + name(analysis, peak.state()));
    }

    private static String name(Analysis analysis, StateId id) {
        return analysis.harness().states().get(id).name();
    }
}
