package org.ohmloom.edit;

import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.words.Text;

/**
 * Puts another covering over a bundle segment.
 *
 * @param segment  the segment
 * @param covering its covering from now on
 */
public record ChangeCovering(SegmentId segment, Covering covering) implements Edit {

    @Override
    public Text label() {
        return Labels.text("cover", segment, covering.size().orElse(covering.text()));
    }

    @Override
    public Harness apply(Harness before) {
        BundleSegment now = before.segments().get(segment);
        return before.with(now.withCovering(covering));
    }
}
