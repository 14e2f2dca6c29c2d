package org.ohmloom.draw;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Splice;

/** Where on the board the wires of a thing arrive. */
final class Doors {

    private final Board board;
    private final CardMaker maker;
    private final RunTexts texts;
    private final Thickness thickness;
    /** Found when first asked for, all at once: every end of every wire is asked for. */
    private final Map<String, Point> known = new HashMap<>();

    Doors(Board board, CardMaker maker, RunTexts texts, Thickness thickness) {
        this.board = board;
        this.maker = maker;
        this.texts = texts;
        this.thickness = thickness;
    }

    /** The point at which wires arrive at a connector, component, ground point or splice, if it is on the board. */
    Optional<Point> of(String element) {
        if (known.isEmpty()) {
            board.cards().forEach(this::note);
            board.runs().forEach(this::note);
        }
        return Optional.ofNullable(known.get(element));
    }

    private void note(Board.Placed placed) {
        List<String> elements = placed.card().tabs().isEmpty()
                ? List.of(placed.card().element())
                : placed.card().tabs().stream().map(Tab::element).toList();
        elements.forEach(element -> known.computeIfAbsent(element, placed::door));
    }

    private void note(Board.Run run) {
        for (Connector connector : run.tie().pair()) {
            known.computeIfAbsent(connector.id().value(), any -> {
                Extent tab = tab(run, connector);
                boolean left = nearIsLeft(run) == connector.equals(nearOne(run));
                return new Point(left ? tab.leftMm() : tab.rightMm(), run.from().yMm());
            });
        }
        List<Splice> splices = texts.splices(run.tie());
        for (int k = 0; k < splices.size(); k++) {
            Point at = splice(run, k, splices.size());
            known.putIfAbsent(splices.get(k).id().value(), at);
        }
    }

    /** Where the upright line of a breakout stands, mm. */
    double joint(BreakoutId id) {
        return board.joint(id).map(each -> each.at().xMm()).orElse(0.0);
    }

    /** Where the splice of a number lies: in the right part of its run, in the order along the segment. */
    Point splice(Board.Run run, int number, int count) {
        boolean rightwards = run.tie().from().equals(nearIsLeft(run) ? run.near() : run.far());
        double right = Math.max(run.from().xMm(), run.to().xMm())
                - thickness.bodyMm((nearIsLeft(run) ? run.far() : run.near()).value()) / 2;
        double room = texts.splicesMm(run.tie());
        double share = (number + 0.5) / count;
        return new Point(
                right - room * (rightwards ? 1 - share : share), run.from().yMm());
    }

    /** Where one connector of an in-line pair lies: the two side by side in the middle of their run. */
    Extent tab(Board.Run run, Connector connector) {
        Connector left = nearIsLeft(run) ? nearOne(run) : farOne(run);
        double leftWidth = maker.tabWidthMm(maker.tab(left));
        double width = maker.tabWidthMm(maker.tab(connector));
        double both = run.tie().pair().stream()
                .mapToDouble(each -> maker.tabWidthMm(maker.tab(each)))
                .sum();
        double start = (run.from().xMm() + run.to().xMm() - both) / 2;
        double x = connector.equals(left) ? start : start + leftWidth;
        return Extent.at(x, run.from().yMm() - 4, width, 8);
    }

    private static boolean nearIsLeft(Board.Run run) {
        return run.from().xMm() <= run.to().xMm();
    }

    private static Connector nearOne(Board.Run run) {
        return run.tie().pair().get(run.tie().from().equals(run.near()) ? 0 : 1);
    }

    private static Connector farOne(Board.Run run) {
        return run.tie().pair().get(run.tie().from().equals(run.near()) ? 1 : 0);
    }
}
