package org.firmset.season.money;

import java.time.LocalDate;
import org.javamoney.moneta.Money;

/**
 * Money that is to be there on a day.
 *
 * @param amount negative for what comes back, as when a tool is sold
 */
public record Payment(LocalDate on, Purpose purpose, String what, Money amount) {}
