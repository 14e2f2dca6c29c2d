package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A symbol in its column, or the place of a line that passes a column. All heights are whole steps of a grid. */
final class Stand {

    /** The grid, mm: half the distance of two wires with what is written on them. */
    static final double GRID_MM = 3.6;

    /** Distance of two terminals, mm. */
    static final double ROW_MM = 2 * GRID_MM;

    private final Optional<Symbol> symbol;
    private final List<String> also;
    private final int column;
    private final double headMm;
    private final List<Port> left = new ArrayList<>();
    private final List<Port> right = new ArrayList<>();
    private int rows = 1;
    private double topMm;

    /**
     * A symbol.
     *
     * @param headSteps grid steps its heading takes
     * @param also      lines written below its terminals
     */
    Stand(Symbol symbol, int column, int headSteps, List<String> also) {
        this.symbol = Optional.of(symbol);
        this.column = column;
        this.headMm = headSteps * GRID_MM;
        this.also = List.copyOf(also);
    }

    /** A line that passes. */
    Stand(int column) {
        this.symbol = Optional.empty();
        this.column = column;
        this.headMm = 0;
        this.also = List.of();
        Port in = new Port("", "", false);
        Port out = new Port("", "", false);
        left.add(in);
        right.add(out);
    }

    Optional<Symbol> symbol() {
        return symbol;
    }

    List<String> also() {
        return also;
    }

    int column() {
        return column;
    }

    double headMm() {
        return headMm;
    }

    List<Port> ports(boolean onLeft) {
        return onLeft ? left : right;
    }

    double topMm() {
        return topMm;
    }

    void moveTo(double mm) {
        topMm = mm;
    }

    double heightMm() {
        return symbol.isEmpty() ? GRID_MM : headMm + rows * ROW_MM + GRID_MM * Math.ceil(also.size() * 3.0 / GRID_MM);
    }

    /** Lower end of its terminals, mm below its upper side. */
    double rowsEndMm() {
        return symbol.isEmpty() ? GRID_MM : headMm + rows * ROW_MM;
    }

    double yMm(Port port) {
        return topMm + port.offsetMm();
    }

    /** Two ways through it stand opposite each other; everything else in the order that crosses least. */
    void arrange() {
        if (symbol.isEmpty()) {
            return;
        }
        List<Band> bands = bands();
        bands.sort(Comparator.comparingDouble(Band::share));
        rows = 0;
        left.clear();
        right.clear();
        for (Band band : bands) {
            place(band.left(), left);
            place(band.right(), right);
            rows += Math.max(band.left().size(), band.right().size());
        }
        rows = Math.max(1, rows);
    }

    private void place(List<Port> ports, List<Port> side) {
        ports.sort(Comparator.comparingDouble(Port::share));
        for (int k = 0; k < ports.size(); k++) {
            ports.get(k).place(headMm + (rows + k) * ROW_MM + GRID_MM);
            side.add(ports.get(k));
        }
    }

    private record Band(List<Port> left, List<Port> right) {
        double share() {
            double sum = 0;
            for (Port port : left) {
                sum += port.share();
            }
            for (Port port : right) {
                sum += port.share();
            }
            int count = left.size() + right.size();
            return count == 0 ? 0.5 : sum / count;
        }
    }

    private List<Band> bands() {
        Symbol drawn = symbol.orElseThrow();
        boolean together = drawn.ways().isEmpty() && drawn.kind() != Symbol.Kind.DEVICE;
        if (together) {
            return new ArrayList<>(List.of(new Band(new ArrayList<>(left), new ArrayList<>(right))));
        }
        Map<String, List<Port>> lefts = byTerminal(left);
        Map<String, List<Port>> rights = byTerminal(right);
        Set<String> terminals = new HashSet<>(lefts.keySet());
        terminals.addAll(rights.keySet());
        List<Band> bands = new ArrayList<>();
        for (Symbol.Way way : drawn.ways()) {
            boolean forward = opposite(way.from(), way.to(), lefts, rights);
            boolean backward = opposite(way.to(), way.from(), lefts, rights);
            if (terminals.contains(way.from()) && terminals.contains(way.to()) && (forward || backward)) {
                String in = forward ? way.from() : way.to();
                String out = forward ? way.to() : way.from();
                bands.add(new Band(taken(lefts, in), taken(rights, out)));
                terminals.remove(way.from());
                terminals.remove(way.to());
            }
        }
        List<String> rest = new ArrayList<>(lefts.keySet());
        rights.keySet().stream().filter(each -> !lefts.containsKey(each)).forEach(rest::add);
        for (String terminal : rest) {
            if (terminals.contains(terminal)) {
                bands.add(new Band(taken(lefts, terminal), taken(rights, terminal)));
            }
        }
        return bands;
    }

    private static boolean opposite(
            String in, String out, Map<String, List<Port>> lefts, Map<String, List<Port>> rights) {
        return lefts.containsKey(in) && !rights.containsKey(in) && rights.containsKey(out) && !lefts.containsKey(out);
    }

    private static List<Port> taken(Map<String, List<Port>> ports, String terminal) {
        return new ArrayList<>(ports.getOrDefault(terminal, List.of()));
    }

    private static Map<String, List<Port>> byTerminal(List<Port> ports) {
        Map<String, List<Port>> found = new LinkedHashMap<>();
        ports.forEach(port -> found.computeIfAbsent(port.terminal(), each -> new ArrayList<>())
                .add(port));
        return found;
    }
}
