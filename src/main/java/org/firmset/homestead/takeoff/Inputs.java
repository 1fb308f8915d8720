package org.firmset.homestead.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.firmset.homestead.Given;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.ScalarFault;
import org.firmset.trade.trace.Kind;
import org.firmset.trade.trace.Refusal;
import org.firmset.trade.trace.Worksheet;
import org.jspecify.annotations.Nullable;

/** Reads the inputs of a calculator from texts as people write them, and works it out. Thread-safe. */
public final class Inputs {
    /** Work that was done before is not done again: pages, rules and plans all ask for the same. */
    private static final int MOST_REMEMBERED = 400;

    private static final Map<Object, Worksheet> REMEMBERED = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Worksheet> eldest) {
            return size() > MOST_REMEMBERED;
        }
    };

    private final Map<String, String> texts;
    private final List<InputFault> faults = new ArrayList<>();

    private Inputs(Map<String, String> texts) {
        this.texts = texts;
    }

    /** An input with the group it stands in. @param group its label; empty for none */
    public record Input(String group, Part part) {}

    /** The inputs of a calculator one after the other, groups opened. */
    public static List<Input> of(Kind<?> kind) {
        List<Input> inputs = new ArrayList<>();
        gather(kind.inputs(), "", inputs);
        return inputs;
    }

    private static void gather(Class<?> type, String group, List<Input> inputs) {
        for (Part part : Part.of(type)) {
            if (part.isGroup()) {
                gather(part.type(), part.label(), inputs);
            } else {
                inputs.add(new Input(group, part));
            }
        }
    }

    /** What was entered as names and texts. */
    public static Map<String, String> texts(List<Given> given) {
        Map<String, String> texts = new LinkedHashMap<>();
        given.forEach(g -> texts.put(g.input(), g.value()));
        return texts;
    }

    /**
     * Reads the texts and works it out.
     *
     * @param texts by the names of inputs; what is left out or blank is as usual
     */
    public static Worked work(Kind<?> kind, Map<String, String> texts) {
        Inputs inputs = new Inputs(texts);
        inputs.refuseUnknown(kind);
        Record given = inputs.read(kind.inputs());
        if (given == null || !inputs.faults.isEmpty()) {
            return new Worked.Refused(inputs.faults);
        }
        try {
            return new Worked.Done(worked(kind, given));
        } catch (Refusal e) {
            return new Worked.Refused(
                    List.of(new InputFault(e.input(), texts.getOrDefault(e.input(), ""), e.problem(), e.remedy())));
        }
    }

    /** The inputs alone, not worked out; empty when something in the texts is refused. */
    public static Optional<Record> read(Kind<?> kind, Map<String, String> texts) {
        Inputs inputs = new Inputs(texts);
        inputs.refuseUnknown(kind);
        Record given = inputs.read(kind.inputs());
        return inputs.faults.isEmpty() ? Optional.ofNullable(given) : Optional.empty();
    }

    private static Worksheet worked(Kind<?> kind, Record given) {
        synchronized (REMEMBERED) {
            Worksheet before = REMEMBERED.get(given);
            if (before != null) {
                return before;
            }
        }
        Worksheet worksheet = kind.work(given);
        synchronized (REMEMBERED) {
            REMEMBERED.put(given, worksheet);
        }
        return worksheet;
    }

    private void refuseUnknown(Kind<?> kind) {
        Set<String> known = of(kind).stream().map(i -> i.part().name()).collect(Collectors.toSet());
        for (Map.Entry<String, String> text : texts.entrySet()) {
            if (!known.contains(text.getKey())) {
                faults.add(new InputFault(
                        text.getKey(),
                        text.getValue(),
                        "is no input of " + kind.name(),
                        "Known are "
                                + of(kind).stream().map(i -> i.part().name()).collect(Collectors.joining(", "))));
            }
        }
    }

    /** Null when something in it was refused. */
    private @Nullable Record read(Class<?> type) {
        List<@Nullable Object> values = new ArrayList<>();
        int before = faults.size();
        for (Part part : Part.of(type)) {
            values.add(part.isGroup() ? read(part.type()) : value(part));
        }
        return faults.size() == before ? (Record) Part.record(type, values) : null;
    }

    private @Nullable Object value(Part part) {
        String text = texts.getOrDefault(part.name(), "");
        if (text.isBlank()) {
            if (part.usual() == null && !part.optional()) {
                faults.add(new InputFault(
                        part.name(), "", "is missing", trimmed(part.described().value())));
            }
            return part.usual();
        }
        try {
            return part.entered(text);
        } catch (ScalarFault e) {
            faults.add(new InputFault(part.name(), text, e.problem(), e.remedy() + range(part)));
            return null;
        }
    }

    private static String trimmed(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    /** The whole allowed range, where a message names only the end that was passed. */
    private static String range(Part part) {
        String least = part.described().least();
        String most = part.described().most();
        return least.isEmpty() || most.isEmpty() ? "" : "; allowed is " + least + " to " + most;
    }
}
