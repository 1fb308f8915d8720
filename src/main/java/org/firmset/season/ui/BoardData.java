package org.firmset.season.ui;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the season board draws. Dates are ISO texts, times are hours, everything called text is ready to be shown.
 *
 * @see BoardWriter
 */
record BoardData(
        String statusDate,
        String statusText,
        List<BoardTrip> trips,
        List<Lane> lanes,
        List<BoardWait> waits,
        String summaryText) {

    record BoardTrip(
            String id,
            @Nullable Integer number,
            boolean made,
            String title,
            String datesText,
            String firstDate,
            String lastDate,
            List<Day> days,
            @Nullable Use mass,
            @Nullable Battery battery,
            @Nullable Use hours,
            @Nullable Share money) {}

    record Day(String date, String label, double hoursUsed, double hoursUsable) {}

    record Use(double used, double limit, String text) {}

    record Battery(double lowShare, String text) {}

    record Share(double share, String text) {}

    record Lane(String id, String name, String finishText, List<LaneStage> stages) {}

    record LaneStage(
            String id,
            String name,
            List<Block> blocks,
            boolean critical,
            String state,
            String slackText,
            String label) {}

    record Block(String date, double hours) {}

    record BoardWait(
            String id,
            String kind,
            String name,
            String from,
            String to,
            String fromDate,
            String readyDate,
            String readyText,
            boolean critical) {}
}
