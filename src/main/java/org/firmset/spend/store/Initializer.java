package org.firmset.spend.store;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Tells the compiler's null check that constructors leave the fields to this method. It knows the name only. */
@Retention(RetentionPolicy.CLASS)
@Target(ElementType.METHOD)
@interface Initializer {}
