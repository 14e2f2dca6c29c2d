package org.ohmloom.pack;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.SizingRules;
import org.ohmloom.units.Gauge;

/**
 * What buying one line of the bill takes: pieces as counted; lengths with waste, rounded up to {@value #STEP_METRES} m.
 *
 * @param quantity         what is bought, pieces or m
 * @param unitPrice        price of a piece or a metre, if entered
 * @param customerSupplied whether the customer provides it, so that it costs nothing here
 */
record Purchase(double quantity, OptionalDouble unitPrice, boolean customerSupplied) {

    /** Lengths are bought in steps of that, m. */
    static final double STEP_METRES = 0.1;

    private static final double NOISE_RATIO = 1e-9;

    /** The purchase of a line that needs so much, with that share of waste. */
    static Purchase of(Material material, Optional<Gauge> gauge, double net, double wasteFraction, Harness harness) {
        Optional<Part> part = material.part().map(harness.parts()::get);
        boolean pieces = material.unit().equals(Material.PIECE);
        double gross = pieces ? net : stepped(net * (1 + wasteFraction));
        OptionalDouble price = part.map(Part::unitPrice).orElse(OptionalDouble.empty());
        if (price.isEmpty() && material.kind() == MaterialKind.WIRE && gauge.isPresent()) {
            price = harness.rules().sizingRules().stock().stream()
                    .filter(size -> size.gauge().equals(gauge.get()))
                    .map(SizingRules.StockSize::pricePerMetre)
                    .findFirst()
                    .orElse(OptionalDouble.empty());
        }
        return new Purchase(gross, price, part.map(Part::customerSupplied).orElse(false));
    }

    /** A length rounded up to a whole number of steps, m. */
    private static double stepped(double metres) {
        BigDecimal steps = BigDecimal.valueOf(Math.ceil(metres / STEP_METRES - NOISE_RATIO));
        return steps.multiply(BigDecimal.valueOf(STEP_METRES)).doubleValue();
    }

    /** Price of the line to a hundredth, halves up; empty without a price or where the customer provides it. */
    Optional<BigDecimal> total() {
        return unitPrice.isEmpty() || customerSupplied
                ? Optional.empty()
                : Optional.of(BigDecimal.valueOf(quantity)
                        .multiply(BigDecimal.valueOf(unitPrice.getAsDouble()))
                        .setScale(2, RoundingMode.HALF_UP));
    }
}
