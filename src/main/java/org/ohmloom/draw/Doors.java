package org.ohmloom.draw;

import java.util.List;
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

    Doors(Board board, CardMaker maker, RunTexts texts, Thickness thickness) {
        this.board = board;
        this.maker = maker;
        this.texts = texts;
        this.thickness = thickness;
    }

    /** The point at which wires arrive at a connector, component, ground point or splice, if it is on the board. */
    Optional<Point> of(String element) {
        for (Board.Placed placed : board.cards()) {
            boolean tab = placed.card().tabs().stream()
                    .anyMatch(each -> each.element().equals(element));
            if (tab
                    || (placed.card().tabs().isEmpty()
                            && placed.card().element().equals(element))) {
                return Optional.of(placed.door(element));
            }
        }
        for (Board.Run run : board.runs()) {
            for (Connector connector : run.tie().pair()) {
                if (connector.id().value().equals(element)) {
                    Extent tab = tab(run, connector);
                    boolean left = nearIsLeft(run) == connector.equals(nearOne(run));
                    return Optional.of(new Point(
                            left ? tab.leftMm() : tab.rightMm(), run.from().yMm()));
                }
            }
            List<Splice> splices = texts.splices(run.tie());
            for (int k = 0; k < splices.size(); k++) {
                if (splices.get(k).id().value().equals(element)) {
                    return Optional.of(splice(run, k, splices.size()));
                }
            }
        }
        return Optional.empty();
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
