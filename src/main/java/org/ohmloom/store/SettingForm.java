package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.ohmloom.model.Setting;

/**
 * A setting in its shortest form: true, false, a duty, or an object.
 *
 * @param object form of the object; every key may be absent, and stands then for on, all the time, first position
 */
record SettingForm(RecordForm object) implements Form {

    /** The form whose object has these components. */
    static SettingForm of(RecordFields fields) {
        RecordFields defaulting = fields.defaulting("on", true).defaulting("dutyFraction", 1.0);
        return new SettingForm(new RecordForm(defaulting, Map.of()));
    }

    @Override
    public Object read(JsonNode node, Spot spot) {
        if (node.isBoolean()) {
            return node.booleanValue() ? Setting.ON : Setting.OFF;
        }
        if (node.isNumber()) {
            double duty = Found.number(node, spot);
            if (duty >= Double.MIN_NORMAL && duty <= 1) {
                return Setting.duty(duty);
            }
            throw new RefusedException(
                    spot,
                    duty == 0
                            ? "a duty is more than 0 and at most 1, found %s; write false for off"
                            : "a duty is more than 0 and at most 1, found %s",
                    JsonLayout.inline(node));
        }
        if (node.isObject()) {
            return object.read(node, spot);
        }
        throw Found.needed("true, false, a duty between 0 and 1 or an object { }", node, spot);
    }

    @Override
    public JsonNode write(Object value, Spot spot) {
        ObjectNode full = object.write(value, spot);
        if (full.isEmpty()) {
            return BooleanNode.TRUE;
        }
        JsonNode only = full.size() == 1 ? full.elements().next() : full;
        boolean isShort = full.has("on") || full.has("dutyFraction");
        return isShort ? only : full;
    }
}
