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
import org.ohmloom.workbench.words.Words;

/** What happens when a ground, a ground wire, a strap or a fuse opens. */
public final class LossStudy implements Study<LostReturn> {
    private static final Words WORDS = Words.of("studies");

    @Override
    public String key() {
        return "returns-lost";
    }

    @Override
    public String title() {
        return WORDS.get("loss.lost-returns");
    }

    @Override
    public String about() {
        return WORDS.get("loss.each-ground-ground-wire");
    }

    @Override
    public List<Column<LostReturn>> columns() {
        return List.of(
                Column.text(WORDS.term("loss.opens"), WORDS.get("loss.opens.about"), 8, row -> row.opened()
                        .value()),
                Column.text(WORDS.term("loss.overloads"), WORDS.get("loss.overloads.about"), 9, row -> worst(row)
                        .map(each -> each.member().value())
                        .orElse("")),
                Column.number(WORDS.term("loss.to"), "A", WORDS.get("loss.to.about"), row -> worst(row)
                        .map(each -> ReturnRows.over(CellText.of(each.amps()), each.source()))
                        .orElse(CellText.EMPTY)),
                Column.number(WORDS.term("loss.may"), "A", WORDS.get("loss.may.about"), row -> worst(row)
                        .map(each -> CellText.of(each.limitAmps()))
                        .orElse(CellText.EMPTY)),
                Column.text(
                        WORDS.term("loss.fed-backwards"),
                        WORDS.get("loss.fed-backwards.about"),
                        13,
                        row -> ReturnRows.ids(row.fedBackwards())),
                Column.text(
                        WORDS.term("loss.dead"), WORDS.get("loss.dead.about"), 12, row -> ReturnRows.ids(row.dead())),
                Column.text(
                        WORDS.term("loss.instead-by"),
                        WORDS.get("loss.instead-by.about"),
                        9,
                        row -> row.detours().stream()
                                .findFirst()
                                .map(each -> each.member().value())
                                .orElse("")),
                Column.text(WORDS.term("loss.state"), WORDS.get("loss.state.about"), 10, row -> row.state()
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
        return WORDS.get("loss.no-ground-ground-wire");
    }

    @Override
    public Optional<Picture> picture(Readout readout, LostReturn row, Optional<String> selected) {
        return LossCharts.of(readout.harness(), row)
                .map(chart -> new Picture(
                        WORDS.get("loss.where-the-current-goes", chart.title()),
                        (fonts, widthMm, heightMm) -> chart.scene(fonts, widthMm)));
    }

    @Override
    public List<String> steps(Readout readout, LostReturn row) {
        List<String> steps = new ArrayList<>();
        steps.add(WORDS.get(
                "loss.opens-in-solved-anew",
                Named.label(readout.harness(), row.opened()),
                readout.stateName(row.state())));
        row.overLimit()
                .forEach(each -> steps.add(WORDS.get(
                        "loss.carries-it-may-carry",
                        Named.label(readout.harness(), each.member()),
                        Formats.amps(each.amps()),
                        Formats.amps(each.limitAmps()),
                        each.source())));
        if (!row.fedBackwards().isEmpty()) {
            steps.add(WORDS.get("loss.fed-the-wrong-way", ReturnRows.ids(row.fedBackwards())));
        }
        if (!row.dead().isEmpty()) {
            steps.add(WORDS.get("loss.no-longer-runs", ReturnRows.ids(row.dead())));
        }
        row.detours()
                .forEach(each -> steps.add(WORDS.get(
                        "loss.instead-by-before-after",
                        Named.label(readout.harness(), each.member()),
                        Formats.amps(each.beforeAmps()),
                        Formats.amps(each.afterAmps()))));
        return steps;
    }
}
