package org.ohmloom.workbench.lists;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Field;
import org.ohmloom.edit.RenamePlan;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.sheet.CellEdit;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.words.Term;
import org.ohmloom.workbench.words.Words;

/**
 * Columns whose cells are fields of elements, typed as {@link Field} reads them. Title and tip are words of the bundle of lists.
 *
 * @param harness the harness as it is, to find what is named
 * @param element the element a row is about
 * @param <R>     type of the rows
 */
record FieldColumns<R>(Supplier<Optional<Harness>> harness, Function<R, ? extends Element> element) {
    private static final Words WORDS = Words.of("lists");

    private static String word(String key) {
        return Words.of("lists").get(key);
    }

    private Harness now() {
        return harness.get()
                .orElseThrow(() -> new IllegalArgumentException(WORDS.get("field-columns.no-harness-is-open")));
    }

    /** A column of texts, choices or identities. */
    Column<R> text(String key, int letters, String path) {
        Field field = Field.of(path);
        return Column.<R>text(WORDS.term(key), word(key + ".about"), letters, row -> field.text(element.apply(row)))
                .edited(edit(field, word(key)));
    }

    /** A column of numbers in a unit. */
    Column<R> number(String key, Unit unit, String path) {
        Field field = Field.of(path, unit);
        return Column.<R>number(
                        WORDS.term(key),
                        unit.symbol(),
                        word(key + ".about"),
                        row -> CellText.of(field.number(element.apply(row))))
                .edited(edit(field, word(key)));
    }

    /** A column of identities of the rows themselves; whatever names one follows when another is typed. */
    Column<R> identity(String title, String tip, int letters) {
        return Column.<R>text(new Term("identity", title), tip, letters, row -> element.apply(row)
                        .id()
                        .value())
                .edited(renaming());
    }

    /** How an identity is typed. */
    CellEdit<R> renaming() {
        return new CellEdit<>() {
            @Override
            public String start(R row) {
                return element.apply(row).id().value();
            }

            @Override
            public Edit parse(List<R> rows, String typed) {
                if (rows.size() > 1) {
                    throw new IllegalArgumentException(word("one-identity"));
                }
                Element only = element.apply(rows.get(0));
                return typed.strip().equals(only.id().value())
                        ? new ChangeElements(WORDS.text("field-columns.rename", only.id()), List.of(), same -> same)
                        : RenamePlan.of(now(), Map.of(only.id(), typed)).edit();
            }
        };
    }

    /**
     * How a field is typed.
     *
     * @param what what it is, in words
     */
    CellEdit<R> edit(Field field, String what) {
        return new CellEdit<>() {
            @Override
            public boolean suits(R row) {
                return field.suits(element.apply(row));
            }

            @Override
            public String start(R row) {
                return field.text(element.apply(row));
            }

            @Override
            public Edit parse(List<R> rows, String typed) {
                List<? extends Element> elements = rows.stream().map(element).toList();
                String words = what.toLowerCase(Locale.ROOT);
                return field.set(now(), words, elements, typed);
            }
        };
    }
}
