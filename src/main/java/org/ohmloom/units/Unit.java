package org.ohmloom.units;

/**
 * A unit a person may type or read, with its exact relation to the canonical unit of its dimension.
 *
 * <p>canonical = (value - offset) x multiplier / divisor. Decimal prefixes below one are divisors, so that "7 %" becomes
 * exactly the double nearest to 0.07. Inch, foot and pound are the international ones (exact by definition: 25.4 mm,
 * 12 inches, 0.45359237 kg); a circular mil is the area of a circle of 0.001 inch diameter.
 */
public enum Unit {
    /** Volt. */
    VOLT(Dimension.VOLTAGE, "V", 1, 1, "volt volts"),
    /** Millivolt. */
    MILLIVOLT(Dimension.VOLTAGE, "mV", 1, 1e3, "millivolt millivolts"),
    /** Microvolt. */
    MICROVOLT(Dimension.VOLTAGE, "µV", 1, 1e6, "uV microvolt microvolts"),
    /** Kilovolt. */
    KILOVOLT(Dimension.VOLTAGE, "kV", 1e3, 1, "kilovolt kilovolts"),

    /** Ampere. */
    AMP(Dimension.CURRENT, "A", 1, 1, "amp amps ampere amperes"),
    /** Milliampere. */
    MILLIAMP(Dimension.CURRENT, "mA", 1, 1e3, "milliamp milliamps milliampere milliamperes"),
    /** Microampere. */
    MICROAMP(Dimension.CURRENT, "µA", 1, 1e6, "uA microamp microamps microampere microamperes"),
    /** Kiloampere. */
    KILOAMP(Dimension.CURRENT, "kA", 1e3, 1, "kiloamp kiloamps kiloampere kiloamperes"),

    /** Ohm; the letter R is its mark in the letter and digit code of IEC 60062. */
    OHM(Dimension.RESISTANCE, "Ω", 1, 1, "Ohm Ohms R"),
    /** Milliohm. */
    MILLIOHM(Dimension.RESISTANCE, "mΩ", 1, 1e3, "mOhm mOhms milliohm milliohms"),
    /** Microohm. */
    MICROOHM(Dimension.RESISTANCE, "µΩ", 1, 1e6, "uOhm uOhms µOhm µOhms uΩ microohm microohms"),
    /** Kiloohm; also the bare letter k, as on a resistor. */
    KILOOHM(Dimension.RESISTANCE, "kΩ", 1e3, 1, "kOhm kOhms kiloohm kiloohms kilohm kilohms k"),
    /** Megaohm; also the bare capital M, as on a resistor. */
    MEGAOHM(Dimension.RESISTANCE, "MΩ", 1e6, 1, "MOhm MOhms megaohm megaohms megohm megohms M"),

    /** Ohm per metre. */
    OHM_PER_METRE(Dimension.RESISTANCE_PER_LENGTH, "Ω/m", 1, 1, "Ohm/m"),
    /** Milliohm per metre, the same number as ohm per kilometre. */
    MILLIOHM_PER_METRE(Dimension.RESISTANCE_PER_LENGTH, "mΩ/m", 1, 1e3, "mOhm/m Ω/km Ohm/km"),
    /** Ohm per thousand feet. */
    OHM_PER_THOUSAND_FEET(Dimension.RESISTANCE_PER_LENGTH, "Ω/kft", 1, 304.8, "Ohm/kft Ω/1000ft Ohm/1000ft"),

    /** Watt. */
    WATT(Dimension.POWER, "W", 1, 1, "watt watts"),
    /** Milliwatt. */
    MILLIWATT(Dimension.POWER, "mW", 1, 1e3, "milliwatt milliwatts"),
    /** Kilowatt. */
    KILOWATT(Dimension.POWER, "kW", 1e3, 1, "kilowatt kilowatts"),

    /** Joule. */
    JOULE(Dimension.ENERGY, "J", 1, 1, "joule joules Ws"),
    /** Millijoule. */
    MILLIJOULE(Dimension.ENERGY, "mJ", 1, 1e3, "millijoule millijoules"),
    /** Kilojoule. */
    KILOJOULE(Dimension.ENERGY, "kJ", 1e3, 1, "kilojoule kilojoules"),
    /** Watt-hour. */
    WATT_HOUR(Dimension.ENERGY, "Wh", 3600, 1, ""),
    /** Kilowatt-hour. */
    KILOWATT_HOUR(Dimension.ENERGY, "kWh", 3.6e6, 1, ""),

    /** Metre. */
    METRE(Dimension.LENGTH, "m", 1, 1, "metre metres meter meters"),
    /** Millimetre. */
    MILLIMETRE(Dimension.LENGTH, "mm", 1, 1e3, "millimetre millimetres millimeter millimeters"),
    /** Centimetre. */
    CENTIMETRE(Dimension.LENGTH, "cm", 1, 1e2, "centimetre centimetres centimeter centimeters"),
    /** Kilometre. */
    KILOMETRE(Dimension.LENGTH, "km", 1e3, 1, "kilometre kilometres kilometer kilometers"),
    /** Inch. */
    INCH(Dimension.LENGTH, "in", 254, 1e4, "inch inches \" ″"),
    /** Foot. */
    FOOT(Dimension.LENGTH, "ft", 3048, 1e4, "foot feet ' ′"),
    /** Mil, a thousandth of an inch. */
    MIL(Dimension.LENGTH, "mil", 254, 1e7, "mils"),

    /** Square millimetre. */
    SQUARE_MILLIMETRE(Dimension.AREA, "mm²", 1, 1, "mm2 mm^2 sqmm"),
    /** Square centimetre. */
    SQUARE_CENTIMETRE(Dimension.AREA, "cm²", 100, 1, "cm2 cm^2 sqcm"),
    /** Circular mil. */
    CIRCULAR_MIL(Dimension.AREA, "cmil", Units.SQUARE_MILLIMETRES_IN_KILO_CIRCULAR_MIL, 1e3, "cmils"),
    /** Thousand circular mils. */
    KILO_CIRCULAR_MIL(Dimension.AREA, "kcmil", Units.SQUARE_MILLIMETRES_IN_KILO_CIRCULAR_MIL, 1, "kcmils MCM"),

    /** Kilogram. */
    KILOGRAM(Dimension.MASS, "kg", 1, 1, "kilogram kilograms"),
    /** Gram. */
    GRAM(Dimension.MASS, "g", 1, 1e3, "gram grams"),
    /** Pound. */
    POUND(Dimension.MASS, "lb", 45_359_237, 1e8, "lbs pound pounds"),

    /** Kilogram per metre. */
    KILOGRAM_PER_METRE(Dimension.MASS_PER_LENGTH, "kg/m", 1, 1, ""),
    /** Gram per metre, the same number as kilogram per kilometre. */
    GRAM_PER_METRE(Dimension.MASS_PER_LENGTH, "g/m", 1, 1e3, "kg/km"),
    /** Pound per thousand feet. */
    POUND_PER_THOUSAND_FEET(Dimension.MASS_PER_LENGTH, "lb/kft", 0.45359237, 304.8, "lb/1000ft"),

    /** Newton. */
    NEWTON(Dimension.FORCE, "N", 1, 1, "newton newtons"),
    /** Pound-force: the pound times 9.80665 m/s2, exact by definition. */
    POUND_FORCE(Dimension.FORCE, "lbf", 4.4482216152605, 1, ""),

    /** Degree Celsius. */
    DEGREE_CELSIUS(Dimension.TEMPERATURE, "°C", 0, 1, 1, "degC C ℃"),
    /** Degree Fahrenheit. */
    DEGREE_FAHRENHEIT(Dimension.TEMPERATURE, "°F", 32, 5, 9, "degF F ℉"),
    /** Kelvin. */
    KELVIN(Dimension.TEMPERATURE, "K", 273.15, 1, 1, "kelvin"),

    /** Second. */
    SECOND(Dimension.TIME, "s", 1, 1, "sec second seconds"),
    /** Millisecond. */
    MILLISECOND(Dimension.TIME, "ms", 1, 1e3, "msec millisecond milliseconds"),
    /** Microsecond. */
    MICROSECOND(Dimension.TIME, "µs", 1, 1e6, "us microsecond microseconds"),
    /** Minute. */
    MINUTE(Dimension.TIME, "min", 60, 1, "minute minutes"),
    /** Hour. */
    HOUR(Dimension.TIME, "h", 3600, 1, "hour hours"),

    /** Hertz. */
    HERTZ(Dimension.FREQUENCY, "Hz", 1, 1, "hertz"),
    /** Kilohertz. */
    KILOHERTZ(Dimension.FREQUENCY, "kHz", 1e3, 1, "kilohertz"),
    /** Megahertz. */
    MEGAHERTZ(Dimension.FREQUENCY, "MHz", 1e6, 1, "megahertz"),

    /** Henry. */
    HENRY(Dimension.INDUCTANCE, "H", 1, 1, "henry"),
    /** Millihenry. */
    MILLIHENRY(Dimension.INDUCTANCE, "mH", 1, 1e3, "millihenry"),
    /** Microhenry. */
    MICROHENRY(Dimension.INDUCTANCE, "µH", 1, 1e6, "uH microhenry"),

    /** Farad. */
    FARAD(Dimension.CAPACITANCE, "F", 1, 1, "farad farads"),
    /** Microfarad. */
    MICROFARAD(Dimension.CAPACITANCE, "µF", 1, 1e6, "uF microfarad microfarads"),
    /** Nanofarad. */
    NANOFARAD(Dimension.CAPACITANCE, "nF", 1, 1e9, "nanofarad nanofarads"),
    /** Picofarad. */
    PICOFARAD(Dimension.CAPACITANCE, "pF", 1, 1e12, "picofarad picofarads"),

    /** Ampere-hour. */
    AMP_HOUR(Dimension.CHARGE, "Ah", 1, 1, ""),
    /** Milliampere-hour. */
    MILLIAMP_HOUR(Dimension.CHARGE, "mAh", 1, 1e3, ""),

    /** Bit per second. */
    BIT_PER_SECOND(Dimension.DATA_RATE, "bit/s", 1, 1, "bps"),
    /** Kilobit per second. */
    KILOBIT_PER_SECOND(Dimension.DATA_RATE, "kbit/s", 1e3, 1, "kbps"),
    /** Megabit per second. */
    MEGABIT_PER_SECOND(Dimension.DATA_RATE, "Mbit/s", 1e6, 1, "Mbps"),

    /** Ampere squared second. */
    AMP_SQUARED_SECOND(Dimension.JOULE_INTEGRAL, "A²s", 1, 1, "A2s A^2s"),

    /** Fraction of one; written without a unit. */
    FRACTION(Dimension.RATIO, "", 1, 1, "fraction"),
    /** Hundredth part. */
    PERCENT(Dimension.RATIO, "%", 1, 100, "percent pct");

    private final Dimension dimension;
    private final String symbol;
    private final double offset;
    private final double multiplier;
    private final double divisor;
    private final String otherSpellings;

    Unit(Dimension dimension, String symbol, double multiplier, double divisor, String otherSpellings) {
        this(dimension, symbol, 0, multiplier, divisor, otherSpellings);
    }

    Unit(Dimension dimension, String symbol, double offset, double multiplier, double divisor, String otherSpellings) {
        this.dimension = dimension;
        this.symbol = symbol;
        this.offset = offset;
        this.multiplier = multiplier;
        this.divisor = divisor;
        this.otherSpellings = otherSpellings;
    }

    /** The symbol as it is shown, such as "mΩ" or "mm²"; empty for {@link #FRACTION}. */
    public String symbol() {
        return symbol;
    }

    /** What this unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Converts a value in this unit to the canonical unit of its dimension. */
    public double toCanonical(double value) {
        return (value - offset) * multiplier / divisor;
    }

    /** Converts a value in the canonical unit of this unit's dimension to this unit. */
    public double fromCanonical(double canonical) {
        return canonical * divisor / multiplier + offset;
    }

    /** Whether values in this unit are canonical as they stand. */
    public boolean isCanonical() {
        return offset == 0 && multiplier == 1 && divisor == 1;
    }

    /** Spellings besides the symbol that the parser accepts, separated by spaces. */
    String otherSpellings() {
        return otherSpellings;
    }
}
