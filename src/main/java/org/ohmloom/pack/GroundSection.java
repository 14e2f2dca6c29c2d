package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.study.Named;
import org.ohmloom.draw.study.ReturnPictures;
import org.ohmloom.ground.GroundReading;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/** What comes back at every ground point, as a picture and state by state. */
final class GroundSection {

    private static final double PICTURE_HEIGHT_MM = 142;

    private static final List<Column> COLUMNS = List.of(
            Column.code("Ground"),
            Column.words("Name"),
            Column.words("State"),
            Column.number("Offset", Unit.MILLIVOLT, 1),
            Column.number("Joint", Unit.MILLIVOLT, 2),
            Column.number("Joint share", Unit.PERCENT, 0),
            Column.number("Current", Unit.AMP, 2),
            Column.number("On", Unit.AMP, 2),
            Column.count("Terminals", 0),
            Column.words("On its stud"));

    private final Analysis analysis;
    private final SceneFonts fonts;

    GroundSection(Analysis analysis, SceneFonts fonts) {
        this.analysis = analysis;
        this.fonts = fonts;
    }

    List<Block> blocks() {
        ReturnStudy study = analysis.evidence().returns();
        List<Scene> pictures = ReturnPictures.of(
                        analysis.harness(), study, analysis.evidence().drawn(), Optional.empty())
                .map(picture -> picture.pages(fonts, Block.Pictures.WIDTH_MM, PICTURE_HEIGHT_MM))
                .orElse(List.of());
        List<Row> rows = new ArrayList<>();
        study.grounds().forEach(ground -> ground.states()
                .forEach((state, joint) -> rows.add(row(ground, Named.state(analysis.harness(), state), joint))));
        List<Block> blocks = new ArrayList<>();
        if (!rows.isEmpty()) {
            blocks.add(new Block.Heading("Ground points"));
            blocks.add(new Block.Prose("Offset: mean voltage of the stud above "
                    + ReturnPictures.reference(analysis.evidence().drawn())
                    + ", of which the joint makes so much; its share is told where nothing else pulls the other way. Current from the stud into the body; below zero it comes out of"
                    + " it. At most " + GroundReading.MOST_ON_STUD
                    + " terminals on one stud: FAA AC 43.13-1B, 11-174 b;"
                    + " ABYC E-11, 11.14.6.9."));
            blocks.add(new Block.Table("ground-points", COLUMNS, rows, ""));
        }
        if (!pictures.isEmpty()) {
            blocks.add(new Block.Heading("Return paths, each point in its worst state"));
            blocks.add(new Block.Pictures(pictures));
        }
        return blocks;
    }

    /** The share of the joint; empty where other currents pull against it, so that a share means nothing. */
    private static Cell share(GroundReading.JointReading joint) {
        double fraction = joint.jointFraction();
        return fraction >= 0 && fraction <= 1 ? Cell.number(Unit.PERCENT.fromCanonical(fraction)) : Cell.empty();
    }

    private Row row(GroundReading ground, String state, GroundReading.JointReading joint) {
        int count = ground.stacked().size();
        Cell terminals = Cell.number(count);
        return Row.of(
                Cell.text(ground.ground().value()).toned(Cell.Tone.STRONG),
                Cell.text(Named.name(analysis.harness(), ground.ground())),
                Cell.text(state),
                Cell.number(Unit.MILLIVOLT.fromCanonical(joint.offsetVolts())),
                Cell.number(Unit.MILLIVOLT.fromCanonical(joint.jointVolts())),
                share(joint),
                Cell.number(joint.amps()),
                Cell.number(joint.onAmps()),
                count > ground.mostStacked() ? terminals.toned(Cell.Tone.ALERT) : terminals,
                Cell.text(Wording.ids(ground.stacked())));
    }
}
