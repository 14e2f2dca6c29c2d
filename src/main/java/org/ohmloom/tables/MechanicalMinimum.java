package org.ohmloom.tables;

import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * The smallest conductor a body of practice holds strong enough by itself.
 *
 * @param basis    the design basis it belongs to
 * @param awg      the smallest AWG size
 * @param metric   the smallest metric size
 * @param citation where it comes from
 */
public record MechanicalMinimum(String basis, Gauge awg, Gauge metric, Citation citation) {
    /** The smallest size of that system. */
    public Gauge gauge(GaugeSystem system) {
        return system == GaugeSystem.AWG ? awg : metric;
    }

    /** Reads a row with the columns basis, minimumAwg and minimumMetric. */
    static MechanicalMinimum read(RowReader row) {
        Gauge awg = row.gauge("minimumAwg");
        Gauge metric = row.gauge("minimumMetric");
        String text = row.text("basis") + ", " + awg.text() + " or " + metric.text();
        return new MechanicalMinimum(row.text("basis"), awg, metric, row.citation(text, "minimumAwg"));
    }
}
