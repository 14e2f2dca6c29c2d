package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;
import org.ohmloom.model.ZoneId;

/**
 * What hangs at an end of the harness: a box for a component or a connector, with a tab for every connector plugged in.
 *
 * @param kind        what it is
 * @param element     id of what the box stands for
 * @param title       its id
 * @param flag        numbers of the notes on it, as "N1"; empty without notes or where they are not shown
 * @param remark      what sort of thing it is
 * @param lines       its name in one or two lines
 * @param tabs        its connectors here
 * @param tabWidthMm  width of the tabs, mm, 0 without tabs
 * @param widthMm     whole width, mm
 * @param heightMm    height, mm
 * @param zone        zone it sits in
 * @param description what it is in plain words
 */
record Card(
        Kind kind,
        String element,
        String title,
        String flag,
        String remark,
        List<String> lines,
        List<Tab> tabs,
        double tabWidthMm,
        double widthMm,
        double heightMm,
        Optional<ZoneId> zone,
        String description) {

    enum Kind {
        /** A component, its connectors on the side. */
        COMPONENT,
        /** A connector that plugs into nothing known. */
        CONNECTOR,
        /** A ground point. */
        GROUND,
        /** A splice at a breakout. */
        SPLICE,
        /** A segment that goes on elsewhere on the board. */
        CONTINUATION,
        /** A segment that goes on at a match line of another sheet. */
        MATCH_LINE;

        /** Width of the symbol that stands instead of a box, mm; 0 when there is a box. */
        double symbolMm() {
            return this == COMPONENT || this == CONNECTOR ? 0 : 6;
        }
    }

    Card {
        lines = List.copyOf(lines);
        tabs = List.copyOf(tabs);
    }

    /** Where a tab, or without tabs the box itself, meets its wires: mm below the upper side. */
    double tabMiddleMm(String connector) {
        for (int k = 0; k < tabs.size(); k++) {
            if (tabs.get(k).element().equals(connector)) {
                return heightMm * (k + 0.5) / tabs.size();
            }
        }
        return heightMm / 2;
    }
}
