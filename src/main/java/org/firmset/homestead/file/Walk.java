package org.firmset.homestead.file;

import java.util.List;
import org.firmset.homestead.part.Part;
import org.firmset.homestead.part.Scalars;
import org.jspecify.annotations.Nullable;

/** Goes through a homestead and shows every value with its place. */
final class Walk {
    /** Sees one value that is neither a list nor a nested record. */
    interface Visitor {
        void value(Record owner, Part part, Object value, String pointer);
    }

    private Walk() {}

    static void through(Record owner, String pointer, Visitor visitor) {
        for (Part part : Part.of(owner.getClass())) {
            String here = pointer + "/" + part.name();
            @Nullable Object value = part.valueIn(owner);
            if (value instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    visit(owner, part, list.get(i), here + "/" + i, visitor);
                }
            } else if (value != null) {
                visit(owner, part, value, here, visitor);
            }
        }
    }

    private static void visit(Record owner, Part part, Object value, String pointer, Visitor visitor) {
        if (value instanceof Record nested && !Scalars.isScalar(value.getClass())) {
            through(nested, pointer, visitor);
        } else {
            visitor.value(owner, part, value, pointer);
        }
    }
}
