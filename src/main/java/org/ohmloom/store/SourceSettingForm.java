package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Map;
import org.ohmloom.model.SourceSetting;

/**
 * A source setting in its shortest form: true, false, or an object.
 *
 * @param object form of the object; every key may be absent, and then stands for on and nothing else said
 */
record SourceSettingForm(RecordForm object) implements Form {

    /** The form whose object has these components. */
    static SourceSettingForm of(RecordFields fields) {
        return new SourceSettingForm(new RecordForm(fields.defaulting("on", true), Map.of()));
    }

    @Override
    public Object read(JsonNode node, Spot spot) {
        if (node.isBoolean()) {
            return SourceSetting.of(node.booleanValue());
        }
        if (node.isObject()) {
            return object.read(node, spot);
        }
        throw Found.needed("true, false or an object { }", node, spot);
    }

    @Override
    public JsonNode write(Object value, Spot spot) {
        ObjectNode full = object.write(value, spot);
        if (full.isEmpty()) {
            return BooleanNode.TRUE;
        }
        return full.size() == 1 && full.has("on") ? full.get("on") : full;
    }
}
