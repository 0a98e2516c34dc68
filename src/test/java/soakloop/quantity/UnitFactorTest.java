package soakloop.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every unit against its conversion factor as printed, not as computed by the program.
 *
 * <p>Source: NIST Special Publication 811 (2008), appendix B.8, factors as printed there, from
 * memory; bold factors are exact, the others hold to seven digits. The litre, bar, millibar, hour
 * and minute are defined in the SI Brochure, 9th edition (2019), tables 8 and following. Where SP
 * 811 prints no such factor the row says what it is composed of.
 */
@Tag("published")
class UnitFactorTest {
  private static final double SEVEN_DIGITS = 5e-7;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        // dimension | unit | SI units per unit
        "TEMPERATURE_DIFFERENCE | K | 1",
        "TEMPERATURE_DIFFERENCE | degC | 1",
        "TEMPERATURE_DIFFERENCE | degF | 0.5555556",
        "GAUGE_PRESSURE | Pa | 1",
        "GAUGE_PRESSURE | kPa | 1.0E+03",
        "GAUGE_PRESSURE | bar | 1.0E+05",
        "GAUGE_PRESSURE | psi | 6.894757E+03",
        "GAUGE_PRESSURE | psig | 6.894757E+03",
        "GAUGE_PRESSURE | inHg | 3.386389E+03",
        "ABSOLUTE_PRESSURE | Pa | 1",
        "ABSOLUTE_PRESSURE | kPa | 1.0E+03",
        "ABSOLUTE_PRESSURE | hPa | 1.0E+02",
        "ABSOLUTE_PRESSURE | mbar | 1.0E+02",
        "ABSOLUTE_PRESSURE | bar | 1.0E+05",
        "ABSOLUTE_PRESSURE | psi | 6.894757E+03",
        "ABSOLUTE_PRESSURE | psia | 6.894757E+03",
        "ABSOLUTE_PRESSURE | inHg | 3.386389E+03",
        "PRESSURE_DIFFERENCE | Pa | 1",
        "PRESSURE_DIFFERENCE | kPa | 1.0E+03",
        "PRESSURE_DIFFERENCE | bar | 1.0E+05",
        "PRESSURE_DIFFERENCE | psi | 6.894757E+03",
        "PRESSURE_DIFFERENCE | inHg | 3.386389E+03",
        "VOLUME_FLOW | m3/s | 1",
        "VOLUME_FLOW | L/min | 1.666667E-05",
        "VOLUME_FLOW | gpm | 6.309020E-05",
        "VOLUME_FLOW | L/s | 1.0E-03",
        "VOLUME_FLOW | L/h | 2.777778E-07",
        "VOLUME_FLOW | m3/h | 2.777778E-04",
        "VOLUME_FLOW | cfm | 4.719474E-04",
        "MASS_FLOW | kg/s | 1",
        "MASS_FLOW | g/s | 1.0E-03",
        "MASS_FLOW | kg/h | 2.777778E-04",
        "MASS_FLOW | lb/min | 7.559873E-03",
        "VOLUME | m3 | 1",
        "VOLUME | L | 1.0E-03",
        "VOLUME | mL | 1.0E-06",
        "VOLUME | gal | 3.785412E-03",
        "VOLUME | qt | 9.463529E-04",
        "VOLUME | in3 | 1.638706E-05",
        // per turn: the volume's factor
        "VOLUME_PER_REVOLUTION | m3/rev | 1",
        "VOLUME_PER_REVOLUTION | L/rev | 1.0E-03",
        "VOLUME_PER_REVOLUTION | cc/rev | 1.0E-06",
        "VOLUME_PER_REVOLUTION | in3/rev | 1.638706E-05",
        "FUEL_PER_ENERGY | kg/J | 1",
        // 1 g over 3.6 MJ; 1 lb over 1 hp of 550 ft lbf/s for an hour
        "FUEL_PER_ENERGY | g/kWh | 2.777778E-10",
        "FUEL_PER_ENERGY | lb/(hp h) | 1.689659E-07",
        "MASS | kg | 1",
        "MASS | g | 1.0E-03",
        "MASS | lb | 4.535924E-01",
        "LENGTH | m | 1",
        "LENGTH | mm | 1.0E-03",
        "LENGTH | cm | 1.0E-02",
        "LENGTH | in | 2.54E-02",
        "LENGTH | ft | 3.048E-01",
        // from the length: 1/0.0254
        "FIN_DENSITY | fins/m | 1",
        "FIN_DENSITY | fpi | 39.37008",
        "FIN_DENSITY | fins/in | 39.37008",
        "FIN_DENSITY | fins/cm | 1.0E+02",
        "FIN_DENSITY | fins/dm | 1.0E+01",
        "AREA | m2 | 1",
        "AREA | cm2 | 1.0E-04",
        "AREA | in2 | 6.4516E-04",
        "AREA | ft2 | 9.290304E-02",
        "TIME | s | 1",
        "TIME | ms | 1.0E-03",
        "TIME | min | 6.0E+01",
        "TIME | h | 3.6E+03",
        "FREQUENCY | Hz | 1",
        "SPEED | m/s | 1",
        "SPEED | km/h | 2.777778E-01",
        "SPEED | mph | 4.4704E-01",
        "SPEED | ft/min | 5.08E-03",
        // SP 811 counts radians; a revolution is the unit here
        "ROTATION | rev/s | 1",
        "ROTATION | rpm | 1.666667E-02",
        "CONDUCTANCE | W/K | 1",
        "CONDUCTANCE | kW/K | 1.0E+03",
        // Btu/h is 2.930711E-01 W; over 5/9 K
        "CONDUCTANCE | Btu/(h degF) | 5.275279E-01",
        "HEAT_TRANSFER | W/(m2 K) | 1",
        "VOLTAGE | V | 1",
        "CONDUCTIVITY | W/(m K) | 1",
        "CONDUCTANCE_PER_VOLUME | W/(K m3) | 1",
        "CONDUCTANCE_PER_VOLUME | W/(K L) | 1.0E+03",
        "CONDUCTANCE_PER_VOLUME | kW/(K L) | 1.0E+06",
        "MASS_FLUX | kg/(s m2) | 1",
        "DENSITY | kg/m3 | 1",
        "DENSITY | kg/L | 1.0E+03",
        "DENSITY | lb/gal | 1.198264E+02",
        "POWER | W | 1",
        "POWER | kW | 1.0E+03",
        "POWER | hp | 7.456999E+02",
        "ENERGY | J | 1",
        "ENERGY | kJ | 1.0E+03",
        "ENERGY | MJ | 1.0E+06",
        "ENERGY | Wh | 3.6E+03",
        "ENERGY | kWh | 3.6E+06",
        "ENERGY | Btu | 1.055056E+03",
        "TORQUE | N m | 1",
        "TORQUE | lb-ft | 1.355818",
        "ANGLE | rad | 1",
        "ANGLE | deg | 1.7453293E-02",
        "FRACTION | % | 1.0E-02",
      })
  void factor(Dimension dimension, String symbol, double factor) throws QuantityException {
    assertEquals(1, QuantityParser.parse("1 " + symbol, dimension).value() / factor, SEVEN_DIGITS);
    assertEquals(1, dimension.require(symbol).fromSi(factor), SEVEN_DIGITS);
  }

  /** SP 811, appendix B.8: degree Celsius and degree Fahrenheit to kelvin, exact. */
  @ParameterizedTest
  @CsvSource({
    "0 degC, 273.15",
    "100 degC, 373.15",
    "-40 degC, 233.15",
    "-40 degF, 233.15",
    "32 degF, 273.15",
    "212 degF, 373.15",
    "98.6 degF, 310.15",
    "0 K, 0",
    "300 K, 300",
  })
  void temperature(String text, double kelvin) throws QuantityException {
    assertEquals(kelvin, QuantityParser.parse(text, Dimension.TEMPERATURE).value(), 1e-9);
  }

  static Stream<Dimension> dimensions() {
    return Stream.of(Dimension.values());
  }

  @ParameterizedTest
  @MethodSource("dimensions")
  void thereAndBackAgain(Dimension dimension) {
    for (Unit unit : dimension.units()) {
      assertEquals(12.5, unit.fromSi(unit.toSi(12.5)), 1e-9, unit.symbol());
    }
    assertEquals(1, dimension.si().scale());
    assertEquals(0, dimension.si().offset());
  }

  /** A unit that is added needs its row above. */
  @Test
  void everyUnitHasItsRow() throws ReflectiveOperationException {
    CsvSource rows =
        UnitFactorTest.class
            .getDeclaredMethod("factor", Dimension.class, String.class, double.class)
            .getAnnotation(CsvSource.class);
    Set<String> listed = new TreeSet<>();
    for (String row : rows.value()) {
      String[] cells = row.split("\\|");
      assertTrue(listed.add(cells[0].strip() + " " + cells[1].strip()), row);
    }
    Set<String> known = new TreeSet<>();
    for (Dimension dimension : Dimension.values()) {
      if (dimension != Dimension.TEMPERATURE) {
        for (Unit unit : dimension.units()) {
          if (!unit.symbol().isEmpty()) {
            known.add(dimension + " " + unit.symbol());
          }
        }
      }
    }
    assertEquals(known, listed);
  }
}
