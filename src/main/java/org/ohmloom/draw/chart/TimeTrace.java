package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import org.ohmloom.units.Dimension;
import org.ohmloom.words.Text;

/**
 * A value over time.
 *
 * @param label     what it is, short: it stands at the line
 * @param dimension what is measured; a chart shows at most two
 * @param samples   its values in the order of time; without any it is left out
 * @param element   id of the element it belongs to, for hit testing
 */
public record TimeTrace(Text label, Dimension dimension, List<Sample> samples, Optional<String> element) {

    public TimeTrace {
        samples = List.copyOf(samples);
    }

    /**
     * A value at a time.
     *
     * @param seconds when, s, finite
     * @param value   how much, canonical unit of the trace's dimension, finite
     */
    public record Sample(double seconds, double value) {
        public Sample {
            if (!Double.isFinite(seconds) || !Double.isFinite(value)) {
                throw new IllegalArgumentException("a sample is a number, had " + value + " at " + seconds + " s");
            }
        }
    }
}
