package org.ohmloom.workbench.guide;

import java.util.Optional;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.units.GaugeSystem;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.words.Words;

/** Documents that begin here and live in no file yet. */
final class NewHarness {

    private static final double NOMINAL_VOLTS = 12;
    private static final double DROP_FRACTION = 0.05;
    private static final double AMBIENT_CELSIUS = 40;

    private NewHarness() {}

    /** A harness without anything in it: 12 V, judged as a road vehicle until a person says otherwise. */
    static Document empty() {
        String name = Words.of("guide").get("untitled");
        return Document.unsaved(
                Harness.empty(
                        TitleBlock.of(name, "1"),
                        new DesignRules(
                                "road-vehicle",
                                NOMINAL_VOLTS,
                                DROP_FRACTION,
                                GaugeSystem.METRIC,
                                "ISO 6722-1 class C",
                                Optional.empty(),
                                AMBIENT_CELSIUS)),
                name);
    }

    /** A harness that was laid out; laying it out is a step that can be undone, and that is not saved yet. */
    static Document of(Harness laidOut) {
        String title = laidOut.titleBlock().title();
        return Document.unsaved(
                Harness.empty(laidOut.titleBlock(), laidOut.rules()),
                title,
                Words.of("guide").text("lay-out.edit"),
                laidOut);
    }
}
