package org.ohmloom.draw.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * A control-unit ground or sensor return in a {@link ReturnPicture}: a place that carries little and must stay near its
 * reference.
 *
 * @param element     id of what it belongs to
 * @param label       its identity as written
 * @param name        what people call it
 * @param kind        what it is
 * @param against     what it is measured against
 * @param state       name of the state it is shown in; empty when all are shown in one
 * @param volts       mean voltage above its own reference, V
 * @param rippleVolts how far it swings, V, 0 or more
 * @param limitVolts  most it may be away from its reference, V
 */
public record Gauge(
        String element,
        String label,
        String name,
        Kind kind,
        String against,
        String state,
        double volts,
        double rippleVolts,
        OptionalDouble limitVolts)
        implements ReturnColumn {

    /** What is measured. */
    public enum Kind {
        UNIT_GROUND("unit-ground"),
        BUS_NODE("bus-node"),
        SENSOR_RETURN("sensor-return");

        private final String key;

        Kind(String key) {
            this.key = key;
        }

        /** One of them in words. */
        public Text word() {
            return ChartTexts.text(key);
        }
    }

    @Override
    public Text second() {
        return ChartTexts.text("from", against);
    }

    @Override
    public Text group() {
        return ChartTexts.text("group." + kind.key);
    }

    @Override
    public Text description() {
        String here = Formats.volts(volts);
        List<Text> parts = new ArrayList<>();
        parts.add(
                rippleVolts > 0
                        ? ChartTexts.text(
                                "gauge.swinging", called(), kind.word(), here, against, Formats.volts(rippleVolts))
                        : ChartTexts.text("gauge", called(), kind.word(), here, against));
        limitVolts.ifPresent(limit -> parts.add(ChartTexts.text("gauge.allowed", Formats.volts(limit))));
        return sentence(parts);
    }
}
