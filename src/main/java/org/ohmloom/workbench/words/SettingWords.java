package org.ohmloom.workbench.words;

import org.ohmloom.model.Setting;
import org.ohmloom.units.Formats;

/** A setting in an operating state, in words. */
public final class SettingWords {

    private SettingWords() {}

    public static String of(Setting setting) {
        if (!setting.on()) {
            return "off";
        }
        String duty = setting.dutyFraction() < 1 ? ", " + Formats.percent(setting.dutyFraction()) + " duty" : "";
        String position = setting.position().map(name -> ", position " + name).orElse("");
        return "on" + duty + position + (setting.starting() ? ", starting" : "");
    }
}
