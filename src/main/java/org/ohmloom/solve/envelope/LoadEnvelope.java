package org.ohmloom.solve.envelope;

import java.util.OptionalDouble;
import org.ohmloom.model.ComponentId;

/**
 * The worst drop on the way to and from one load over all combinations it runs in.
 *
 * @param load        the load
 * @param dropVolts   largest drop, feed and return together, of a combination solved in full, V, on-state
 * @param combination that combination
 * @param boundVolts  no combination brings more, V; empty where no bound is claimed
 * @param isProven    whether the bound says that no combination is worse
 * @param limitVolts  allowed drop, V
 */
public record LoadEnvelope(
        ComponentId load,
        double dropVolts,
        String combination,
        OptionalDouble boundVolts,
        boolean isProven,
        double limitVolts) {}
