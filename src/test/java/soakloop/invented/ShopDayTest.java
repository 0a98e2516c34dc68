package soakloop.invented;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import soakloop.invented.TruthCar.Mesh;

/** Days that a fit is tried on: whether longer steps of the generator still make the same truth. */
@Tag("regression")
class ShopDayTest {
  @ParameterizedTest
  @ValueSource(longs = {1001, 1002})
  void twiceTheStepMovesTheTruthByLessThanTheFitCouldSee(long seed) {
    ShopDay day = ShopDay.draw(seed);
    ShopDay.Answers coarse = day.answers();
    ShopDay.Answers fine = day.answers(day.run(Mesh.SHIPPED, Mesh.SHIPPED.step()));
    assertEquals(fine.peak(), coarse.peak(), 0.05);
    assertEquals(fine.duty(), coarse.duty(), 0.002 * fine.duty());
    assertEquals(fine.flow(), coarse.flow(), 1e-3 * fine.flow());
  }
}
