package org.staywright.database;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** A test on a real PostgreSQL, whose binaries come with the tests for this platform only. */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@Tag("postgresql")
@EnabledOnOs(value = OS.LINUX, architectures = "amd64")
public @interface OnPostgresql {}
