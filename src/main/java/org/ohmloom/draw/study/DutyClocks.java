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
import org.ohmloom.words.Text;

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
                        StudyTexts.text("clock", clock.id()),
                        Text.of(state.name() + ", " + Formats.hertz(clock.frequencyHertz())),
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
                Text.of(member),
                on,
                solution.flow(member).flatMap(flow -> flow.branch().element()).map(element -> element.value()));
    }

    /** In words: who shares the clock of an output, its stretches, and the clocks it shares nothing with. */
    public static List<Text> words(DutyResults duty, BranchId output) {
        List<Text> words = new ArrayList<>();
        of(duty, output).ifPresent(clock -> {
            SortedSet<BranchId> members = members(clock);
            words.add(StudyTexts.text(
                    members.size() == 1 ? "clock.alone" : "clock.shared",
                    clock.id(),
                    Formats.quantity(clock.periodSeconds(), Dimension.TIME),
                    names(members)));
            List<Text> stretches =
                    clock.stretches().stream().map(DutyClocks::words).toList();
            words.add(StudyTexts.text("clock.stretches", Text.joined("; ", stretches)));
            List<String> others = duty.clocks().stream()
                    .filter(other -> !other.equals(clock))
                    .map(Clock::id)
                    .toList();
            if (!others.isEmpty()) {
                words.add(StudyTexts.text(
                        duty.sampled() ? "clock.others-sampled" : "clock.others-all",
                        String.join(", ", others),
                        duty.moments()));
            }
        });
        return words;
    }

    private static Text words(Stretch stretch) {
        double end = stretch.startFraction() + stretch.shareFraction();
        return StudyTexts.text(
                stretch.on().isEmpty() ? "clock.stretch-off" : "clock.stretch-on",
                Formats.percent(stretch.startFraction()),
                Formats.percent(end > 1 + 1e-9 ? end - 1 : end),
                names(stretch.on()));
    }

    private static String names(SortedSet<BranchId> ids) {
        return ids.stream().map(BranchId::value).collect(Collectors.joining(", "));
    }
}
