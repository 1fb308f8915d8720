package org.firmset.spend;

import java.math.BigDecimal;
import java.util.List;
import org.firmset.homestead.file.Fault;
import org.firmset.measure.Cash;

/** What must hold for one line of a receipt. */
record LineRules(Keys keys, ReceiptState state, String place, List<Fault> faults) {
    /** Little enough that packs of all receipts can be added up. */
    private static final BigDecimal MOST_PACKS = BigDecimal.valueOf(1_000_000);

    private static final String OTHER_RECEIPT = "Turn its sign, or write what went back as a return of its own";

    void check(ReceiptLine line) {
        ReceiptRules.checkText(line.text(), place + "/text", faults);
        if (line.text().isEmpty()) {
            refuse("/text", "", "says nothing", "Write what was bought");
        }
        checkSigns(line);
        if (line.unitPrice() != null && !ReceiptRules.agree(line.quantity(), line.unitPrice(), line.amount())) {
            refuse(
                    "/amount",
                    Cash.text(line.amount()),
                    "is not " + line.quantity() + " x " + Cash.text(line.unitPrice()) + " = "
                            + Cash.text(ReceiptRules.product(line.quantity(), line.unitPrice())),
                    "Correct quantity, price or amount; leave the price out when a rebate is in the amount");
        }
        String material = line.material();
        if (material != null && !keys.materials().contains(material)) {
            refuse("/material", material, "is no material of the homestead", Keys.oneOf(keys.materials()));
        }
        for (int i = 0; i < line.shares().size(); i++) {
            check(line.shares().get(i), "/shares/" + i);
        }
    }

    private void checkSigns(ReceiptLine line) {
        boolean back = state == ReceiptState.RETURNED;
        int quantity = line.quantity().signum();
        if (quantity == 0) {
            refuse("/quantity", line.quantity().toPlainString(), "is no quantity", "Write 1 when there is none");
        } else if (quantity < 0 != back) {
            refuse("/quantity", line.quantity().toPlainString(), sign(back), OTHER_RECEIPT);
        }
        if (line.quantity().abs().compareTo(MOST_PACKS) > 0) {
            refuse(
                    "/quantity",
                    line.quantity().toPlainString(),
                    "is more than " + MOST_PACKS,
                    "Look for a number that was run together");
        }
        if (back ? line.amount().isPositive() : line.amount().isNegative()) {
            refuse("/amount", Cash.text(line.amount()), sign(back), OTHER_RECEIPT);
        }
        if (line.unitPrice() != null && line.unitPrice().isNegative()) {
            refuse("/unitPrice", Cash.text(line.unitPrice()), "is negative", "Write the price as it was asked");
        }
    }

    private static String sign(boolean back) {
        return back ? "is not negative in a return" : "is negative though nothing is returned";
    }

    private void check(Share share, String at) {
        if (share.weight().signum() <= 0) {
            refuse(
                    at + "/weight",
                    share.weight().toPlainString(),
                    "is no share above zero",
                    "Write a number such as 1, or leave the share out");
        }
        if (!keys.subprojects().contains(share.subproject())) {
            refuse(
                    at + "/subproject",
                    share.subproject(),
                    "is no subproject of the homestead",
                    Keys.oneOf(keys.subprojects()));
            return;
        }
        String stage = share.stage();
        if (stage != null && !share.subproject().equals(keys.stages().get(stage))) {
            String home = keys.stages().get(stage);
            refuse(
                    at + "/stage",
                    stage,
                    home == null
                            ? "is no stage of the homestead"
                            : "is a stage of '" + home + "', not of '" + share.subproject() + "'",
                    home == null ? Keys.oneOf(keys.stagesOf(share.subproject())) : "Write '" + home + "' before it");
        }
    }

    private void refuse(String at, String value, String problem, String remedy) {
        if (faults.size() < Fault.MOST) {
            faults.add(new Fault(place + at, value, problem, remedy));
        }
    }
}
