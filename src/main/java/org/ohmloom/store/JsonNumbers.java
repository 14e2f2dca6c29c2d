package org.ohmloom.store;

import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.NullNode;
import java.math.BigDecimal;

/** Numbers as JSON text: the fewest digits that read back as the same double. */
final class JsonNumbers {
    private static final int LARGEST_PLAIN_EXPONENT = 15;
    private static final int SMALLEST_PLAIN_EXPONENT = -7;

    private JsonNumbers() {}

    /** The node of a double; null for one that is not finite, which JSON cannot hold. Negative zero becomes 0. */
    static JsonNode node(double value) {
        if (!Double.isFinite(value)) {
            return NullNode.getInstance();
        }
        if (value == 0) {
            return DecimalNode.valueOf(BigDecimal.ZERO);
        }
        return DecimalNode.valueOf(new BigDecimal(NumberOutput.toString(value, true)).stripTrailingZeros());
    }

    /** The text of a number node, without an exponent in the ordinary range. */
    static String text(JsonNode node) {
        if (!node.isBigDecimal()) {
            return node.asText();
        }
        BigDecimal value = node.decimalValue();
        long exponent = (long) value.precision() - value.scale() - 1;
        boolean ordinary = exponent >= SMALLEST_PLAIN_EXPONENT && exponent <= LARGEST_PLAIN_EXPONENT;
        return ordinary ? value.toPlainString() : value.toString();
    }
}
