package org.firmset.spend.table;

import java.util.Locale;
import java.util.Set;

/** What a column of a table of receipts holds, and by which headings it is known. */
public enum Role {
    RECEIPT(
            Holds.TEXT,
            "receipt",
            "receipt no",
            "receipt number",
            "invoice",
            "invoice no",
            "invoice number",
            "belegnr"),
    DATE(Holds.DATE, "date", "day", "purchase date", "transaction date", "posting date", "datum", "fecha", "data"),
    SUPPLIER(
            Holds.TEXT, "supplier", "seller", "shop", "store", "vendor", "payee", "merchant", "lieferant", "proveedor"),
    STATE(Holds.TEXT, "state", "status"),
    DEPOSIT(Holds.NUMBER, "paid down", "down payment", "deposit paid"),
    REST_ON(
            Holds.DATE,
            "rest on",
            "rest paid on",
            "rest due on",
            "rest date",
            "balance paid on",
            "balance due on",
            "balance date"),
    KIND(Holds.TEXT, "kind", "type", "category"),
    TEXT(Holds.TEXT, "text", "description", "item", "what", "details", "memo", "beschreibung", "artikel", "libelle"),
    MATERIAL(Holds.TEXT, "material", "material key"),
    QUANTITY(Holds.NUMBER, "quantity", "qty", "count", "number", "packs", "menge", "anzahl", "cantidad"),
    UNIT_PRICE(Holds.NUMBER, "unit price", "price", "price each", "each", "einzelpreis", "preis", "precio"),
    AMOUNT(Holds.NUMBER, "amount", "sum", "cost", "net", "debit", "line total", "betrag", "importe", "montant"),
    REFUND(Holds.NUMBER, "refund", "credit", "money back", "returned", "gutschrift"),
    TAX(Holds.NUMBER, "tax", "sales tax", "vat", "mwst", "ust", "iva", "tva"),
    DISCOUNT(Holds.NUMBER, "discount", "rebate", "rabatt", "descuento", "remise"),
    TOTAL(Holds.NUMBER, "total", "receipt total", "grand total", "gesamt"),
    SHARES(Holds.TEXT, "shares", "for", "subproject", "project"),
    DOCUMENT(Holds.TEXT, "document", "document hash");

    /** What the cells of a column are read as. */
    enum Holds {
        TEXT,
        DATE,
        NUMBER
    }

    private final Holds holds;
    private final Set<String> headings;

    Role(Holds holds, String... headings) {
        this.holds = holds;
        this.headings = Set.of(headings);
    }

    Holds holds() {
        return holds;
    }

    /** Whether its cells are numbers. */
    public boolean isNumber() {
        return holds == Holds.NUMBER;
    }

    boolean isMeantBy(String heading) {
        return headings.contains(plain(heading));
    }

    /** "Amount (USD)" and "amount" are the same heading. */
    static String plain(String heading) {
        return heading.toLowerCase(Locale.ROOT)
                .replaceAll("\\(.*?\\)|[.:*#$]", " ")
                .replaceAll("[\\s_-]+", " ")
                .strip();
    }

    /** What the column holds, as people say it: "price of one". */
    public String words() {
        return switch (this) {
            case RECEIPT -> "number of the receipt";
            case STATE -> "paid, paid ahead, ordered or returned";
            case DEPOSIT -> "paid down on an order";
            case REST_ON -> "when the rest was paid or is due";
            case KIND -> "material, tool, fee or fuel";
            case TEXT -> "what was bought";
            case MATERIAL -> "material, by its short name";
            case QUANTITY -> "how many";
            case UNIT_PRICE -> "price of one";
            case AMOUNT -> "amount that was paid";
            case REFUND -> "money that came back";
            case TOTAL -> "total of the receipt";
            case SHARES -> "subproject or stage it is for";
            case DOCUMENT -> "name of its photo or paper, as exported";
            default -> name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    /** The word in a serialised {@link ColumnMatch}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
