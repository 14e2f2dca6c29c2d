package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** A value that cannot be taken is refused in one line: file, place, what is wrong, what would be right. */
@BesideOthers
class RefusalTest {

    private static void refuses(String piece, String other, String line) {
        assertEquals("fan.harness.json: " + line, Refusals.with(piece, other));
    }

    @Test
    void aReferenceThatLeadsNowhereNamesTheNearestId() {
        refuses(
                "{\"connector\": \"X1\", \"cavity\": \"2\"}",
                "{\"connector\": \"X9\", \"cavity\": \"2\"}",
                "$.wires[3] (W4).from.connector: no connector 'X9'; did you mean 'X1'?");
        refuses(
                "{\"connector\": \"X1\", \"cavity\": \"2\"}",
                "{\"connector\": \"X1\", \"cavity\": \"3\"}",
                "$.wires[3] (W4).from.cavity: no cavity of connector X1 '3'; did you mean '1'?");
        refuses(
                "\"zone\": \"ENGINE\"\n",
                "\"zone\": \"ENGIN\"\n",
                "$.components[2] (M1).zone: no zone 'ENGIN'; did you mean 'ENGINE'?");
    }

    @Test
    void aReferenceInAListOrAsAKeyIsPlacedToo() {
        refuses(
                "{\"name\": \"2\", \"terminal\": \"-\", \"contact\": \"T28\"}",
                "{\"name\": \"2\", \"terminal\": \"-\", \"contact\": \"T82\"}",
                "$.connectors[0] (X1).cavities[1] (2).contact: no contact 'T82'; did you mean 'T28'?");
        refuses(
                "{\"from\": \"G1\", \"to\": \"G2\", \"ohms\": 0.0005}",
                "{\"from\": \"G1\", \"to\": \"G2\", \"ohms\": 1}, {\"from\": \"G2\", \"to\": \"G3\", \"ohms\": 1}",
                "$.bodies[0] (FRAME).paths[1].to: no ground point 'G3'; did you mean 'G1'?");
        refuses(
                "\"components\": {\"M1\": true, \"SW1\": true}",
                "\"components\": {\"M1\": true, \"SW2\": true}",
                "$.states[0] (fan-on).components.SW2: no component 'SW2'; did you mean 'SW1'?");
        refuses(
                "\"components\": {\"M1\": true, \"SW1\": true}",
                "\"outputs\": {\"M1.+\": true, \"M1.out\": true}",
                "$.states[0] (fan-on).outputs['M1.out']: no terminal of component M1 'out'; did you mean '+'?");
    }

    @Test
    void aMissingKeyIsNamedAndAKeyLikeItPointedOut() {
        refuses("      \"lengthMetres\": 2.4,\n", "", "$.segments[0] (SEG1): the key 'lengthMetres' is missing");
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lenghtMetres\": 2.4",
                "$.segments[0] (SEG1): the key 'lengthMetres' is missing; did you mean it by 'lenghtMetres'?");
        refuses(
                "\"format\": \"ohmloom-harness\",",
                "",
                "$: the key 'format' is missing; a harness file begins with " + "\"format\": \"ohmloom-harness\"");
        refuses("\"version\": 1,", "", "$: the key 'version' is missing; this program writes version 1 of the format");
    }

    @Test
    void aWrongTypeSaysWhatWasFoundAndWhatIsNeeded() {
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": \"2.4 m\"",
                "$.segments[0] (SEG1).lengthMetres: a number is needed, found the text '2.4 m'");
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": null",
                "$.segments[0] (SEG1).lengthMetres: a number is needed, found null; "
                        + "leave the key out when there is no value");
        refuses(
                "\"title\": \"Fan on the bench\"",
                "\"title\": 7",
                "$.titleBlock.title: a text is needed, found the number 7");
        refuses(
                "\"engineSpace\": true",
                "\"engineSpace\": \"yes\"",
                "$.zones[0] (ENGINE).engineSpace: true or false is " + "needed, found the text 'yes'");
        refuses(
                "\"from\": {\"component\": \"BAT1\", \"terminal\": \"+\"}",
                "\"from\": \"BAT1.+\"",
                "$.wires[0] (W1).from: an " + "object { } is needed, found the text 'BAT1.+'");
        refuses(
                "\"positions\": [\"2\"]",
                "\"positions\": 2",
                "$.components[3] (SW1).device.positions: an array [ ] is needed, " + "found the number 2");
        assertEquals(
                "fan.harness.json: $: an object { } is needed, found an array",
                Refusals.of("[]").getMessage());
    }

    @Test
    void aWrongWordNamesTheNearestAndAllThatAreAllowed() {
        refuses(
                "\"signalClass\": \"switched-output\"",
                "\"signalClass\": \"SWITCHED_OUTPUT\"",
                "$.wires[2] (W3).signalClass: no signal class 'SWITCHED_OUTPUT'; did you mean 'switched-output'?"
                        + " (allowed: feed, switched-output, return, reference-supply, reference-return, analogue-signal,"
                        + " pulse-signal, data-bus, shield)");
        refuses(
                "{\"kind\": \"battery\", ",
                "{\"kind\": \"batery\", ",
                "$.components[0] (BAT1).device.kind: no device 'batery'; did you mean 'battery'? (allowed: battery,"
                        + " alternator, regulated-supply, converter, diode, battery-isolator, fuse, breaker, switch,"
                        + " relay, solid-state-output, load, sensor, control-unit, bus-bar)");
        refuses(
                "\"gaugeSystem\": \"metric\"",
                "\"gaugeSystem\": \"metrics\"",
                "$.rules.gaugeSystem: no gauge system 'metrics'; " + "did you mean 'metric'? (allowed: awg, metric)");
        refuses(
                "\"kind\": \"conduit\"",
                "\"kind\": \"pipe\"",
                "$.segments[0] (SEG1).covering.kind: no kind of covering 'pipe'; "
                        + "did you mean 'tape'? (allowed: tape, braided-sleeve, conduit, heat-shrink, tube)");
        refuses(
                "{\"kind\": \"motor\", ",
                "{",
                "$.components[2] (M1).device.draw: the key 'kind' is missing; a draw is one of: "
                        + "resistive, constant-current, constant-power, motor, lamp, inductive, magnet-motor");
    }

    @Test
    void anImpossibleValueIsPlacedAtItsKey() {
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": -2.4",
                "$.segments[0] (SEG1).lengthMetres: length of segment SEG1 must be greater than 0, was -2.4");
        refuses(
                "\"title\": \"Fan on the bench\"",
                "\"title\": \"\"",
                "$.titleBlock.title: title of the harness must not be " + "blank, was ''");
        refuses(
                "\"gauge\": \"4 mm2\"",
                "\"gauge\": \"4\"",
                "$.wires[0] (W1).gauge: '4' does not say AWG or mm2; a conductor size "
                        + "such as '14 AWG', '2/0 AWG' or '2.5 mm2' is needed");
        refuses(
                "\"colour\": \"BK\"",
                "\"colour\": \"RE\"",
                "$.wires[3] (W4).colour: 'RE' is not a colour of IEC 60757; the codes "
                        + "are BK BN RD OG YE GN BU VT GY WH PK GD TQ SR");
        refuses(
                "{\"id\": \"N1\"",
                "{\"id\": \"N 1\"",
                "$.notes[0] (N 1).id: id 'N 1' must be letters, digits, '-' and '_' and "
                        + "start with a letter or digit");
        refuses(
                "\"ratedAmps\": 12, \"startAmps\": 48",
                "\"ratedAmps\": 12, \"startAmps\": 4",
                "$.components[2] (M1).device.draw: "
                        + "start current 4.0 A must not be below the running current 12.0 A");
    }

    @Test
    void anEndOfAWireIsExactlyOneThing() {
        refuses(
                "{\"ground\": \"G2\"}",
                "{}",
                "$.wires[3] (W4).to: the end of a wire has exactly one of the keys connector, "
                        + "component, splice, ground, loose; none is there");
        refuses(
                "{\"ground\": \"G2\"}",
                "{\"ground\": \"G2\", \"splice\": \"S1\"}",
                "$.wires[3] (W4).to: the end of a wire has exactly one of the keys connector, component, splice,"
                        + " ground, loose; found splice and ground");
        refuses("{\"ground\": \"G2\"}", "{\"loose\": false}", "$.wires[3] (W4).to.loose: true is needed, found false");
    }

    @Test
    void anIdUsedTwiceNamesBothPlaces() {
        refuses(
                "{\"id\": \"N1\"",
                "{\"id\": \"W2\"",
                "$.notes[0] (W2): the id 'W2' is already used at $.wires[1]; ids are unique "
                        + "across all kinds of element");
        refuses(
                "\"id\": \"W4\"",
                "\"id\": \"W1\"",
                "$.wires[3] (W1): the id 'W1' is already used at $.wires[0]; ids are unique "
                        + "across all kinds of element");
    }

    @Test
    void aSettingThatIsNoneIsRefused() {
        String state = "\"components\": {\"M1\": true, \"SW1\": true}";
        refuses(
                state,
                "\"components\": {\"M1\": 1.5}",
                "$.states[0] (fan-on).components.M1: a duty is more than 0 and at most 1, " + "found 1.5");
        refuses(
                state,
                "\"components\": {\"M1\": 0}",
                "$.states[0] (fan-on).components.M1: a duty is more than 0 and at most 1, "
                        + "found 0; write false for off");
        refuses(
                state,
                "\"components\": {\"M1\": \"on\"}",
                "$.states[0] (fan-on).components.M1: true, false, a duty between 0 and "
                        + "1 or an object { } is needed, found the text 'on'");
        refuses(
                state,
                "\"outputs\": {\"ECU1\": true}",
                "$.states[0] (fan-on).outputs.ECU1: 'ECU1' does not name an output; write "
                        + "the unit, a dot and the pin, as in 'ECU1.A3'");
    }

    @Test
    void aNumberTooLargeOrTooSmallToComputeWithIsRefused() {
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": 1e400",
                "$.segments[0] (SEG1).lengthMetres: the number 1E+400 is too " + "large to compute with");
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": 1e61",
                "$.segments[0] (SEG1).lengthMetres: the number 1E+61 is too large to compute with");
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": 1e-61",
                "$.segments[0] (SEG1).lengthMetres: the number 1E-61 is too small to compute with");
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": 1e-400",
                "$.segments[0] (SEG1).lengthMetres: the number 1E-400 is too " + "small to compute with");
        refuses(
                "\"lengthMetres\": 2.4",
                "\"lengthMetres\": 1e999999999",
                "$.segments[0] (SEG1).lengthMetres: the number " + "1E+999999999 is too large to compute with");
    }

    @Test
    void aNewerVersionIsRefusedAndAnOlderThanTheFirstToo() {
        refuses(
                "\"version\": 1,",
                "\"version\": 2,",
                "$.version: version 2 of the format is newer than version 1, the newest this "
                        + "program knows; open the file with a newer program");
        refuses("\"version\": 1,", "\"version\": 0,", "$.version: a whole number from 1 is needed, found the number 0");
        refuses(
                "\"version\": 1,",
                "\"version\": 1e30,",
                "$.version: version 1E+30 of the format is newer than version 1, the newest "
                        + "this program knows; open the file with a newer program");
        refuses(
                "\"format\": \"ohmloom-harness\"",
                "\"format\": \"harness\"",
                "$.format: no format 'harness'; did you mean " + "'ohmloom-harness'? (allowed: ohmloom-harness)");
    }

    @Test
    void thePartsOfARefusalCanBeAskedFor() {
        HarnessFileException refused = Refusals.of(SmallExample.with("\"lengthMetres\": 2.4", "\"lengthMetres\": 0"));
        assertEquals(Refusals.FILE, refused.path());
        assertEquals("$.segments[0].lengthMetres", refused.place());
        assertEquals("length of segment SEG1 must be greater than 0, was 0.0", refused.problem());
    }
}
