package org.firmset.homestead.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class BudgetRulesTest {
    @Test
    void a_tool_that_costs_neither_to_buy_nor_to_hire_is_named() {
        assertThat(Document.sound()
                        .with("/tools/0/cost", "{\"resale\": \"10.00 USD\"}")
                        .faults())
                .extracting(Fault::pointer, Fault::problem)
                .containsExactly(
                        org.assertj.core.api.Assertions.tuple("/tools/0/cost", "names neither a price nor a hire"));
        assertThat(Document.sound()
                        .with("/tools/0/cost", "{\"hireADay\": \"10.00 USD\"}")
                        .faults())
                .isEmpty();
    }
}
