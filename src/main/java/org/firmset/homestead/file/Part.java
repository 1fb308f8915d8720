package org.firmset.homestead.file;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.firmset.homestead.Described;
import org.jspecify.annotations.Nullable;

/**
 * One component of a homestead record, as far as the file is concerned.
 *
 * @param type the type of the component, or of its elements when it is a list
 */
record Part(
        String name, Class<?> type, boolean list, boolean optional, Described described, RecordComponent component) {

    private static final ClassValue<List<Part>> PARTS = new ClassValue<>() {
        @Override
        protected List<Part> computeValue(Class<?> recordType) {
            return Arrays.stream(recordType.getRecordComponents()).map(Part::of).toList();
        }
    };

    static List<Part> of(Class<?> recordType) {
        return PARTS.get(recordType);
    }

    private static Part of(RecordComponent component) {
        Described described = Objects.requireNonNull(
                component.getAnnotation(Described.class),
                () -> "component [" + component.getName() + "] of [" + component.getDeclaringRecord()
                        + "] must be @Described");
        boolean list = component.getType() == List.class;
        Class<?> type = list
                ? (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                : component.getType();
        boolean optional = component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        return new Part(component.getName(), type, list, optional, described, component);
    }

    @Nullable
    Object valueIn(Record owner) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(
                    "component [" + name + "] of [" + owner.getClass() + "] is not readable", e);
        }
    }
}
