package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.model.BrokenReferenceException;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Register;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Worded;

/** A whole harness as the object of a file. */
final class HarnessForm {
    private static final String FORMAT = "format";
    private static final String FORMAT_NAME = "ohmloom-harness";
    private static final String VERSION = "version";
    private static final RecordFields FIELDS = Forms.fields(Harness.class);

    private final Migrations migrations;

    HarnessForm(Migrations migrations) {
        this.migrations = migrations;
    }

    /**
     * The harness a file stands for.
     *
     * @throws RefusedException when it stands for none
     */
    Harness read(JsonNode node) {
        KeptKeys kept = new KeptKeys();
        Spot root = Spot.root(kept);
        ObjectNode object = migrations.toCurrent(format(Found.object(node, root), root), version(node, root));
        Map<String, Object> values = new HashMap<>(FIELDS.read(object, root));
        requireDifferentIds(values, root);
        Unknown.keep(object, key -> FIELDS.keys().contains(key) || key.equals(FORMAT) || key.equals(VERSION), root);
        for (String key : FIELDS.keys()) {
            if (values.get(key) instanceof List<?> elements) {
                values.put(
                        key,
                        Register.of(elements.stream().map(Element.class::cast).toList()));
            }
        }
        values.put("unknownKeys", kept.all());
        try {
            return (Harness) FIELDS.create(values);
        } catch (BrokenReferenceException broken) {
            throw BrokenReferences.refused(broken, object, root);
        } catch (IllegalArgumentException refused) {
            throw new RefusedException(root, Worded.of(refused));
        }
    }

    /** The object of a file for a harness. */
    ObjectNode write(Harness harness) {
        Spot root = Spot.root(new KeptKeys(harness.unknownKeys()));
        ObjectNode object = JsonNodeFactory.instance.objectNode();
        object.set(FORMAT, TextNode.valueOf(FORMAT_NAME));
        object.set(VERSION, IntNode.valueOf(migrations.currentVersion()));
        FIELDS.write(harness, object, root);
        Unknown.giveBack(object, root);
        return object;
    }

    private static ObjectNode format(ObjectNode object, Spot root) {
        JsonNode format = object.get(FORMAT);
        if (format == null) {
            throw new RefusedException(
                    root, "the key 'format' is missing; a harness file begins with \"format\": \"ohmloom-harness\"");
        }
        Found.word(format, List.of(FORMAT_NAME), Refusals.text("format"), root.key(FORMAT));
        return object;
    }

    private int version(JsonNode object, Spot root) {
        JsonNode node = object.get(VERSION);
        if (node == null) {
            throw new RefusedException(
                    root,
                    "the key 'version' is missing; this program writes version %s of the format",
                    migrations.currentVersion());
        }
        Spot spot = root.key(VERSION);
        double version = Found.number(node, spot);
        if (version != Math.rint(version) || version < 1) {
            throw Found.needed("a whole number from 1", node, spot);
        }
        if (version > migrations.currentVersion()) {
            throw new RefusedException(
                    spot,
                    "version %s of the format is newer than version %s, the newest this program knows; open the file with a newer program",
                    JsonLayout.inline(node),
                    migrations.currentVersion());
        }
        return (int) version;
    }

    private static void requireDifferentIds(Map<String, Object> values, Spot root) {
        Map<String, Spot> seen = new HashMap<>();
        for (String key : FIELDS.keys()) {
            if (values.get(key) instanceof Collection<?> elements) {
                int index = 0;
                for (Object element : elements) {
                    String id = ((Element) element).id().value();
                    Spot here = root.key(key).item(index++, id);
                    Spot before = seen.putIfAbsent(id, here);
                    if (before != null) {
                        throw new RefusedException(
                                here,
                                "the id '%s' is already used at %s; ids are unique across all kinds of element",
                                id,
                                before.path());
                    }
                }
            }
        }
    }
}
