package org.ohmloom.size.protection;

/**
 * One point a protective device is judged by.
 *
 * @param aspect   what is judged
 * @param verdict  how it came out
 * @param sentence the numbers, in words
 * @param source   rule, formula or table row it rests on
 */
public record Check(Aspect aspect, Verdict verdict, String sentence, String source) {

    /** What is judged. */
    public enum Aspect {
        CARRIES("carries the running current"),
        RIDES_THROUGH("rides through starts"),
        RATED("is no larger than the design basis allows its conductors"),
        PROTECTS("protects its conductors"),
        CLEARS_SMALLEST("clears the smallest fault"),
        BREAKS_LARGEST("breaks the largest fault"),
        VOLTAGE("suits the voltage"),
        SELECTIVE("opens before the device upstream");

        private final String words;

        Aspect(String words) {
            this.words = words;
        }

        /** The aspect in words. */
        public String words() {
            return words;
        }
    }

    /** How a point came out. */
    public enum Verdict {
        MET("yes"),
        NOT_MET("NO"),
        NOT_JUDGED("not judged");

        private final String words;

        Verdict(String words) {
            this.words = words;
        }

        /** The verdict in words. */
        public String words() {
            return words;
        }
    }

    static Check judged(Aspect aspect, boolean met, String sentence, String source) {
        return new Check(aspect, met ? Verdict.MET : Verdict.NOT_MET, sentence, source);
    }

    static Check notJudged(Aspect aspect, String sentence, String source) {
        return new Check(aspect, Verdict.NOT_JUDGED, sentence, source);
    }
}
