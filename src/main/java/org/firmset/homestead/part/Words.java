package org.firmset.homestead.part;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How names of the program are written in the file. */
public final class Words {
    private Words() {}

    /** IN_ONE_GO becomes in-one-go. */
    public static String ofEnum(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Stream<String> allOf(Class<?> enumType) {
        return Arrays.stream(enumType.getEnumConstants()).map(c -> ofEnum((Enum<?>) c));
    }

    static Optional<Object> constant(Class<?> enumType, String word) {
        return Arrays.<Object>stream(enumType.getEnumConstants())
                .filter(c -> ofEnum((Enum<?>) c).equals(word))
                .findFirst();
    }

    /** OpenRule becomes "open rule": what a record's key belongs to. */
    public static String kindOf(Class<?> recordType) {
        return recordType.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
