package org.ohmloom.fuzz;

import com.code_intelligence.jazzer.api.FuzzedDataProvider;
import org.ohmloom.units.Dimension;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.Quantity;
import org.ohmloom.units.QuantityFormatException;
import org.ohmloom.units.QuantityParser;

/** A number typed with its unit, and a conductor size: refused in one line, or a finite value. */
public final class QuantityFuzz {

    private QuantityFuzz() {}

    /** One try. */
    public static void fuzzerTestOneInput(FuzzedDataProvider data) {
        Dimension dimension = data.pickValue(Dimension.values());
        String text = data.consumeRemainingAsString();
        try {
            Quantity quantity = QuantityParser.parse(text, dimension);
            if (!Double.isFinite(quantity.canonical())) {
                throw new AssertionError(text + " is read as " + quantity.canonical());
            }
        } catch (QuantityFormatException refused) {
            OneLine.check(refused.getMessage());
        }
        try {
            Gauge.parse(text);
        } catch (QuantityFormatException refused) {
            OneLine.check(refused.getMessage());
        }
    }
}
