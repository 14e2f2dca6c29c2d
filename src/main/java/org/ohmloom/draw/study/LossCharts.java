package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.BarChart;
import org.ohmloom.draw.chart.BarRow;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/** Where the current goes when a return or a fuse opens. */
public final class LossCharts {

    private static final int MOST_ROWS = 14;

    private LossCharts() {}

    /** The ways the current takes instead, before and after; empty when it takes none. */
    public static Optional<BarChart> of(Harness harness, LostReturn loss) {
        Map<ElementId, LostReturn.Overload> limits = new LinkedHashMap<>();
        loss.overLimit().forEach(each -> limits.put(each.member(), each));
        List<BarRow> rows = new ArrayList<>();
        for (LostReturn.Detour detour : loss.detours()) {
            LostReturn.Overload limit = limits.remove(detour.member());
            rows.add(row(
                    harness,
                    detour.member(),
                    OptionalDouble.of(detour.beforeAmps()),
                    detour.afterAmps(),
                    limit == null ? OptionalDouble.empty() : OptionalDouble.of(limit.limitAmps())));
        }
        limits.forEach((member, over) -> rows.add(
                row(harness, member, OptionalDouble.empty(), over.amps(), OptionalDouble.of(over.limitAmps()))));
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        String state = Named.state(harness, loss.state());
        boolean limited = rows.stream().anyMatch(row -> row.limit().isPresent());
        return Optional.of(new BarChart(
                StudyTexts.text("loss", Named.label(harness, loss.opened())),
                rows.size() > MOST_ROWS
                        ? StudyTexts.text("loss.largest", state, MOST_ROWS, rows.size())
                        : Text.of(state),
                Dimension.CURRENT,
                List.of(StudyTexts.text("loss.before"), StudyTexts.text("loss.after")),
                limited ? StudyTexts.text("may-carry") : Text.NONE,
                rows.subList(0, Math.min(MOST_ROWS, rows.size()))));
    }

    private static BarRow row(
            Harness harness, ElementId member, OptionalDouble before, double after, OptionalDouble limit) {
        return new BarRow(
                Text.of(Named.label(harness, member)),
                List.of(before, OptionalDouble.of(after)),
                limit,
                Optional.of(member.value()));
    }
}
