package org.ohmloom.model;

import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.units.Gauge;

/**
 * What a person asks of the choice of conductors and protective devices beyond the design basis.
 *
 * @param method            which conductor temperature decides; empty means as the design basis says
 * @param marginFraction    share of the ampacity by heat balance kept in reserve, 0 to below 1; empty means the basis's own
 * @param altitudeMetres    highest altitude of use, m, -500 to 20,000; empty means sea level
 * @param stock             sizes that may be chosen; empty means every size of the family
 * @param oneSizePerCircuit whether all wires of a circuit get one size
 * @param faultSeconds      time in which the smallest fault must open its protective device, s, more than 0; empty means 5 s
 */
public record SizingRules(
        Optional<Method> method,
        OptionalDouble marginFraction,
        OptionalDouble altitudeMetres,
        List<StockSize> stock,
        boolean oneSizePerCircuit,
        OptionalDouble faultSeconds) {

    /** Which estimate of the conductor temperature decides the size. */
    public enum Method {
        /** The ampacity table of the design basis. */
        TABLE,
        /** The heat balance, also where it allows more than a table. */
        HEAT_BALANCE
    }

    /**
     * A conductor size on the shelf.
     *
     * @param gauge         the size
     * @param pricePerMetre price of a metre in any one currency, 0 or more, if given
     */
    public record StockSize(Gauge gauge, OptionalDouble pricePerMetre) {
        public StockSize {
            pricePerMetre.ifPresent(value -> within(value, 0, Double.MAX_VALUE, "price per metre"));
        }
    }

    /** Nothing asked. */
    public static final SizingRules NONE = new SizingRules(
            Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), List.of(), false, OptionalDouble.empty());

    public SizingRules {
        marginFraction.ifPresent(value -> within(value, 0, 0.9, "margin of the heat balance"));
        altitudeMetres.ifPresent(value -> within(value, -500, 20_000, "altitude"));
        stock = List.copyOf(stock);
        faultSeconds.ifPresent(value -> positive(value, "opening time of the smallest fault"));
    }
}
