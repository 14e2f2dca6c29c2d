package org.ohmloom.workbench.settings;

import java.util.function.UnaryOperator;

/** Where preferences are kept. */
public interface PreferenceStore {

    /** What is settled now. */
    Preferences now();

    /** Changes what is settled and keeps it. */
    void change(UnaryOperator<Preferences> step);

    /** A store that forgets at the end of the program: for pictures, tests and screens without a person. */
    static PreferenceStore inMemory(Preferences first) {
        return new PreferenceStore() {
            private Preferences now = first;

            @Override
            public Preferences now() {
                return now;
            }

            @Override
            public void change(UnaryOperator<Preferences> step) {
                now = step.apply(now);
            }
        };
    }
}
