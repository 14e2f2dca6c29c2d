package org.ohmloom.analysis;

import java.util.Collections;
import java.util.SortedMap;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.StudyResults;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.size.ConductorChooser;
import org.ohmloom.size.DeviceChooser;
import org.ohmloom.size.JointChoice;
import org.ohmloom.size.SizingInput;

/**
 * Sizes with the states solved with them, which everything else rests on.
 *
 * @param sized   the sizes and the states
 * @param input   what the choice of protective devices rests on
 * @param ratings what each wire is, carries and may carry
 */
record Core(JointSized sized, SizingInput input, SortedMap<WireId, WireRating> ratings) {

    /** Each wire by itself; the sizes that do are chosen when somebody asks. */
    static Core of(Bench bench, Protection protection, SizesByWire alone) {
        SizingInput input = SizesByWire.input(bench, protection, alone.heated(), alone.sizes());
        SortedMap<WireId, ConductorChoice> choices = new ChoicesWhenAsked(() -> new ConductorChooser(
                        SizesByWire.input(bench.under(Cancel.NEVER), protection, alone.heated(), alone.sizes()))
                .chooseAll());
        JointSized sized = new JointSized(alone.sizes(), alone.heated(), JointChoice.NOT_ASKED, choices);
        return new Core(sized, input, ratings(bench, sized));
    }

    /** The same with other sizes; ratings are taken over where the states are the same. */
    Core with(Bench bench, JointSized changed, SizingInput rest) {
        return new Core(changed, rest, changed.heated() == heated() ? ratings : ratings(bench, changed));
    }

    private static SortedMap<WireId, WireRating> ratings(Bench bench, JointSized sized) {
        return Collections.unmodifiableSortedMap(Ratings.of(bench, sized.sizes(), sized.heated()));
    }

    HeatedSolutions heated() {
        return sized.heated();
    }

    /** The evidence with these sizes; ratings of devices ride through the starts as far as they have been followed. */
    Evidence evidence(Bench bench, Protection protection, StudyResults studies) {
        return new Evidence(
                bench.harness(),
                bench.tables(),
                bench.basis(),
                bench.routes(),
                bench.lengths(),
                Collections.unmodifiableSortedMap(heated().solutions()),
                Collections.unmodifiableSortedMap(heated().wireCelsius()),
                ratings,
                sized.conductors(),
                sized.choice(),
                new DeviceChooser(input, studies.startUps()).chooseAll(),
                protection.drawn(),
                protection.upstream(),
                studies);
    }
}
