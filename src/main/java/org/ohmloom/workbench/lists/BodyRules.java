package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisRule;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ColumnEdits;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about a chassis body where no path of it is measured: the resistance to its middle, and where that is from. */
final class BodyRules {
    private static final Words WORDS = Words.of("lists");

    private BodyRules() {}

    /** The resistance from each ground point to the middle; emptied, the body counts as without resistance again. */
    static Column<ChassisBody> toMiddle() {
        return ColumnEdits.number(
                WORDS.term("to-middle"),
                Unit.MILLIOHM.symbol(),
                WORDS.get("to-middle.about"),
                body -> CellText.of(body.rule()
                        .map(rule -> OptionalDouble.of(Unit.MILLIOHM.fromCanonical(rule.toMiddleOhms())))
                        .orElse(OptionalDouble.empty())),
                (bodies, typed) -> {
                    OptionalDouble ohms = TypedNumbers.optional(typed, Unit.MILLIOHM);
                    return each(
                            bodies,
                            was -> ohms.isEmpty()
                                    ? Optional.empty()
                                    : Optional.of(new ChassisRule(ohms.getAsDouble(), source(was))));
                });
    }

    /** Where the figure is from; it is shown wherever the figure is used. */
    static Column<ChassisBody> source() {
        return Column.<ChassisBody>text(
                        WORDS.term("to-middle-source"), WORDS.get("to-middle-source.about"), 24, BodyRules::entered)
                .edited(ColumnEdits.<ChassisBody, ChassisBody>of(
                        body -> body.rule().isPresent(),
                        BodyRules::entered,
                        body -> body,
                        (bodies, typed) -> each(bodies, was -> was.rule()
                                .map(rule -> new ChassisRule(
                                        rule.toMiddleOhms(), typed.isBlank() ? unnamed() : typed.strip())))));
    }

    private static String entered(ChassisBody body) {
        return body.rule().map(ChassisRule::source).orElse("");
    }

    private static String source(ChassisBody was) {
        return was.rule().map(ChassisRule::source).orElseGet(BodyRules::unnamed);
    }

    private static String unnamed() {
        return WORDS.get("to-middle-source.unnamed");
    }

    private static Edit each(List<ChassisBody> bodies, Function<ChassisBody, Optional<ChassisRule>> rule) {
        return TypedNumbers.together(
                WORDS.text("set-to-middle-of", bodies.size()),
                bodies.stream()
                        .map(body -> (Edit) ChangeElements.tried(
                                WORDS.text("set-to-middle", body.id()),
                                body,
                                old -> new ChassisBody(
                                        old.id(), old.name(), old.isolated(), old.paths(), rule.apply(old))))
                        .toList());
    }
}
