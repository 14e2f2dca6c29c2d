package org.ohmloom.workbench.words;

import org.ohmloom.model.Setting;
import org.ohmloom.units.Formats;

/** A setting in an operating state, in words. */
public final class SettingWords {
    private static final Words WORDS = Words.of("trade");

    private SettingWords() {}

    public static String of(Setting setting) {
        if (!setting.on()) {
            return WORDS.get("setting.off");
        }
        String duty =
                setting.dutyFraction() < 1 ? WORDS.get("setting.duty", Formats.percent(setting.dutyFraction())) : "";
        String position = setting.position()
                .map(name -> WORDS.get("setting.position", name))
                .orElse("");
        return WORDS.get("setting.on", duty, position, setting.starting() ? WORDS.get("setting.starting") : "");
    }
}
