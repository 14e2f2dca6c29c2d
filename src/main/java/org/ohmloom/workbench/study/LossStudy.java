package org.ohmloom.workbench.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.draw.study.LossCharts;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.ReturnReadings;
import org.ohmloom.ground.LostReturn;
import org.ohmloom.model.ElementId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;

/** What happens when a ground, a ground wire, a strap or a fuse opens. */
public final class LossStudy implements Study<LostReturn> {

    @Override
    public String key() {
        return "returns-lost";
    }

    @Override
    public String title() {
        return "Lost returns";
    }

    @Override
    public String about() {
        return "Each ground, ground wire, strap and fuse opened in turn: where the current goes instead";
    }

    @Override
    public List<Column<LostReturn>> columns() {
        return List.of(
                Column.text("Opens", "What opens", 8, row -> row.opened().value()),
                Column.text("Overloads", "Most overloaded member", 9, row -> worst(row)
                        .map(each -> each.member().value())
                        .orElse("")),
                Column.number("to", "A", "Current in it afterwards", row -> worst(row)
                        .map(each -> ReturnRows.over(CellText.of(each.amps()), each.source()))
                        .orElse(CellText.EMPTY)),
                Column.number("may", "A", "Most it may carry", row -> worst(row)
                        .map(each -> CellText.of(each.limitAmps()))
                        .orElse(CellText.EMPTY)),
                Column.text(
                        "Fed backwards",
                        "Loads fed the wrong way round",
                        13,
                        row -> ReturnRows.ids(row.fedBackwards())),
                Column.text("Dead", "Loads that no longer run", 12, row -> ReturnRows.ids(row.dead())),
                Column.text("Instead by", "Where most of the current goes", 9, row -> row.detours().stream()
                        .findFirst()
                        .map(each -> each.member().value())
                        .orElse("")),
                Column.text("State", "State in which most happens, or the one asked for", 10, row -> row.state()
                        .value()));
    }

    private static Optional<LostReturn.Overload> worst(LostReturn row) {
        return row.overLimit().stream().max(Comparator.comparingDouble(each -> each.amps() / each.limitAmps()));
    }

    @Override
    public Set<StudyPart> needs() {
        return Set.of(StudyPart.LOST_RETURNS);
    }

    @Override
    public List<LostReturn> rows(Readout readout) {
        return ReturnReadings.losses(ReturnRows.study(readout), readout.state());
    }

    @Override
    public ElementId id(LostReturn row) {
        return row.opened();
    }

    @Override
    public List<ElementId> path(Readout readout, LostReturn row) {
        return row.detours().stream().map(LostReturn.Detour::member).toList();
    }

    @Override
    public String nothing(Readout readout) {
        return "No ground, ground wire, strap or fuse does harm when it opens: nothing is overloaded, fed backwards or goes"
                + " dead in any operating state, or no state was solved yet.";
    }

    @Override
    public Optional<Picture> picture(Readout readout, LostReturn row, Optional<String> selected) {
        return LossCharts.of(readout.harness(), row)
                .map(chart -> new Picture(
                        chart.title() + ": where the current goes instead",
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, LostReturn row) {
        List<String> steps = new ArrayList<>();
        steps.add(Named.label(readout.harness(), row.opened()) + " opens in " + readout.stateName(row.state())
                + ". Solved anew without it.");
        row.overLimit()
                .forEach(each -> steps.add(Named.label(readout.harness(), each.member()) + " carries "
                        + Formats.amps(each.amps()) + ", it may carry " + Formats.amps(each.limitAmps()) + " ("
                        + each.source() + ")."));
        if (!row.fedBackwards().isEmpty()) {
            steps.add("Fed the wrong way round: " + ReturnRows.ids(row.fedBackwards()) + ".");
        }
        if (!row.dead().isEmpty()) {
            steps.add("No longer runs: " + ReturnRows.ids(row.dead()) + ".");
        }
        row.detours()
                .forEach(each -> steps.add("Instead by " + Named.label(readout.harness(), each.member()) + ": "
                        + Formats.amps(each.beforeAmps()) + " before, " + Formats.amps(each.afterAmps()) + " after."));
        return steps;
    }
}
