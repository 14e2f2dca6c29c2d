package org.ohmloom.draw.wiring;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Lettering;
import org.ohmloom.draw.Weight;
import org.ohmloom.draw.Words;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;

/** What is written on a wire: above it number and size, below it colour and current. */
final class WireWords {

    static final double TEXT_MM = 1.8;
    static final double SWATCH_MM = 4.5;
    static final double SPACE_MM = 1.2;

    /** Less than this is rounding noise, A. */
    private static final double NO_AMPS = 1e-9;

    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";

    private final Harness whole;
    private final Map<WireId, WireRating> ratings;
    private final List<StateId> states;
    private final Lettering lettering;

    /**
     * Words for the wires of a harness, or of a part of one.
     *
     * @param whole the harness with the operating states
     */
    WireWords(Optional<Analysis> analysis, Harness whole, Lettering lettering) {
        this.whole = whole;
        this.lettering = lettering;
        this.ratings = analysis.<Map<WireId, WireRating>>map(Analysis::ratings).orElse(Map.of());
        this.states = whole.states().all().stream().map(OperatingState::id).toList();
    }

    /** Its size: its own, or in brackets the one it was solved with; then the cable it is a core of. */
    String size(Wire wire) {
        Optional<String> own = wire.gauge().map(Words::size);
        Optional<String> taken =
                Optional.ofNullable(ratings.get(wire.id())).map(rating -> "(" + Words.size(rating.gauge()) + ")");
        String cable = wire.cable().map(CableId::value).map(id -> " " + id).orElse("");
        return own.or(() -> taken).orElse("no size") + cable;
    }

    /** Its current in the worst state that lasts, A. */
    Optional<Double> amps(Wire wire) {
        return Optional.ofNullable(ratings.get(wire.id())).map(WireRating::worstAmps);
    }

    /** The state of that current; empty for a wire that never carries any. */
    Optional<StateId> state(Wire wire) {
        return Optional.ofNullable(ratings.get(wire.id()))
                .filter(rating -> rating.worstAmps() > NO_AMPS)
                .flatMap(WireRating::worstState);
    }

    /** The name of a state. */
    String name(StateId state) {
        return whole.states().find(state).map(OperatingState::name).orElse(state.value());
    }

    /** The letter a state has on every sheet. */
    String letter(StateId state) {
        int number = states.indexOf(state);
        return number < LETTERS.length() ? String.valueOf(LETTERS.charAt(number)) : String.valueOf(number + 1);
    }

    String current(Wire wire, boolean lettered) {
        return amps(wire)
                .map(Formats::amps)
                .map(text -> text
                        + (lettered
                                ? state(wire).map(state -> " " + letter(state)).orElse("")
                                : ""))
                .orElse("");
    }

    /** Room for all of it, mm. */
    double widthMm(Wire wire) {
        double above = lettering.widthMm(wire.id().value(), Weight.BOLD, TEXT_MM)
                + SPACE_MM
                + lettering.widthMm(size(wire), Weight.REGULAR, TEXT_MM);
        double colour = wire.colour()
                .map(WireColour::text)
                .map(code -> SWATCH_MM + 0.8 + lettering.widthMm(code, Weight.REGULAR, TEXT_MM) + SPACE_MM)
                .orElse(0.0);
        String current = current(wire, true);
        return Math.max(above, colour + lettering.widthMm(current, Weight.REGULAR, TEXT_MM));
    }
}
