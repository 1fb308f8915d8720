package org.firmset.shell;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Makes browsers ask whether our own scripts and style sheets are still the same. Modules import each other, so after an
 * update one from before and one from after must never meet.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
final class FreshAssets extends OncePerRequestFilter {
    private static final String HEADER = "Cache-Control";

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !request.getRequestURI().contains("/assets/");
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        chain.doFilter(request, new HttpServletResponseWrapper(response) {
            @Override
            public void setHeader(String name, String value) {
                super.setHeader(name, HEADER.equalsIgnoreCase(name) ? "no-cache" : value);
            }

            @Override
            public void addHeader(String name, String value) {
                if (HEADER.equalsIgnoreCase(name)) {
                    super.setHeader(name, "no-cache");
                } else {
                    super.addHeader(name, value);
                }
            }
        });
    }
}
