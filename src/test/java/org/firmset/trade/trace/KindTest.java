package org.firmset.trade.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import java.math.BigDecimal;
import org.firmset.measure.Described;
import org.firmset.measure.Length;
import org.firmset.measure.Temperature;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class KindTest {
    @Described("A group.")
    public record Group(
            @Described(value = "A number.", least = "1", most = "3")
            int number) {}

    public record Plain(int number) {}

    public record Post(
            @Described(value = "Height.", least = "0.5 m", most = "12 ft")
            Length height,

            @Described(value = "Least alone.", least = "-10 degC") @Nullable
            Temperature warmth,

            @Described(value = "Most alone.", most = "2.5") BigDecimal factor,
            @Described("Free.") String name,
            @Described("The group.") Group group,
            @Described("A record that is no group.") Plain plain) {}

    public record Undescribed(int number) {}

    private static final Kind<Post> POSTS =
            new Kind<>("posts", "Posts", "Says their height.", Post.class, KindTest::sheet);

    private static Worksheet sheet(Post post) {
        return new Sheet()
                .add(Line.answer("height", "Height", Amount.length(post.height())))
                .done();
    }

    private static Post post(double height, double factor, int number) {
        return new Post(
                Length.ofMetres(height), null, BigDecimal.valueOf(factor), "post", new Group(number), new Plain(1000));
    }

    private static String refused(Post post) {
        return String.valueOf(assertThatExceptionOfType(Refusal.class)
                .isThrownBy(() -> POSTS.work(post))
                .actual()
                .getMessage());
    }

    @Test
    void works_with_inputs_at_their_limits() {
        assertThat(POSTS.work(post(0.5, 2.5, 1)).line("height")).isPresent();
        assertThat(POSTS.work(post(3.6576, -1000, 3)).line("height")).isPresent();
        assertThat(POSTS.work(new Post(
                                Length.ofMetres(1),
                                Temperature.ofCelsius(-10),
                                BigDecimal.ONE,
                                "x",
                                new Group(2),
                                new Plain(0)))
                        .line("height"))
                .isPresent();
    }

    @Test
    void refuses_inputs_of_another_calculator() {
        assertThatExceptionOfType(ClassCastException.class).isThrownBy(() -> POSTS.work(new Group(2)));
    }

    @Nested
    class Refusals {
        @Test
        void too_small_and_too_large() {
            assertThat(refused(post(0.499999999, 1, 2)))
                    .isEqualTo("height [0.499999999 m] is too small. Enter from 0.5 m to 12 ft.");
            assertThat(refused(post(3.657600001, 1, 2)))
                    .isEqualTo("height [3.657600001 m] is too large. Enter from 0.5 m to 12 ft.");
        }

        @Test
        void a_limit_on_one_side() {
            assertThat(refused(post(1, 2.51, 2))).isEqualTo("factor [2.51] is too large. Enter at most 2.5.");
            Post cold = new Post(
                    Length.ofMetres(1), Temperature.ofCelsius(-10.1), BigDecimal.ONE, "x", new Group(2), new Plain(0));
            assertThat(refused(cold)).isEqualTo("warmth [-10.1 degC] is too small. Enter at least -10 degC.");
        }

        @Test
        void inside_a_group() {
            assertThat(refused(post(1, 1, 0))).isEqualTo("number [0] is too small. Enter from 1 to 3.");
            assertThat(refused(post(1, 1, 4))).isEqualTo("number [4] is too large. Enter from 1 to 3.");
        }

        @Test
        void the_first_one_is_told() {
            assertThat(refused(post(0.1, 9, 9))).startsWith("height");
        }

        @Test
        void say_what_is_wrong_and_what_to_do() {
            Refusal refusal = new Refusal("lap", "7 m", "is too long", "Enter at most 2 m");
            assertThat(refusal).hasMessage("lap [7 m] is too long. Enter at most 2 m.");
            assertThat(refusal.input()).isEqualTo("lap");
            assertThat(refusal.problem()).isEqualTo("is too long");
            assertThat(refusal.remedy()).isEqualTo("Enter at most 2 m");
        }
    }

    @Test
    void inputs_that_are_not_described_are_a_mistake_of_the_program() {
        Kind<Undescribed> kind = new Kind<>("x", "X", "X.", Undescribed.class, u -> new Sheet().done());
        assertThatNullPointerException()
                .isThrownBy(() -> kind.work(new Undescribed(1)))
                .withMessageContaining("must be @Described");
    }
}
