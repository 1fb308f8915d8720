package org.firmset.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.NoSuchElementException;
import java.util.Scanner;
import java.util.stream.Stream;
import org.firmset.trade.haul.splitting.Cargo;

/**
 * An open instance of packing items into the fewest bins.
 *
 * @param known the fewest bins known
 */
record OpenBins(String name, long capacity, int known, List<Long> items) {
    OpenBins {
        items = List.copyOf(items);
    }

    /** @param path a file, or a folder of .txt files */
    static List<OpenBins> read(Path path) {
        try (Stream<Path> files = Files.isDirectory(path) ? Files.list(path) : Stream.of(path)) {
            List<OpenBins> all = files.filter(
                            f -> f.equals(path) || f.toString().endsWith(".txt"))
                    .sorted()
                    .flatMap(file -> ofFile(file).stream())
                    .toList();
            if (all.isEmpty()) {
                throw new NotUnderstood("'" + path + "' holds no instance; name a .txt file or a folder of such files");
            }
            return all;
        } catch (IOException e) {
            throw unreadable(path);
        }
    }

    /** The number of instances, then for each its name, 'capacity items best-known' and the items. */
    private static List<OpenBins> ofFile(Path file) {
        try (Scanner text = new Scanner(Files.readString(file)).useLocale(Locale.ROOT)) {
            List<OpenBins> result = new ArrayList<>();
            for (int n = text.nextInt(); n > 0; n--) {
                String name = text.next();
                long capacity = Math.round(text.nextDouble());
                int count = text.nextInt();
                int known = text.nextInt();
                List<Long> items = new ArrayList<>();
                for (int i = 0; i < count; i++) {
                    items.add(size(text.nextLong(), file));
                }
                result.add(new OpenBins(name, capacity, known, items));
            }
            return result;
        } catch (IOException e) {
            throw unreadable(file);
        } catch (NoSuchElementException e) {
            throw new NotUnderstood(
                    "'" + file
                            + "' is not understood; write the number of instances, then for each a name, 'capacity items known' and the items");
        }
    }

    private static NotUnderstood unreadable(Path path) {
        return new NotUnderstood("'" + path + "' cannot be read; name a .txt file or a folder of such files");
    }

    private static long size(long size, Path file) {
        if (size < 0 || size > Cargo.MOST) {
            throw new NotUnderstood("'" + file + "' has an item of " + size + "; write 0 to " + Cargo.MOST);
        }
        return size;
    }
}
