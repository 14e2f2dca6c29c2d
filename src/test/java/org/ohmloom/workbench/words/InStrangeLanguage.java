package org.ohmloom.workbench.words;

import java.util.Locale;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.ohmloom.words.PseudoLanguage;

/** Shows the made-up language during each test of a class, before anything the class sets up itself. */
public final class InStrangeLanguage implements BeforeEachCallback, AfterEachCallback {

    private final Locale usual = Locale.getDefault(Locale.Category.DISPLAY);

    @Override
    public void beforeEach(ExtensionContext test) {
        Locale.setDefault(Locale.Category.DISPLAY, PseudoLanguage.LOCALE);
    }

    @Override
    public void afterEach(ExtensionContext test) {
        Locale.setDefault(Locale.Category.DISPLAY, usual);
    }
}
