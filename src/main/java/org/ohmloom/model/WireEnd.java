package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;

/** What one end of a wire is joined to. */
public sealed interface WireEnd {

    /** How people write it: {@code X1.3}, {@code S1}, {@code BAT1.+}, or {@code loose}. */
    String text();

    /**
     * In a cavity of a connector.
     *
     * @param connector the connector
     * @param cavity    name of the cavity
     */
    record AtCavity(ConnectorId connector, String cavity) implements WireEnd {
        public AtCavity {
            notBlank(cavity, "cavity of connector %s", connector);
        }

        @Override
        public String text() {
            return connector + "." + cavity;
        }
    }

    /**
     * On a component's own terminal: a stud, screw or pigtail.
     *
     * @param component the component
     * @param terminal  name of the terminal
     */
    record AtTerminal(ComponentId component, String terminal) implements WireEnd {
        public AtTerminal {
            notBlank(terminal, "terminal of component %s", component);
        }

        @Override
        public String text() {
            return component + "." + terminal;
        }
    }

    /**
     * In a splice.
     *
     * @param splice the splice
     */
    record AtSplice(SpliceId splice) implements WireEnd {
        @Override
        public String text() {
            return splice.value();
        }
    }

    /**
     * On a ground point.
     *
     * @param ground the ground point
     */
    record AtGround(GroundPointId ground) implements WireEnd {
        @Override
        public String text() {
            return ground.value();
        }
    }

    /** Joined to nothing yet, or cut back. */
    record Loose() implements WireEnd {
        @Override
        public String text() {
            return "loose";
        }
    }
}
