package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.ohmloom.draw.Levelling;

/**
 * A circuit in columns: lines that skip a column get a place in it, each column is put into the order in which lines cross least
 * (barycentre sweeps, the best kept), then into heights at which they run level. The method is Sugiyama's (IEEE Transactions on
 * Systems, Man, and Cybernetics 11(2), 1981).
 */
final class Columns {

    private static final int SWEEPS = 16;
    private static final double GAP_MM = Stand.GRID_MM;

    private final List<List<Stand>> columns = new ArrayList<>();
    private final List<Hop> hops = new ArrayList<>();
    private final Map<Stand, List<Hop>> into = new HashMap<>();
    private final Map<Stand, List<Hop>> outOf = new HashMap<>();
    private final Map<String, Stand> stands = new LinkedHashMap<>();

    /**
     * Columns of symbols and lines.
     *
     * @param stand makes the stand of a symbol in its column
     */
    Columns(Gathering gathering, BiFunction<String, Integer, Stand> stand) {
        for (String key : gathering.nodes().keySet()) {
            Stand made = stand.apply(key, gathering.column(key));
            stands.put(key, made);
            column(made.column()).add(made);
        }
        gathering.links().forEach(this::join);
        columns.forEach(column -> column.forEach(Stand::arrange));
        order();
        columns.forEach(Columns::stack);
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            for (int k = 0; k < columns.size(); k++) {
                level(columns.get(sweep % 2 == 0 ? k : columns.size() - 1 - k), sweep >= SWEEPS - 2);
            }
        }
    }

    List<List<Stand>> columns() {
        return columns;
    }

    List<Hop> hops() {
        return hops;
    }

    Map<String, Stand> stands() {
        return stands;
    }

    private List<Stand> column(int number) {
        while (columns.size() <= number) {
            columns.add(new ArrayList<>());
        }
        return columns.get(number);
    }

    private void join(Link link) {
        Stand from = stands.get(link.from());
        Stand to = stands.get(link.to());
        if (from == null || to == null) {
            throw new IllegalStateException("a line of the diagram ends at no symbol: " + link.id());
        }
        from.ports(false).add(link.out());
        to.ports(true).add(link.in());
        Stand here = from;
        Port out = link.out();
        for (int k = from.column() + 1; k < to.column(); k++) {
            Stand passing = new Stand(k);
            column(k).add(passing);
            hop(new Hop(link, here, out, passing, passing.ports(true).get(0), here == from));
            here = passing;
            out = passing.ports(false).get(0);
        }
        hop(new Hop(link, here, out, to, link.in(), here == from));
    }

    private void hop(Hop hop) {
        hops.add(hop);
        outOf.computeIfAbsent(hop.from(), each -> new ArrayList<>()).add(hop);
        into.computeIfAbsent(hop.to(), each -> new ArrayList<>()).add(hop);
    }

    private List<Hop> out(Stand stand) {
        return outOf.getOrDefault(stand, List.of());
    }

    private List<Hop> in(Stand stand) {
        return into.getOrDefault(stand, List.of());
    }

    private void order() {
        List<List<Stand>> best = copy();
        long least = crossings();
        for (int sweep = 0; sweep < SWEEPS && least > 0; sweep++) {
            boolean forward = sweep % 2 == 0;
            for (int k = 0; k < columns.size(); k++) {
                sort(columns.get(forward ? k : columns.size() - 1 - k), forward, sweep >= SWEEPS / 2);
            }
            ports();
            long now = crossings();
            if (now < least) {
                least = now;
                best = copy();
            }
        }
        for (int k = 0; k < columns.size(); k++) {
            columns.get(k).clear();
            columns.get(k).addAll(best.get(k));
        }
        ports();
    }

    private List<List<Stand>> copy() {
        List<List<Stand>> copy = new ArrayList<>();
        columns.forEach(column -> copy.add(new ArrayList<>(column)));
        return copy;
    }

    private Map<Port, Double> shares() {
        Map<Port, Double> shares = new HashMap<>();
        for (List<Stand> column : columns) {
            for (int k = 0; k < column.size(); k++) {
                Stand stand = column.get(k);
                for (boolean left : new boolean[] {true, false}) {
                    for (Port port : stand.ports(left)) {
                        shares.put(port, (k + 0.05 + 0.9 * port.offsetMm() / stand.heightMm()) / column.size());
                    }
                }
            }
        }
        return shares;
    }

    private void sort(List<Stand> column, boolean forward, boolean bothSides) {
        Map<Port, Double> shares = shares();
        Map<Stand, Double> wanted = new HashMap<>();
        for (int k = 0; k < column.size(); k++) {
            Stand stand = column.get(k);
            double sum = 0;
            int count = 0;
            if (forward || bothSides) {
                for (Hop hop : in(stand)) {
                    sum += shares.getOrDefault(hop.out(), 0.5);
                    count++;
                }
            }
            if (!forward || bothSides) {
                for (Hop hop : out(stand)) {
                    sum += shares.getOrDefault(hop.in(), 0.5);
                    count++;
                }
            }
            wanted.put(stand, count == 0 ? (k + 0.5) / column.size() : sum / count);
        }
        column.sort(Comparator.comparingDouble(stand -> wanted.getOrDefault(stand, 0.5)));
    }

    private void ports() {
        Map<Port, Double> shares = shares();
        for (Hop hop : hops) {
            hop.out().wish(shares.getOrDefault(hop.in(), 0.5));
            hop.in().wish(shares.getOrDefault(hop.out(), 0.5));
        }
        columns.forEach(column -> column.forEach(Stand::arrange));
    }

    private long crossings() {
        Map<Port, Double> shares = shares();
        long count = 0;
        for (int k = 0; k + 1 < columns.size(); k++) {
            int number = k;
            double[][] ends = hops.stream()
                    .filter(hop -> hop.from().column() == number)
                    .map(hop -> new double[] {shares.getOrDefault(hop.out(), 0.5), shares.getOrDefault(hop.in(), 0.5)})
                    .toArray(double[][]::new);
            Arrays.sort(
                    ends, Comparator.comparingDouble((double[] end) -> end[0]).thenComparingDouble(end -> end[1]));
            for (int i = 0; i < ends.length; i++) {
                for (int j = i + 1; j < ends.length; j++) {
                    count += ends[i][1] > ends[j][1] ? 1 : 0;
                }
            }
        }
        return count;
    }

    private static double gapMm(Stand above) {
        return above.symbol().isEmpty() ? 0 : GAP_MM;
    }

    private static void stack(List<Stand> column) {
        double y = 0;
        for (Stand stand : column) {
            stand.moveTo(y);
            y += stand.heightMm() + gapMm(stand);
        }
    }

    /** Moves a column to where its lines run most level, keeping its order and gaps, on the grid. */
    private void level(List<Stand> column, boolean exact) {
        Levelling levelling = new Levelling();
        List<Double> stacks = new ArrayList<>();
        double stacked = 0;
        for (int k = 0; k < column.size(); k++) {
            Stand stand = column.get(k);
            stacked += k == 0 ? 0 : column.get(k - 1).heightMm() + gapMm(column.get(k - 1));
            stacks.add(stacked);
            double weight = 0.01;
            double sum = weight * stand.topMm();
            for (Hop hop : in(stand)) {
                sum += hop.weight() * (stand.topMm() + hop.fromMm() - hop.toMm());
                weight += hop.weight();
            }
            for (Hop hop : out(stand)) {
                sum += hop.weight() * (stand.topMm() + hop.toMm() - hop.fromMm());
                weight += hop.weight();
            }
            levelling.add(stacked, exact ? preferred(stand).orElse(sum / weight) : sum / weight, weight);
        }
        List<Double> tops = levelling.topsMm();
        long step = Long.MIN_VALUE;
        for (int k = 0; k < column.size(); k++) {
            // half a step may round either way; never up past what stands above
            step = Math.max(step, Math.round((tops.get(k) - stacks.get(k)) / Stand.GRID_MM));
            column.get(k).moveTo(step * Stand.GRID_MM + stacks.get(k));
        }
    }

    /** Where the heaviest of its lines would run exactly level: of several the middle one. */
    private OptionalDouble preferred(Stand stand) {
        List<double[]> wishes = new ArrayList<>();
        for (Hop hop : in(stand)) {
            wishes.add(new double[] {stand.topMm() + hop.fromMm() - hop.toMm(), hop.weight()});
        }
        for (Hop hop : out(stand)) {
            wishes.add(new double[] {stand.topMm() + hop.toMm() - hop.fromMm(), hop.weight()});
        }
        double total = wishes.stream().mapToDouble(wish -> wish[1]).sum();
        wishes.sort(Comparator.comparingDouble(wish -> wish[0]));
        double passed = 0;
        for (double[] wish : wishes) {
            passed += wish[1];
            if (passed >= total / 2) {
                return OptionalDouble.of(wish[0]);
            }
        }
        return OptionalDouble.empty();
    }
}
