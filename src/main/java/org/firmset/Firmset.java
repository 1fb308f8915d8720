package org.firmset;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the program. */
@SpringBootApplication
public class Firmset {
    public static void main(String[] arguments) {
        SpringApplication.run(Firmset.class, arguments);
    }
}
