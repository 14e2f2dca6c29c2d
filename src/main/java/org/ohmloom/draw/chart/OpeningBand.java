package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.words.Text;

/**
 * Between which times a protective device opens, by the rows its standard publishes. Drawn in steps, never interpolated:
 * between two rows it opens no sooner than the row above says and no later than the row below says.
 *
 * @param label   what it is, short
 * @param rows    the rows, smallest current first
 * @param element id of the device, for hit testing
 */
public record OpeningBand(Text label, List<Row> rows, Optional<String> element) {

    public OpeningBand {
        rows = rows.stream().sorted(Comparator.comparingDouble(Row::amps)).toList();
    }

    /**
     * A published row.
     *
     * @param amps           current, A, above 0
     * @param minimumSeconds the soonest it opens, s; empty when the row does not say
     * @param maximumSeconds the latest it opens, s; empty when it may never open
     */
    public record Row(double amps, OptionalDouble minimumSeconds, OptionalDouble maximumSeconds) {}

    /** The latest opening as a line of steps, from the first row that has one; empty when none has. */
    List<TimeCurrentCurve.At> latest(double mostAmps, double neverSeconds) {
        List<TimeCurrentCurve.At> line = new ArrayList<>();
        double seconds = neverSeconds;
        for (Row row : rows) {
            if (row.maximumSeconds().isPresent()) {
                line.add(new TimeCurrentCurve.At(row.amps(), seconds));
                seconds = Math.min(seconds, row.maximumSeconds().getAsDouble());
                line.add(new TimeCurrentCurve.At(row.amps(), seconds));
            }
        }
        if (!line.isEmpty() && line.get(line.size() - 1).amps() < mostAmps) {
            line.add(new TimeCurrentCurve.At(mostAmps, seconds));
        }
        return line;
    }

    /** The soonest opening as a line of steps, up to the last row that has one; empty when none has. */
    List<TimeCurrentCurve.At> soonest(double neverSeconds) {
        List<TimeCurrentCurve.At> line = new ArrayList<>();
        double seconds = neverSeconds;
        for (Row row : rows) {
            if (row.minimumSeconds().isPresent()) {
                double next = Math.min(seconds, row.minimumSeconds().getAsDouble());
                if (line.isEmpty()) {
                    line.add(new TimeCurrentCurve.At(row.amps(), neverSeconds));
                    line.add(new TimeCurrentCurve.At(row.amps(), next));
                } else {
                    line.add(new TimeCurrentCurve.At(line.get(line.size() - 1).amps(), next));
                    line.add(new TimeCurrentCurve.At(row.amps(), next));
                }
                seconds = next;
            }
        }
        return line;
    }
}
