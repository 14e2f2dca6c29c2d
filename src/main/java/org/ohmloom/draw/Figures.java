package org.ohmloom.draw;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Harness;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.ShownUnits;

/** The numbers that stand on wires and bundles, as far as there are any, and the step of the scale each falls into. */
final class Figures {

    private final Readings readings;
    private final ShownUnits units;
    private final Optional<HeatScale> scale;
    private final Lettering lettering;

    Figures(
            Harness harness,
            Optional<Analysis> analysis,
            Optional<StateId> state,
            SceneOptions options,
            Lettering lettering) {
        this.lettering = lettering;
        this.readings = new Readings(harness, analysis, state, options.numbers());
        this.units = options.units();
        this.scale = HeatScale.of(harness, readings, options);
    }

    /** A text of the bundle {@code drawings}, in the language of the drawing. */
    String say(String key, Object... values) {
        return lettering.say(key, values);
    }

    /** The units in which they are written. */
    ShownUnits units() {
        return units;
    }

    /** The scale the numbers are shown by besides, if they are. */
    Optional<HeatScale> scale() {
        return scale;
    }

    /** The step of a wire. */
    Optional<HeatStep> step(WireId wire) {
        return scale.flatMap(known -> readings.ofWire(wire).map(known::step));
    }

    /** The step of a bundle. */
    Optional<HeatStep> step(String id, Collection<WireId> wires) {
        return scale.flatMap(known -> readings.ofBundle(id, wires).map(known::step));
    }

    /** The number on one wire. */
    Optional<String> ofWire(WireId wire) {
        if (readings.numbers() == SceneOptions.Numbers.SIZE) {
            return gauge(wire).map(units::size);
        }
        return number(wire);
    }

    /** The number of one wire in a description, when another than its size is asked for. */
    Optional<String> measured(WireId wire) {
        return switch (readings.numbers()) {
            case SIZE, NONE -> Optional.empty();
            case MARGIN -> number(wire).map(text -> lettering.say("margin", text));
            default -> number(wire);
        };
    }

    /** The number on a bundle: its diameter, the number of the wire that counts with its name, or the span of sizes. */
    Optional<String> ofBundle(String id, Collection<WireId> wires) {
        return switch (readings.numbers()) {
            case SIZE -> sizes(wires);
            case DIAMETER -> readings.ofBundle(id, wires).map(this::text);
            case MARGIN -> ofBundle(wires, "least");
            default -> ofBundle(wires, "most");
        };
    }

    private Optional<String> ofBundle(Collection<WireId> wires, String which) {
        return readings.decisive(wires)
                .flatMap(wire -> number(wire).map(text -> lettering.say(wires.size() > 1 ? which : "in", text, wire)));
    }

    private String text(double value) {
        return Readings.text(readings.numbers(), value, units);
    }

    private Optional<String> number(WireId wire) {
        return readings.ofWire(wire).map(this::text);
    }

    /** The span of the sizes of a bundle. */
    Optional<String> sizes(Collection<WireId> wires) {
        Optional<Gauge> least =
                wires.stream().flatMap(wire -> gauge(wire).stream()).min(Comparator.naturalOrder());
        Optional<Gauge> most =
                wires.stream().flatMap(wire -> gauge(wire).stream()).max(Comparator.naturalOrder());
        return least.flatMap(small -> most.map(
                large -> small.equals(large) ? units.size(small) : units.size(small) + " to " + units.size(large)));
    }

    /** The size of a wire: its own, otherwise the one it was solved with. */
    Optional<Gauge> gauge(WireId wire) {
        return readings.gauge(wire);
    }
}
