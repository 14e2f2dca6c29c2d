package org.ohmloom.draw.chart;

import java.util.List;
import java.util.Optional;
import org.ohmloom.words.Text;

/**
 * A line in a time-current chart, such as how long a conductor withstands each current.
 *
 * @param label   what it is, short: it stands at the line
 * @param points  its points in order
 * @param element id of the element it belongs to, for hit testing
 */
public record TimeCurrentCurve(Text label, List<At> points, Optional<String> element) {

    public TimeCurrentCurve {
        points = points.stream()
                .filter(point -> point.amps() > 0 && point.seconds() > 0)
                .toList();
    }

    /**
     * A time at a current.
     *
     * @param amps    current, A
     * @param seconds time, s
     */
    public record At(double amps, double seconds) {}
}
