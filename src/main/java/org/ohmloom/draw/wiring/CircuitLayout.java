package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Weight;

/** Where everything of one circuit lies, mm from an origin of its own. */
final class CircuitLayout {

    private static final double AIR_MM = 2;

    /** Room in front of what is written on a wire, mm. */
    static final double BEFORE_MM = 1.5;

    private final WiringCircuit circuit;
    private final CircuitLinks links;
    private final Map<String, Symbol> nodes;
    private final Columns columns;
    private final Headings headings;
    private final WireWords words;
    private final Map<Stand, Extent> extents = new LinkedHashMap<>();
    private final Map<Link, List<Point>> lines = new LinkedHashMap<>();
    private final List<Double> cuts = new ArrayList<>();

    CircuitLayout(WiringCircuit circuit, Wiring wiring, Headings headings, WireWords words, Places unknown) {
        this.circuit = circuit;
        this.headings = headings;
        this.words = words;
        this.links = new CircuitLinks(circuit, wiring);
        Ranks ranks = new Ranks(links.nodes().keySet(), links.links());
        Gathering gathering = new Gathering(links.nodes(), ranks);
        this.nodes = gathering.nodes();
        this.columns = new Columns(gathering, (key, column) -> {
            Symbol symbol = symbol(key);
            List<String> also = links.also(key).stream().map(unknown::text).toList();
            return new Stand(symbol, column, headings.steps(symbol), also);
        });
        place(unknown);
    }

    WiringCircuit circuit() {
        return circuit;
    }

    CircuitLinks links() {
        return links;
    }

    /** Symbols by their keys, those that pass left out. */
    Map<String, Stand> stands() {
        return columns.stands();
    }

    Extent extent(Stand stand) {
        Extent extent = extents.get(stand);
        if (extent == null) {
            throw new IllegalStateException("a symbol without a place");
        }
        return extent;
    }

    /** The lines, from the left to the right. */
    Map<Link, List<Point>> lines() {
        return lines;
    }

    /** Where it may be cut from top to bottom: before each column but the first, where every line runs level. */
    List<Double> cuts() {
        return cuts;
    }

    private Symbol symbol(String key) {
        Symbol symbol = nodes.get(key);
        if (symbol == null) {
            throw new IllegalStateException("no symbol " + key);
        }
        return symbol;
    }

    private List<String> reference(String key, Places places) {
        return links.reference(key)
                .map(reference -> reference.lines().stream().map(places::text).toList())
                .orElse(List.of());
    }

    private void place(Places unknown) {
        Map<Stand, Double> widths = new LinkedHashMap<>();
        columns.stands().forEach((key, stand) -> widths.put(stand, headings.widthMm(stand, reference(key, unknown))));
        double x = 0;
        for (int k = 0; k < columns.columns().size(); k++) {
            int number = k;
            List<Stand> column = columns.columns().get(k);
            if (k > 0) {
                cuts.add(x - AIR_MM / 2);
            }
            double width = column.stream()
                    .mapToDouble(stand -> widths.getOrDefault(stand, 0.0))
                    .max()
                    .orElse(0);
            for (Stand stand : column) {
                double own = stand.symbol().isEmpty() ? width : widths.getOrDefault(stand, width);
                boolean right = stand.symbol()
                                .filter(symbol -> symbol.kind() == Symbol.Kind.REFERENCE)
                                .isPresent()
                        && stand.ports(true).isEmpty();
                double left = right ? x + width - own : x;
                extents.put(stand, Extent.at(left, stand.topMm(), own, stand.heightMm()));
            }
            List<Hop> hops = columns.hops().stream()
                    .filter(hop -> hop.from().column() == number)
                    .toList();
            x = channel(hops, x + width);
        }
    }

    /** Room for what is written on the wires that begin here, then for the upright stretches; gives its right end. */
    private double channel(List<Hop> hops, double left) {
        double written = left;
        for (Hop hop : hops) {
            if (hop.first()) {
                double width = widthMm(hop.link());
                written = Math.max(written, outMm(hop.from()) + BEFORE_MM + width + 1);
            }
        }
        Channel channel = new Channel(hops);
        double start = written + AIR_MM;
        double end = start + channel.widthMm() + AIR_MM;
        for (Hop hop : hops) {
            List<Point> line = lines.computeIfAbsent(hop.link(), each -> new ArrayList<>());
            if (hop.first()) {
                line.add(new Point(outMm(hop.from()), hop.fromMm()));
            }
            for (double[] turn : channel.turns(hop)) {
                double x = start + turn[0] * Channel.TRACK_MM;
                line.add(new Point(x, turn[1]));
                line.add(new Point(x, turn[2]));
            }
            if (hop.to().symbol().isPresent()) {
                line.add(new Point(Double.NaN, hop.toMm()));
            }
        }
        for (Hop hop : hops) {
            if (hop.to().symbol().isPresent()) {
                List<Point> line = lines.getOrDefault(hop.link(), new ArrayList<>());
                line.set(line.size() - 1, new Point(end + AIR_MM / 2, hop.toMm()));
            }
        }
        return end + AIR_MM / 2;
    }

    /** Where lines leave a symbol: its right side, or the bar of a splice or ground point. */
    private double outMm(Stand stand) {
        boolean bar =
                stand.symbol().filter(symbol -> symbol.kind().isUprightBar()).isPresent();
        return bar
                ? extent(stand).leftMm() + SymbolDrawing.BAR_MM
                : extent(stand).rightMm();
    }

    private double widthMm(Link link) {
        return link.wire().map(words::widthMm).orElseGet(() -> headings.lettering()
                .widthMm(note(link), Weight.REGULAR, WireWords.TEXT_MM));
    }

    /** The terminal a line that is no wire leads to or from. */
    String end(Link link) {
        boolean first = symbol(link.from()).kind() != Symbol.Kind.REFERENCE;
        String title = symbol(first ? link.from() : link.to()).title();
        String terminal = (first ? link.out() : link.in()).terminal();
        return terminal.isEmpty() || terminal.startsWith(title) ? title : title + "." + terminal;
    }

    /** What is written on a line that is no wire. */
    static String note(Link link) {
        return link.id().startsWith("bolt ") ? "bolted" : "";
    }

    /** The smallest rectangle around it. */
    Optional<Extent> bounds() {
        List<Extent> all = new ArrayList<>(extents.values());
        lines.values().forEach(line -> all.add(Extent.around(line)));
        return Extent.union(all);
    }
}
