package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.ground.sensor.Unjudged;
import org.ohmloom.pack.page.Block;

/** The return paths: ground points, loops, offsets and who makes them, sensor errors, coupling, lost returns. */
final class ReturnSections {

    private final Analysis analysis;
    private final SceneFonts fonts;

    ReturnSections(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    /** Only what there is something to say about. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.addAll(new GroundSection(analysis, fonts).blocks());
        blocks.addAll(new LoopSection(analysis).blocks());
        blocks.addAll(new OffsetSection(analysis, fonts).blocks());
        blocks.addAll(new SensorSection(analysis, fonts).blocks());
        blocks.addAll(new CouplingSection(analysis).blocks());
        blocks.addAll(new LossSection(analysis).blocks());
        ReturnStudy study = analysis.evidence().returns();
        if (!study.unjudged().isEmpty()) {
            blocks.add(new Block.Heading("What could not be judged of the return paths"));
            blocks.add(new Block.Points(
                    study.unjudged().stream().map(Unjudged::sentence).toList()));
        }
        return blocks;
    }
}
