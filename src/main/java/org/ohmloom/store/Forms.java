package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.BooleanNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.Calibration;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Measured;
import org.ohmloom.model.OutputPin;
import org.ohmloom.model.Place;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.Register;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SourceSetting;
import org.ohmloom.model.UnknownKeys;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Refusals;

/**
 * Finds the form of every type of the model from its record components, so that a new component is stored without a line
 * here; the exceptions of the format are the only things spelt out.
 */
final class Forms {
    private Forms() {}

    /** The form of a type. */
    static Form of(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type[] of = generic.getActualTypeArguments();
            Type last = of[of.length - 1];
            Class<?> raw = (Class<?>) generic.getRawType();
            if (raw == Optional.class) {
                return new OptionalForm(of(last));
            }
            if (raw == Set.class) {
                return new RolesForm(new ListForm(of(last)));
            }
            if (raw == SortedMap.class) {
                return new MapForm((SimpleForms.TextualForm) key(of[0]), of(last));
            }
            if (raw == Register.class) {
                return new RegisterForm(new ListForm(of(last)));
            }
            if (raw == List.class) {
                return new ListForm(of(last));
            }
        }
        return single((Class<?>) type);
    }

    /** The components of a record as keys; kept unknown keys are not a component of the file. */
    static RecordFields fields(Class<?> type) {
        return RecordFields.of(type, Forms::component);
    }

    private static Optional<Form> component(RecordComponent component) {
        return component.getType() == UnknownKeys.class
                ? Optional.empty()
                : Optional.of(of(component.getGenericType()));
    }

    private static Form key(Type type) {
        if (type == String.class) {
            return SimpleForms.textual(String.class, text -> text, text -> text);
        }
        if (type instanceof Class<?> words && words.isEnum()) {
            return SimpleForms.wordKey(words);
        }
        return type == OutputPin.class
                ? SimpleForms.textual(OutputPin.class, OutputPins::read, OutputPin::toString)
                : of(type);
    }

    private static Form single(Class<?> type) {
        if (type == double.class || type == Double.class) {
            return SimpleForms.NUMBER;
        } else if (type == OptionalDouble.class) {
            return SimpleForms.OPTIONAL_NUMBER;
        } else if (type == int.class || type == Integer.class) {
            return SimpleForms.WHOLE;
        } else if (type == boolean.class || type == Boolean.class) {
            return SimpleForms.FLAG;
        } else if (type == String.class) {
            return SimpleForms.TEXT;
        } else if (type.isEnum()) {
            return SimpleForms.constant(type);
        } else if (type == Gauge.class) {
            return SimpleForms.textual(Gauge.class, Gauge::parse, Gauge::text);
        } else if (type == WireColour.class) {
            return SimpleForms.textual(WireColour.class, WireColour::parse, WireColour::text);
        } else if (ElementId.class.isAssignableFrom(type)) {
            RecordFields id = fields(type);
            return SimpleForms.textual(
                    ElementId.class, text -> (ElementId) id.create(Map.of("value", text)), ElementId::value);
        } else if (type == Setting.class) {
            return SettingForm.of(fields(Setting.class));
        } else if (type == SourceSetting.class) {
            return SourceSettingForm.of(fields(SourceSetting.class));
        } else if (type == BatteryModel.class) {
            return new RecordForm(
                    fields(BatteryModel.class).defaulting("ratedHours", BatteryModel.USUAL_RATED_HOURS), Map.of());
        } else if (type == Device.class) {
            return new KindForm(Refusals.text("device"), devices());
        } else if (type == Draw.class) {
            return new KindForm(Refusals.text("draw"), kinds(Draw.class));
        } else if (type == Calibration.class) {
            return new KindForm(Refusals.text("calibration"), kinds(Calibration.class));
        } else if (type == WireEnd.class) {
            return new MarkedForm(Refusals.text("the end of a wire"), marked(WireEnd.class));
        } else if (type == Place.class) {
            return new MarkedForm(Refusals.text("a place on the harness"), marked(Place.class));
        } else if (type == RoutingRule.class) {
            return new MarkedForm(Refusals.text("a routing rule"), marked(RoutingRule.class));
        } else if (type == Measured.class) {
            return new MarkedForm(Refusals.text("what a reading measured"), marked(Measured.class));
        }
        return new RecordForm(fields(type), Map.of());
    }

    private static Map<String, RecordForm> devices() {
        Map<String, RecordForm> forms = new LinkedHashMap<>();
        for (Class<?> kind : Device.class.getPermittedSubclasses()) {
            if (kind == ProtectiveDevice.class) {
                Arrays.stream(ProtectiveDevice.Kind.values())
                        .forEach(value ->
                                put(forms, SimpleForms.word(value), fields(kind).fixed("kind", value)));
            } else if (kind == Sensor.class) {
                put(forms, SimpleForms.word(kind), fields(kind).renamed("kind", "sensing"));
            } else {
                put(forms, SimpleForms.word(kind), fields(kind));
            }
        }
        return forms;
    }

    private static Map<String, RecordForm> kinds(Class<?> sealed) {
        Map<String, RecordForm> forms = new LinkedHashMap<>();
        for (Class<?> kind : sealed.getPermittedSubclasses()) {
            put(forms, SimpleForms.word(kind), fields(kind));
        }
        return forms;
    }

    private static void put(Map<String, RecordForm> forms, String word, RecordFields fields) {
        forms.put(word, new RecordForm(fields, Map.of(KindForm.KIND, TextNode.valueOf(word))));
    }

    /** Each record under its first key; one without components is marked by its own name. */
    private static Map<String, RecordForm> marked(Class<?> sealed) {
        Map<String, RecordForm> forms = new LinkedHashMap<>();
        for (Class<?> kind : sealed.getPermittedSubclasses()) {
            RecordFields fields = fields(kind);
            String mark = fields.keys().stream().findFirst().orElse(SimpleForms.word(kind));
            Map<String, JsonNode> leading = fields.keys().isEmpty() ? Map.of(mark, BooleanNode.TRUE) : Map.of();
            forms.put(mark, new RecordForm(fields, leading));
        }
        return forms;
    }
}
