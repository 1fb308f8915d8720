package org.firmset.homestead.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import org.firmset.homestead.Given;

@Embeddable
record GivenColumns(String input, @Column(name = "written") String value) {

    Given toRecord() {
        return new Given(input, value);
    }
}
