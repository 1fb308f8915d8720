package org.firmset.homestead;

import org.firmset.measure.Described;

@Described("One input of a takeoff, as it was written.")
public record Given(
        @Described("Name of the input.") String input,
        @Described("Its value, such as 12 ft 6 in.") String value) {}
