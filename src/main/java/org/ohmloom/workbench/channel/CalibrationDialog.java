package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Asks for the calibration of a sensor: one that is read, one that is not yet, or a new one. */
final class CalibrationDialog {

    private CalibrationDialog() {}

    /** The edit that enters it; empty when a person gives up. */
    static Optional<Edit> ask(Component over, Desk desk, ScenePainter painter, Calibrated of) {
        String title = of.channel()
                .map(channel -> Words.of("channels")
                        .get("calibrate.title", of.component().name(), channel.at()))
                .orElseGet(() -> Words.of("channels")
                        .get(
                                of.there() ? "calibrate.unread" : "calibrate.free",
                                of.component().name()));
        ReturnRules rules = desk.harness().orElseThrow().rules().returnRules();
        return new PaneDialog(over, "calibration-dialog", title)
                .noSmaller()
                .ask(answer -> new CalibrationPane(of, rules, painter, answer), CalibrationPane::okButton);
    }

    /** The sensor that is selected, else the first that is read, else the first; a new one where there is none. */
    static Optional<Calibrated> chosen(Desk desk) {
        return desk.harness().map(now -> {
            List<Calibrated> read = desk.analysis().stream()
                    .flatMap(results -> results.evidence().signals().channels().stream())
                    .filter(each ->
                            now.components().has(each.channel().component().id()))
                    .map(each -> Calibrated.read(each.channel()))
                    .toList();
            List<Calibrated> all = new ArrayList<>(read);
            now.components().all().forEach(each -> Calibrated.unread(each).ifPresent(all::add));
            return all.stream()
                    .filter(each -> desk.selection()
                            .lead()
                            .filter(each.component().id().value()::equals)
                            .isPresent())
                    .findFirst()
                    .or(() -> all.stream().findFirst())
                    .orElseGet(() -> Calibrated.fresh(now));
        });
    }
}
