package org.ohmloom.draw.chart;

import java.util.OptionalDouble;
import org.ohmloom.units.Formats;

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
        UNIT_GROUND("Control units", "control-unit ground"),
        BUS_NODE("Bus nodes", "ground of a bus node"),
        SENSOR_RETURN("Sensor returns", "sensor return");

        private final String plural;
        private final String word;

        Kind(String plural, String word) {
            this.plural = plural;
            this.word = word;
        }

        /** One of them in words. */
        public String word() {
            return word;
        }
    }

    @Override
    public String second() {
        return "from " + against;
    }

    @Override
    public String group() {
        return kind.plural;
    }

    @Override
    public String description() {
        return label + (name.isEmpty() || name.equals(label) ? "" : " " + name) + ", " + kind.word() + ": "
                + Formats.volts(volts) + " from " + against
                + (rippleVolts > 0 ? ", swinging by " + Formats.volts(rippleVolts) : "")
                + (limitVolts().isPresent() ? "; allowed " + Formats.volts(limitVolts.getAsDouble()) : "")
                + (isOver() ? "; beyond its limit" : "")
                + (state.isEmpty() ? "" : "; in " + state);
    }
}
