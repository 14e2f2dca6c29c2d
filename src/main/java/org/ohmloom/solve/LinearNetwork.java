package org.ohmloom.solve;

import static org.ohmloom.units.Require.that;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import org.ohmloom.graph.PointId;

/**
 * A network of resistances and voltage sources alone, solved as often as asked for currents drawn from it.
 *
 * <p>Its voltages and currents are sums: what the sources do without any draw, and for each draw its amperes times the
 * response to one ampere drawn there. Responses are transfer resistances, and they are symmetric (reciprocity): the
 * voltage one ampere drawn at port A makes along port B is the voltage one ampere drawn at port B makes along port A. So
 * the influence of every draw on one branch costs one solve, the transposed one, and the influence of one draw on every
 * branch costs one solve too.
 *
 * <p>Eliminated once by {@link StarMesh}; each response then costs time in proportion to the connections made. Parts that
 * share no conductor are solved together, each against a point of its own; a port must not span two of them.
 */
public final class LinearNetwork {
    private final Map<PointId, Integer> numberOf = new HashMap<>();
    private final Map<PointId, Integer> partOf = new HashMap<>();
    private final StarMesh mesh;
    private final int count;
    private final double[] sourceAmps;

    /**
     * A resistance with or without a voltage in series: V(to) - V(from) = emfVolts - ohms x amps, amps from {@code from} to
     * {@code to}.
     *
     * @param from     one end; the negative terminal of a source
     * @param to       the other end
     * @param ohms     resistance, ohm, more than 0
     * @param emfVolts voltage in series, V; 0 for a conductor, negative for the threshold of a conducting diode
     */
    public record Link(PointId from, PointId to, double ohms, double emfVolts) {
        public Link {
            that(ohms > 0 && Double.isFinite(ohms), "a link needs a resistance of more than 0 ohm, not %s", ohms);
        }
    }

    private LinearNetwork(Collection<PointId> points, List<Link> links, BooleanSupplier cancelled) {
        List<PointId> ordered = points.stream().sorted().toList();
        parts(ordered, links);
        Map<Integer, PointId> datumOf = new HashMap<>();
        links.stream()
                .filter(link -> link.emfVolts() > 0)
                .forEach(link -> datumOf.putIfAbsent(partOf.get(link.from()), link.from()));
        ordered.forEach(point -> datumOf.putIfAbsent(partOf.get(point), point));
        int next = 0;
        for (PointId point : ordered) {
            numberOf.put(point, datumOf.get(partOf.get(point)).equals(point) ? -1 : next++);
        }
        count = next;
        List<Link> joining =
                links.stream().filter(link -> !link.from().equals(link.to())).toList();
        int[] from =
                joining.stream().mapToInt(link -> numberOf.get(link.from())).toArray();
        int[] to = joining.stream().mapToInt(link -> numberOf.get(link.to())).toArray();
        mesh = new StarMesh(EliminationOrder.of(count, from, to, cancelled), from, to);
        boolean whole = mesh.eliminate(
                joining.stream().mapToDouble(link -> 1 / link.ohms()).toArray());
        that(whole, "a network of resistances lost a conductance: %s links", joining.size());
        sourceAmps = new double[count];
        for (Link link : joining) {
            inject(sourceAmps, link.to(), link.emfVolts() / link.ohms());
            inject(sourceAmps, link.from(), -link.emfVolts() / link.ohms());
        }
    }

    /**
     * Eliminates a network.
     *
     * @param points    all points, also those no link ends at
     * @param links     its resistances and sources
     * @param cancelled asked now and then; true stops the work
     * @throws java.util.concurrent.CancellationException when asked to stop
     */
    public static LinearNetwork of(Collection<PointId> points, List<Link> links, BooleanSupplier cancelled) {
        return new LinearNetwork(points, links, cancelled);
    }

    private void parts(List<PointId> points, List<Link> links) {
        Map<PointId, Integer> places = new HashMap<>();
        points.forEach(point -> places.put(point, places.size()));
        Joining joining = new Joining(points.size());
        links.forEach(link -> joining.join(places.get(link.from()), places.get(link.to())));
        points.forEach(point -> partOf.put(point, joining.root(places.get(point))));
    }

    private void inject(double[] into, PointId point, double amps) {
        int number = numberOf.get(point);
        if (number >= 0) {
            into[number] += amps;
        }
    }

    /** Whether links lead from one point to another; only then can a current be drawn between them. */
    public boolean together(PointId one, PointId other) {
        return partOf.containsKey(one) && partOf.get(one).equals(partOf.get(other));
    }

    /** What the sources do when nothing is drawn: voltages in V. */
    public Response ofSources() {
        return new Response(mesh.volts(sourceAmps), 1);
    }

    /**
     * What one ampere does that is drawn out of one point and put back into another, the sources at 0 V: voltages in ohm,
     * that is V for each A.
     */
    public Response ofDraw(PointId from, PointId to) {
        that(together(from, to), "no conductor leads from %s back to %s", to, from);
        double[] into = new double[count];
        inject(into, from, -1);
        inject(into, to, 1);
        return new Response(mesh.volts(into), 0);
    }

    /** The voltages of one solution. */
    public final class Response {
        private final double[] volts;
        private final int sources;

        private Response(double[] volts, int sources) {
            this.volts = volts;
            this.sources = sources;
        }

        private double at(PointId point) {
            int number = numberOf.get(point);
            return number < 0 ? 0 : volts[number];
        }

        /** V(from) - V(to), in V or V for each A. */
        public double along(PointId from, PointId to) {
            return at(from) - at(to);
        }

        /** Current of a link from {@code from} to {@code to}, in A or A for each A. */
        public double amps(Link link) {
            return (sources * link.emfVolts() + along(link.from(), link.to())) / link.ohms();
        }
    }
}
