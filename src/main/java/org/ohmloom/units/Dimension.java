package org.ohmloom.units;

import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

/** What a quantity measures. Each dimension has one canonical unit, the one the model and the solver compute in. */
public enum Dimension {
    /** Electrical potential difference, canonical unit V. */
    VOLTAGE("a voltage", "12.6 V"),
    /** Electrical current, canonical unit A. */
    CURRENT("a current", "2.5 A"),
    /** Electrical resistance, canonical unit ohm. */
    RESISTANCE("a resistance", "4.7 kOhm"),
    /** Resistance of a conductor for each metre of it, canonical unit ohm/m. */
    RESISTANCE_PER_LENGTH("a resistance per length", "8.3 mOhm/m"),
    /** Power, canonical unit W. */
    POWER("a power", "55 W"),
    /** Energy, canonical unit J. */
    ENERGY("an energy", "12 J"),
    /** Length or diameter, canonical unit m. */
    LENGTH("a length", "1.5 m"),
    /** Cross-section of a conductor, canonical unit mm2. */
    AREA("an area", "2.5 mm2"),
    /** Mass, canonical unit kg. */
    MASS("a mass", "0.4 kg"),
    /** Mass of a conductor or bundle for each metre of it, canonical unit kg/m. */
    MASS_PER_LENGTH("a mass per length", "25 g/m"),
    /** Force, canonical unit N. */
    FORCE("a force", "80 N"),
    /** Temperature on a scale, canonical unit degree Celsius. Not for temperature differences. */
    TEMPERATURE("a temperature", "85 degC"),
    /** Duration, canonical unit s. */
    TIME("a time", "0.5 s"),
    /** Frequency, canonical unit Hz. */
    FREQUENCY("a frequency", "100 Hz"),
    /** Inductance, canonical unit H. */
    INDUCTANCE("an inductance", "10 mH"),
    /** Capacitance, canonical unit F. */
    CAPACITANCE("a capacitance", "100 nF"),
    /** Charge or battery capacity, canonical unit Ah. */
    CHARGE("a charge", "95 Ah"),
    /** Rate of a data bus, canonical unit bit/s. */
    DATA_RATE("a data rate", "500 kbit/s"),
    /** Integral of the squared current over time (I2t) of a fuse or a conductor, canonical unit A2s. */
    JOULE_INTEGRAL("a Joule integral", "1200 A2s"),
    /** Plain ratio such as a duty cycle or an allowed drop, canonical unit 1 (a fraction). */
    RATIO("a ratio", "20 %");

    private final String nounWithArticle;
    private final String example;

    Dimension(String nounWithArticle, String example) {
        this.nounWithArticle = nounWithArticle;
        this.example = example;
    }

    /** The name of this dimension in a sentence, with its article: "a length", "an area". */
    public String nounWithArticle() {
        return nounWithArticle;
    }

    /** The name of this dimension: "length", "area". */
    public String noun() {
        return nounWithArticle.substring(nounWithArticle.indexOf(' ') + 1);
    }

    /** The name with its article, in any language: for a refusal. */
    Text named() {
        return Refusals.text(nounWithArticle);
    }

    /** A text that {@link QuantityParser} reads as a quantity of this dimension, for messages: "1.5 m". */
    public String example() {
        return example;
    }

    /** The unit that values of this dimension are held in. */
    public Unit canonicalUnit() {
        return Units.canonical(this);
    }
}
