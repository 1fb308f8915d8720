package org.firmset.plan;

import java.time.LocalDate;

/** A material for a test, plain until told otherwise. */
public final class MaterialDraft {
    private final String id;
    private long grams = 25_000;
    private long millilitres = 20_000;
    private long millimetres = 600;
    private boolean dry = false;
    private int shelfLifeDays = Material.NEVER_GOES_OFF;
    private LocalDate availableFrom = LocalDate.parse("2027-01-01");
    private long cents = 500;

    MaterialDraft(String id) {
        this.id = id;
    }

    public MaterialDraft grams(long ofPack) {
        grams = ofPack;
        return this;
    }

    public MaterialDraft millilitres(long ofPack) {
        millilitres = ofPack;
        return this;
    }

    public MaterialDraft millimetres(long longest) {
        millimetres = longest;
        return this;
    }

    public MaterialDraft dry() {
        dry = true;
        return this;
    }

    public MaterialDraft shelfLife(int days) {
        shelfLifeDays = days;
        return this;
    }

    public MaterialDraft availableFrom(String date) {
        availableFrom = LocalDate.parse(date);
        return this;
    }

    public MaterialDraft cents(long ofPack) {
        cents = ofPack;
        return this;
    }

    Material material() {
        return new Material(
                id, Problems.name(id), grams, millilitres, millimetres, dry, shelfLifeDays, availableFrom, cents);
    }
}
