package org.ohmloom.graph;

import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;

/**
 * Names of the places where branches can meet, before places without resistance between them become one point.
 *
 * @param id   the name
 * @param rank decides which name stays when places become one point
 */
record PointName(PointId id, Rank rank) implements Comparable<PointName> {

    /** What a place is; the first kind present names the joined point. */
    enum Rank {
        TERMINAL,
        CAVITY,
        SPLICE,
        BODY,
        GROUND,
        UNDER_GROUND,
        WIRE_END
    }

    static PointName terminal(ComponentId component, String terminal) {
        return new PointName(new PointId(component + "." + terminal), Rank.TERMINAL);
    }

    /** The wire side of a cavity. */
    static PointName cavity(ConnectorId connector, String cavity) {
        return new PointName(new PointId(connector + "." + cavity), Rank.CAVITY);
    }

    static PointName splice(SpliceId splice) {
        return new PointName(new PointId(splice.value()), Rank.SPLICE);
    }

    /** Where wires and cases are stacked on a ground point. */
    static PointName ground(GroundPointId ground) {
        return new PointName(new PointId(ground.value()), Rank.GROUND);
    }

    /** The body under a ground point. */
    static PointName groundBody(GroundPointId ground) {
        return new PointName(new PointId(ground + ".body"), Rank.UNDER_GROUND);
    }

    /** The middle of a chassis body. */
    static PointName body(ChassisBodyId body) {
        return new PointName(new PointId(body.value()), Rank.BODY);
    }

    /** The bar that joins the terminals of a bus bar. */
    static PointName bar(ComponentId busBar) {
        return new PointName(new PointId(busBar.value()), Rank.SPLICE);
    }

    /** A wire's own end: loose, or before the joint of a splice. */
    static PointName wireEnd(String text) {
        return new PointName(new PointId(text), Rank.WIRE_END);
    }

    /** Where an end of a wire arrives; a loose end has its own place. */
    static PointName of(WireEnd end, WireId wire, String side) {
        if (end instanceof WireEnd.AtCavity at) {
            return cavity(at.connector(), at.cavity());
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return terminal(at.component(), at.terminal());
        }
        if (end instanceof WireEnd.AtSplice at) {
            return splice(at.splice());
        }
        if (end instanceof WireEnd.AtGround at) {
            return ground(at.ground());
        }
        return wireEnd(wire + "." + side);
    }

    @Override
    public int compareTo(PointName other) {
        int byRank = rank.compareTo(other.rank);
        return byRank != 0 ? byRank : id.compareTo(other.id);
    }
}
