package org.ohmloom.analysis;

import org.ohmloom.graph.Network;
import org.ohmloom.model.WireId;

/** How one harness as it is built and used differs from the one that is drawn. Safe for any number of threads. */
public interface Variation {

    /** As it is drawn. */
    Variation NONE = new Variation() {
        @Override
        public Network of(Network drawn) {
            return drawn;
        }

        @Override
        public double heatRatio(WireId wire) {
            return 1;
        }

        @Override
        public double airKelvin() {
            return 0;
        }
    };

    /** The network with its own laws in the place of the drawn ones; points and branches stay. */
    Network of(Network drawn);

    /** Resistance of a metre of a wire over that of its table row: its heat at the same current. */
    double heatRatio(WireId wire);

    /** Air everywhere against what is entered, K. */
    double airKelvin();
}
