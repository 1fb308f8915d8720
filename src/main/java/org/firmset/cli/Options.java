package org.firmset.cli;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.firmset.measure.UnitSystem;

/** Words and options of a command line: options take one value, as '--name value' or '--name=value'. */
final class Options {
    private final List<String> words = new ArrayList<>();
    private final Map<String, String> values = new HashMap<>();

    Options(List<String> arguments, Set<String> known) {
        for (int i = 0; i < arguments.size(); i++) {
            String argument = arguments.get(i);
            if (!argument.startsWith("--")) {
                words.add(argument);
                continue;
            }
            int equals = argument.indexOf('=');
            String name = argument.substring(2, equals < 0 ? argument.length() : equals);
            if (!known.contains(name)) {
                throw new NotUnderstood("'--" + name + "' is no option here; known are --"
                        + String.join(", --", known.stream().sorted().toList()));
            }
            if (equals < 0 && i + 1 == arguments.size()) {
                throw new NotUnderstood("'--" + name + "' needs a value behind it");
            }
            values.put(name, equals < 0 ? arguments.get(++i) : argument.substring(equals + 1));
        }
    }

    String onlyWord(String what) {
        if (words.size() != 1) {
            throw new NotUnderstood("name one " + what + "; there are " + words.size());
        }
        return words.getFirst();
    }

    Optional<String> value(String name) {
        return Optional.ofNullable(values.get(name));
    }

    List<String> words() {
        return List.copyOf(words);
    }

    static UnitSystem units(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "us" -> UnitSystem.US;
            case "metric" -> UnitSystem.METRIC;
            default -> throw new NotUnderstood("'" + text + "' are no units; write us or metric");
        };
    }
}
