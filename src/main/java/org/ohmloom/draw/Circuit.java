package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.Harness;

/** The drawing of a harness that has no bundle segments yet. */
final class Circuit {

    private final Harness harness;
    private final CircuitGraph graph;
    private final List<Item> items;
    private final List<Double> cuts;
    private final Lettering lettering;

    Circuit(Harness harness, Figures figures, Lettering lettering) {
        this.harness = harness;
        this.lettering = lettering;
        this.graph = new CircuitGraph(harness, new CardMaker(harness, lettering, NoteFlags.NONE));
        CircuitDrawing drawing = new CircuitDrawing(new CircuitPlan(graph), figures, lettering);
        this.items = drawing.items();
        this.cuts = drawing.cuts();
    }

    /** Whether a harness is drawn as a circuit on the screen: nobody has begun to lay it out on a board. */
    static boolean suitsScreen(Harness harness) {
        return suits(harness) && harness.layout().isEmpty();
    }

    /** Whether a harness is drawn as a circuit: it has wires but no bundle segment. */
    static boolean suits(Harness harness) {
        return harness.segments().isEmpty() && !harness.wires().isEmpty();
    }

    List<Item> legend(double roomMm) {
        return Legend.items(harness, true, false, false, lettering, roomMm);
    }

    /** Cards of what no wire ends on. */
    List<Card> unwired() {
        return graph.unwired();
    }

    /** Cards of everything, for a paper the circuit does not fit on. */
    List<Card> cards() {
        List<Card> all = new ArrayList<>(graph.cards().values());
        all.addAll(graph.unwired());
        return all;
    }

    Scene scene() {
        return Montage.scene(items, unwired(), this::legend, lettering);
    }

    /**
     * The circuit in pieces no larger than a room, cut between columns; wires that are cut say where they go on. Empty when
     * it is too high or a column too wide.
     *
     * @param firstSheet number of the sheet that the first piece comes on
     */
    Optional<List<List<Item>>> pieces(double widthMm, double heightMm, int firstSheet) {
        Optional<Extent> extent = Piece.bounds(items);
        if (extent.isEmpty() || extent.get().heightMm() > heightMm) {
            return Optional.empty();
        }
        List<Double> edges = new ArrayList<>(List.of(extent.get().leftMm() - 1));
        edges.addAll(cuts);
        edges.add(extent.get().rightMm() + 1);
        List<List<Item>> pieces = new ArrayList<>();
        int from = 0;
        while (from < edges.size() - 1) {
            int to = edges.size() - 1;
            while (to > from + 1 && roomMm(edges, from, to) > widthMm) {
                to--;
            }
            if (roomMm(edges, from, to) > widthMm) {
                return Optional.empty();
            }
            int sheet = firstSheet + pieces.size();
            boolean last = to == edges.size() - 1;
            CircuitCut cut = new CircuitCut(edges.get(from), edges.get(to), lettering);
            pieces.add(cut.items(items, from == 0 ? "" : "sheet " + (sheet - 1), last ? "" : "sheet " + (sheet + 1)));
            from = to;
        }
        return Optional.of(pieces);
    }

    private static double roomMm(List<Double> edges, int from, int to) {
        double flags = (from == 0 ? 0 : CircuitCut.FLAG_MM) + (to == edges.size() - 1 ? 0 : CircuitCut.FLAG_MM);
        return edges.get(to) - edges.get(from) + flags;
    }
}
