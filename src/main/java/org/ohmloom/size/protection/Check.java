package org.ohmloom.size.protection;

import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * One point a protective device is judged by.
 *
 * @param aspect   what is judged
 * @param verdict  how it came out
 * @param told     the numbers, in words
 * @param source   rule, formula or table row it rests on
 */
public record Check(Aspect aspect, Verdict verdict, Text told, Text source) {

    /** What is judged. */
    public enum Aspect {
        CARRIES,
        RIDES_THROUGH,
        RATED,
        PROTECTS,
        CLEARS_SMALLEST,
        BREAKS_LARGEST,
        VOLTAGE,
        SELECTIVE;

        /** The aspect in words, in English. */
        public String words() {
            return Constants.text(this).english();
        }
    }

    /** How a point came out. */
    public enum Verdict {
        MET,
        NOT_MET,
        NOT_JUDGED;

        /** The verdict in words, in English. */
        public String words() {
            return Constants.text(this).english();
        }
    }

    /** The numbers in words, in English. */
    public String sentence() {
        return told.english();
    }

    static Check judged(Aspect aspect, boolean met, Text told, Text source) {
        return new Check(aspect, met ? Verdict.MET : Verdict.NOT_MET, told, source);
    }

    static Check notJudged(Aspect aspect, Text told, Text source) {
        return new Check(aspect, Verdict.NOT_JUDGED, told, source);
    }
}
