package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Weight;

/** What is written at the head of a symbol, in lines, and how large symbols must be for their writing. */
final class Headings {

    static final double TITLE_MM = 2.2;
    static final double TEXT_MM = WireWords.TEXT_MM;
    static final double LINE_MM = 2.9;
    static final double PAD_MM = 1.2;

    /** Room of a name, mm; a longer one takes more lines. */
    static final double NAME_MM = 30;

    private static final int MOST_LINES = 4;
    private static final double GLYPH_ROOM_MM = 2 * (3.5 + 1.4);

    private final Lettering lettering;

    Headings(Lettering lettering) {
        this.lettering = lettering;
    }

    Lettering lettering() {
        return lettering;
    }

    /** The title, cut only when it is longer than any id should be. */
    String title(Symbol symbol) {
        return lettering.cut(symbol.title(), Weight.BOLD, TITLE_MM, NAME_MM + 14);
    }

    /** Whether the remark has room beside the title. */
    private boolean isBeside(Symbol symbol) {
        double title = lettering.widthMm(title(symbol), Weight.BOLD, TITLE_MM);
        return title > 0
                && title + WireWords.SPACE_MM + lettering.widthMm(symbol.remark(), Weight.REGULAR, TEXT_MM) <= NAME_MM;
    }

    /** The remark where it stands beside the title. */
    String beside(Symbol symbol) {
        return isBeside(symbol) ? symbol.remark() : "";
    }

    /** The lines below the title. */
    List<String> lines(Symbol symbol) {
        List<String> lines = new ArrayList<>();
        if (!isBeside(symbol) && !symbol.remark().isEmpty()) {
            lines.addAll(lettering.wrapped(symbol.remark(), Weight.REGULAR, TEXT_MM, NAME_MM, 2));
        }
        if (!symbol.name().isEmpty()) {
            lines.addAll(lettering.wrapped(symbol.name(), Weight.REGULAR, TEXT_MM, NAME_MM, MOST_LINES));
        }
        return lines;
    }

    /** Steps of the grid the heading takes. */
    int steps(Symbol symbol) {
        if (symbol.kind() == Symbol.Kind.REFERENCE) {
            return 0;
        }
        double height = PAD_MM
                + (symbol.title().isEmpty() ? 0 : TITLE_MM + 0.6)
                + lines(symbol).size() * LINE_MM;
        return (int) Math.ceil((height - 0.4) / Stand.GRID_MM);
    }

    /** Width of a symbol with its heading, terminals and what lies between. */
    double widthMm(Stand stand, List<String> references) {
        Symbol symbol = stand.symbol().orElseThrow();
        double head = lettering.widthMm(title(symbol), Weight.BOLD, TITLE_MM);
        if (!beside(symbol).isEmpty()) {
            head += WireWords.SPACE_MM + lettering.widthMm(beside(symbol), Weight.REGULAR, TEXT_MM);
        }
        for (String line : lines(symbol)) {
            head = Math.max(head, lettering.widthMm(line, Weight.REGULAR, TEXT_MM));
        }
        for (String line : stand.also()) {
            head = Math.max(head, lettering.widthMm(line, Weight.REGULAR, TEXT_MM));
        }
        for (String line : references) {
            head = Math.max(head, lettering.widthMm(line, Weight.REGULAR, TEXT_MM) + 2);
        }
        double between = symbol.kind() == Symbol.Kind.CONNECTOR ? 5 : GLYPH_ROOM_MM;
        double body = labelsMm(stand, true) + labelsMm(stand, false) + between;
        boolean open = symbol.kind() == Symbol.Kind.SPLICE
                || symbol.kind() == Symbol.Kind.GROUND
                || symbol.kind() == Symbol.Kind.LOOSE
                || symbol.kind() == Symbol.Kind.REFERENCE;
        return Math.max(8, open ? head + 2 : Math.max(head + 2 * PAD_MM, body));
    }

    double labelsMm(Stand stand, boolean left) {
        return stand.ports(left).stream().mapToDouble(this::labelMm).max().orElse(1);
    }

    /** Room of a terminal's name from the edge on, mm. */
    double labelMm(Port port) {
        return port.label().isEmpty() ? 1 : lettering.widthMm(port.label(), Weight.REGULAR, TEXT_MM) + 2.4;
    }
}
