package org.firmset.season.day;

import java.time.LocalDate;
import java.util.List;
import org.firmset.homestead.Person;
import org.firmset.measure.Hours;

/** A date that is free for a trip. */
public record OpenDay(LocalDate date, Hours siteHours, List<Person> people) {}
