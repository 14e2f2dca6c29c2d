package org.ohmloom.draw.wiring;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;

/**
 * Turns lines so that a device in line is passed from the left to the right where it stands between two sources: from what charges
 * towards what is charged.
 */
final class Turning {

    private final Symbols symbols;
    private final List<Link> links;
    private final Set<String> turned = new HashSet<>();

    Turning(Symbols symbols, List<Link> links) {
        this.symbols = symbols;
        this.links = links;
    }

    void turn() {
        boolean again = true;
        while (again) {
            again = false;
            for (int k = 0; k < links.size() && !again; k++) {
                Link one = links.get(k);
                for (int j = 0; j < links.size() && !again; j++) {
                    again = j != k && both(one, links.get(j));
                }
            }
        }
    }

    /** Two lines that both arrive at the two ends of a way: the one that comes from a battery, else the second, is turned. */
    private boolean both(Link one, Link two) {
        if (!one.to().equals(two.to())) {
            return false;
        }
        Symbol symbol = symbols.get(CircuitLinks.symbolOf(one.to()));
        boolean through = symbol.kind() == Symbol.Kind.DEVICE
                && symbol.ways().stream()
                        .anyMatch(way -> way.from().equals(one.in().terminal())
                                && way.to().equals(two.in().terminal())
                                && way.glyph() != Glyph.COIL);
        if (!through) {
            return false;
        }
        Link wanted = rank(one) > rank(two) ? one : two;
        Link other = wanted == one ? two : one;
        Link chosen = turned.contains(wanted.id()) ? other : wanted;
        if (!turned.add(chosen.id())) {
            return false;
        }
        links.set(links.indexOf(chosen), chosen.turned());
        return true;
    }

    /** How readily a line is turned: least when it comes from what charges, most when from a battery. */
    private int rank(Link link) {
        Symbol from = symbols.get(CircuitLinks.symbolOf(link.from()));
        if (from.kind() != Symbol.Kind.SOURCE) {
            return 1;
        }
        Optional<Component> source = symbols.harness().components().find(new ComponentId(from.element()));
        return source.filter(each -> each.device() instanceof Battery).isPresent() ? 2 : 0;
    }
}
