package org.ohmloom.edit;

import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.words.Text;

/**
 * Moves a splice to another place of the physical harness; its wires keep their ends.
 *
 * @param splice the splice
 * @param place  where it lies from now on
 */
public record MoveSplice(SpliceId splice, Place place) implements Edit {

    @Override
    public Text label() {
        return Labels.text("move-splice", splice);
    }

    @Override
    public Harness apply(Harness before) {
        Splice now = before.splices().get(splice);
        return before.with(now.withPlace(place));
    }
}
