package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.draw.chart.ClockChart;
import org.ohmloom.draw.chart.ClockChart.OnTime;
import org.ohmloom.graph.BranchId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.Clock;
import org.ohmloom.solve.DutyResults;
import org.ohmloom.solve.Solution;
import org.ohmloom.solve.Stretch;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Formats;

/** Which outputs share a clock, and which of them are on when within its period. */
public final class DutyClocks {

    private DutyClocks() {}

    /** The clock of something that switches. */
    public static Optional<Clock> of(DutyResults duty, BranchId output) {
        return duty.clocks().stream()
                .filter(clock -> members(clock).contains(output))
                .findFirst();
    }

    /** What switches on a clock, in order. */
    public static SortedSet<BranchId> members(Clock clock) {
        SortedSet<BranchId> members = new TreeSet<>();
        clock.stretches().forEach(stretch -> members.addAll(stretch.on()));
        return members;
    }

    /** What is on when within the period of the clock of an output. */
    public static Optional<ClockChart> chart(OperatingState state, Solution solution, BranchId output) {
        return of(solution.duty(), output)
                .map(clock -> new ClockChart(
                        "Clock " + clock.id() + ": one period",
                        state.name() + ", " + Formats.hertz(clock.frequencyHertz()),
                        clock.periodSeconds(),
                        members(clock).stream()
                                .map(member -> lane(solution, clock, member))
                                .toList()));
    }

    private static ClockChart.Lane lane(Solution solution, Clock clock, BranchId member) {
        List<OnTime> on = new ArrayList<>();
        for (Stretch stretch : clock.stretches()) {
            if (stretch.on().contains(member)) {
                double end = stretch.startFraction() + stretch.shareFraction();
                on.add(new OnTime(stretch.startFraction(), Math.min(1, end)));
                if (end > 1 + 1e-9) {
                    on.add(new OnTime(0, end - 1));
                }
            }
        }
        return new ClockChart.Lane(
                member.value(),
                on,
                solution.flow(member).flatMap(flow -> flow.branch().element()).map(element -> element.value()));
    }

    /** In words: who shares the clock of an output, its stretches, and the clocks it shares nothing with. */
    public static List<String> words(DutyResults duty, BranchId output) {
        List<String> words = new ArrayList<>();
        of(duty, output).ifPresent(clock -> {
            SortedSet<BranchId> members = members(clock);
            words.add("Clock " + clock.id() + ", period " + Formats.quantity(clock.periodSeconds(), Dimension.TIME)
                    + ": "
                    + (members.size() == 1
                            ? "nothing else switches on it."
                            : names(members) + " share it and keep their phases to each other."));
            words.add("Stretches of its period: "
                    + clock.stretches().stream().map(DutyClocks::words).collect(Collectors.joining("; ")) + ".");
            List<String> others = duty.clocks().stream()
                    .filter(other -> !other.equals(clock))
                    .map(Clock::id)
                    .toList();
            if (!others.isEmpty()) {
                words.add("On clocks of their own, in any position to it: " + String.join(", ", others)
                        + ". Together " + duty.moments() + " combinations of on and off are solved"
                        + (duty.sampled() ? ", a sample of them all." : ", all there are."));
            }
        });
        return words;
    }

    private static String words(Stretch stretch) {
        double end = stretch.startFraction() + stretch.shareFraction();
        return "from " + Formats.percent(stretch.startFraction()) + " to "
                + Formats.percent(end > 1 + 1e-9 ? end - 1 : end) + " "
                + (stretch.on().isEmpty() ? "all off" : names(stretch.on()) + " on");
    }

    private static String names(SortedSet<BranchId> ids) {
        return ids.stream().map(BranchId::value).collect(Collectors.joining(", "));
    }
}
