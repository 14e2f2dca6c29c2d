package org.ohmloom.edit;

import java.util.function.UnaryOperator;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.words.Text;

/**
 * Changes what is said of a whole harness: its title block, and the rules it is judged by.
 *
 * @param label  what that does
 * @param title  makes the changed title block
 * @param rules  makes the changed rules
 */
public record SetOfHarness(Text label, UnaryOperator<TitleBlock> title, UnaryOperator<DesignRules> rules)
        implements Edit {

    /**
     * Puts what was typed into a field of the title block.
     *
     * @param what what the field is, in words: "number"
     * @throws IllegalArgumentException when the text is not what is needed; the message says what would be right
     */
    public static SetOfHarness title(Harness harness, Field field, String what, String typed) {
        Object value = field.parsed(harness, harness.titleBlock(), "the title block", typed);
        field.withIn(harness.titleBlock(), value);
        return title(Labels.text("set", what), before -> (TitleBlock) field.withIn(before, value));
    }

    /** Changes the title block. */
    public static SetOfHarness title(Text label, UnaryOperator<TitleBlock> change) {
        return new SetOfHarness(label, change, same -> same);
    }

    /**
     * Puts what was typed into a field of the rules.
     *
     * @param what what the field is, in words: "nominal voltage"
     * @throws IllegalArgumentException when the text is not what is needed; the message says what would be right
     */
    public static SetOfHarness rules(Harness harness, Field field, String what, String typed) {
        Object value = field.parsed(harness, harness.rules(), "the design rules", typed);
        field.withIn(harness.rules(), value);
        return new SetOfHarness(
                Labels.text("set", what), same -> same, before -> (DesignRules) field.withIn(before, value));
    }

    /** What stands in a field of the title block, as it can be typed again. */
    public static String titleText(Harness harness, Field field) {
        return field.textIn(harness.titleBlock());
    }

    /** What stands in a field of the rules, as it can be typed again. */
    public static String rulesText(Harness harness, Field field) {
        return field.textIn(harness.rules());
    }

    @Override
    public Harness apply(Harness before) {
        TitleBlock titled = title.apply(before.titleBlock());
        DesignRules judged = rules.apply(before.rules());
        Harness changed = titled.equals(before.titleBlock()) ? before : before.withTitleBlock(titled);
        return judged.equals(before.rules()) ? changed : changed.withRules(judged);
    }
}
