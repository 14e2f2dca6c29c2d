package org.ohmloom.pack.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.ohmloom.units.Require;
import org.ohmloom.units.Unit;

/**
 * A column of a table: its head, and how its cells are set. The unit stands in the head and nowhere else.
 *
 * @param head     what the column holds
 * @param unit     symbol of the unit of its numbers, empty without one
 * @param kind     how its cells are set
 * @param decimals decimals printed of a number, 0 to 9; the file beside the page gets every digit
 * @param printed  whether it is on the page; otherwise only in the file beside it
 * @param naming   whether its cells name elements of the harness
 */
public record Column(String head, String unit, Kind kind, int decimals, boolean printed, Naming naming) {

    /** Numbers nearer to zero than this are rounding noise of a computation and print as zero. */
    private static final double NOISE = 1e-9;

    /** How cells are set. */
    public enum Kind {
        /** Words, wrapped where the column is narrow. */
        WORDS,
        /** Ids and part numbers: kept on one line as long as the page is wide enough. */
        CODE,
        /** Numbers, to the right, with one count of decimals. */
        NUMBER,
        /** An insulation colour: a sample and its code. */
        COLOUR,
        /** Left free to be written in by hand; on the page also when nothing is in it. */
        BLANK,
        /** A box to tick by hand. */
        TICK
    }

    /** Whether cells name elements of the harness. */
    public enum Naming {
        /** They do not. */
        NONE,
        /** They name elements described elsewhere: links lead there. */
        MENTION,
        /** Each names the element that its row describes: links lead here. */
        HOME
    }

    /** A column whose cells name no elements. */
    public Column(String head, String unit, Kind kind, int decimals, boolean printed) {
        this(head, unit, kind, decimals, printed, Naming.NONE);
    }

    public Column {
        Require.notBlank(head, "head of a column");
        Require.that(decimals >= 0 && decimals <= 9, "a column shows 0 to 9 decimals, not %s", decimals);
    }

    /** Words, wrapped where needed. */
    public static Column words(String head) {
        return new Column(head, "", Kind.WORDS, 0, true);
    }

    /** Ids and part numbers. */
    public static Column code(String head) {
        return new Column(head, "", Kind.CODE, 0, true);
    }

    /** Numbers in one unit. */
    public static Column number(String head, Unit unit, int decimals) {
        return new Column(head, unit.symbol(), Kind.NUMBER, decimals, true);
    }

    /** Numbers without a unit. */
    public static Column count(String head, int decimals) {
        return new Column(head, "", Kind.NUMBER, decimals, true);
    }

    /** Insulation colours. */
    public static Column colour(String head) {
        return new Column(head, "", Kind.COLOUR, 0, true);
    }

    /** Room to write in by hand. */
    public static Column blank(String head) {
        return new Column(head, "", Kind.BLANK, 0, true);
    }

    /** Room to write a number in by hand, in one unit. */
    public static Column blank(String head, Unit unit) {
        return new Column(head, unit.symbol(), Kind.BLANK, 0, true);
    }

    /** A box to tick by hand. */
    public static Column tick(String head) {
        return new Column(head, "", Kind.TICK, 0, true);
    }

    /** Whether something is written or ticked in it by hand. */
    boolean isByHand() {
        return kind == Kind.BLANK || kind == Kind.TICK;
    }

    /** Words that only the file beside the page has. */
    public static Column fileOnly(String head) {
        return new Column(head, "", Kind.WORDS, 0, false);
    }

    /** The same in the file beside the page only. */
    public Column inFileOnly() {
        return new Column(head, unit, kind, decimals, false, naming);
    }

    /** The same of elements described elsewhere, by id or wire end. */
    public Column mentioning() {
        return new Column(head, unit, kind, decimals, printed, Naming.MENTION);
    }

    /** The same of the elements that its rows describe. */
    public Column home() {
        return new Column(head, unit, kind, decimals, printed, Naming.HOME);
    }

    /** Head of the column in a file: with its unit, as "Length mm". */
    public String fileHead() {
        return unit.isEmpty() ? head : head + " " + unit;
    }

    /** A number as this column prints it: "12.60"; "&lt;0.01" for one too small to show, "-0.004" below zero; "-" when it is not finite. */
    String print(double value) {
        if (!Double.isFinite(value)) {
            return "-";
        }
        if (Math.abs(value) < NOISE) {
            return BigDecimal.ZERO.setScale(decimals, RoundingMode.UNNECESSARY).toPlainString();
        }
        BigDecimal shown = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        if (shown.signum() != 0) {
            return shown.toPlainString();
        }
        return value > 0
                ? "<" + BigDecimal.ONE.movePointLeft(decimals).toPlainString()
                : BigDecimal.valueOf(value)
                        .round(new MathContext(1, RoundingMode.HALF_UP))
                        .toPlainString();
    }
}
