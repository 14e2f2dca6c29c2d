package org.ohmloom.workbench.channel;

import java.awt.Component;
import java.util.Optional;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.signal.study.ChannelReading;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.words.Words;

/** Asks for the calibration of the channel that is selected, or of the first. */
final class CalibrationDialog {

    private CalibrationDialog() {}

    /** The edit that enters it; empty when a person gives up, or there is no channel. */
    static Optional<Edit> ask(Component over, Desk desk, ScenePainter painter) {
        Optional<ChannelReading> reading = desk.analysis().stream()
                .flatMap(results -> results.evidence().signals().channels().stream())
                .filter(each -> desk.harness()
                        .filter(now ->
                                now.components().has(each.channel().component().id()))
                        .isPresent())
                .min(java.util.Comparator.comparing(each -> desk.selection()
                                .lead()
                                .filter(each.channel().component().id().value()::equals)
                                .isPresent()
                        ? 0
                        : 1));
        return reading.flatMap(each -> {
            String title = Words.of("channels")
                    .get(
                            "calibrate.title",
                            each.channel().component().name(),
                            each.channel().at());
            ReturnRules rules = desk.harness().orElseThrow().rules().returnRules();
            return new PaneDialog(over, "calibration-dialog", title)
                    .noSmaller()
                    .ask(answer -> new CalibrationPane(each, rules, painter, answer), CalibrationPane::okButton);
        });
    }
}
