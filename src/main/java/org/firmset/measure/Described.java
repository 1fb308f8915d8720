package org.firmset.measure;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a part of a record that people write means and which values it takes. The readers, the forms and the published
 * schemas are all made from these, so they cannot disagree.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.TYPE})
public @interface Described {
    /** One sentence for the person who writes the file. */
    String value();

    /** The least value: a number, or a quantity with its unit. Empty for no limit. */
    String least() default "";

    /** The greatest value: a number, or a quantity with its unit. Empty for no limit. */
    String most() default "";

    /** The value that is meant when nothing is written. Empty when there is no such value. */
    String usual() default "";

    /** True for a key: lower-case letters, digits and hyphens, unique among its kind, kept for good. */
    boolean key() default false;

    /** The kind of thing whose key this is: "stage". Empty when it names none. */
    String names() default "";
}
