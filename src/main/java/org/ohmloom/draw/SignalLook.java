package org.ohmloom.draw;

import org.ohmloom.model.SignalClass;
import org.ohmloom.words.Text;

/**
 * How each signal class is drawn: a colour, a line pattern of its own and a word, so that meaning never rests on colour
 * alone.
 *
 * @param ink     colour
 * @param pattern line pattern
 * @param word    what people call it
 */
public record SignalLook(Ink ink, LinePattern pattern, Text word) {

    /** The look of a class. */
    public static SignalLook of(SignalClass signalClass) {
        return switch (signalClass) {
            case FEED -> new SignalLook(Ink.FEED, LinePattern.CONTINUOUS, Words.text("signal.feed"));
            case SWITCHED_OUTPUT -> new SignalLook(
                    Ink.SWITCHED_OUTPUT, LinePattern.LONG_DASH_SHORT_DASH, Words.text("signal.switched-output"));
            case RETURN -> new SignalLook(Ink.RETURN, LinePattern.LONG_DASH_DOT, Words.text("signal.return"));
            case REFERENCE_SUPPLY -> new SignalLook(
                    Ink.REFERENCE_SUPPLY, LinePattern.LONG_DASH_DOUBLE_DOT, Words.text("signal.reference-supply"));
            case REFERENCE_RETURN -> new SignalLook(
                    Ink.REFERENCE_RETURN, LinePattern.DOTTED, Words.text("signal.reference-return"));
            case ANALOGUE_SIGNAL -> new SignalLook(
                    Ink.ANALOGUE_SIGNAL, LinePattern.DASH_DOT, Words.text("signal.analogue-signal"));
            case PULSE_SIGNAL -> new SignalLook(
                    Ink.PULSE_SIGNAL, LinePattern.DASH_DOUBLE_DOT, Words.text("signal.pulse-signal"));
            case DATA_BUS -> new SignalLook(
                    Ink.DATA_BUS, LinePattern.LONG_DASH_DOUBLE_SHORT_DASH, Words.text("signal.data-bus"));
            case SHIELD -> new SignalLook(Ink.SHIELD, LinePattern.DASHED, Words.text("signal.shield"));
        };
    }
}
