package soakloop.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How quantities may be written, and what is said of those that may not. */
class QuantityParserTest {
  private static Estimate parse(String text, Dimension dimension) throws QuantityException {
    return QuantityParser.parse(text, dimension);
  }

  /** The value does not depend on how the number and its unit are spelt. */
  @ParameterizedTest
  @Tag("analytic")
  @CsvSource(
      delimiter = '|',
      value = {
        "VOLUME | 5 L | 0.005",
        "VOLUME | 5L | 0.005",
        "VOLUME | 5 l | 0.005",
        "VOLUME | +5.0 L | 0.005",
        "VOLUME | 5e0 L | 0.005",
        "VOLUME | .5 L | 0.0005",
        "VOLUME | 5. L | 0.005",
        "VOLUME | 5\u00a0L | 0.005",
        "VOLUME | 2 m\u00b3 | 2",
        "VOLUME | 2 ML | 2e-6",
        "TEMPERATURE | 20 \u00b0C | 293.15",
        "TEMPERATURE | 20\u00b0C | 293.15",
        "TEMPERATURE | 20 deg C | 293.15",
        "TEMPERATURE | 20 DEGC | 293.15",
        "TEMPERATURE | \u221210 degC | 263.15",
        "GAUGE_PRESSURE | 100 KPA | 100000",
        "GAUGE_PRESSURE | -20 kPa | -20000",
        "CONDUCTANCE | 3600 Btu/(h\u00b0F) | 1899.100534716",
        "CONDUCTANCE | 3600 btu / (h degF) | 1899.100534716",
        "HEAT_TRANSFER | 12 W/(m\u00b2K) | 12",
        "TORQUE | 5 Nm | 5",
        "FRACTION | 62% | 0.62",
        "NUMBER | 2.35 | 2.35",
        "ROTATION | 6000 RPM | 100",
      })
  void spellings(Dimension dimension, String text, double si) throws QuantityException {
    assertEquals(si, parse(text, dimension).value(), 1e-12 * Math.max(1, Math.abs(si)));
    assertEquals(0, parse(text, dimension).spread());
  }

  /** A spread is of the value in per cent, in points of a share, or in the value's own unit. */
  @ParameterizedTest
  @Tag("analytic")
  @CsvSource(
      delimiter = '|',
      value = {
        "VOLUME_FLOW | 60 L/min +/- 30 % | 1e-3 | 3e-4",
        "VOLUME_FLOW | 60 L/min\u00b130% | 1e-3 | 3e-4",
        "VOLUME_FLOW | 60 L/min +/- 6 L/min | 1e-3 | 1e-4",
        "VOLUME_FLOW | 60 L/min +/- 0.1 L/s | 1e-3 | 1e-4",
        "FRACTION | 62 % +/- 4 points | 0.62 | 0.04",
        "FRACTION | 1 % +/- 1 point | 0.01 | 0.01",
        "FRACTION | 50 % +/- 10 % | 0.5 | 0.05",
        "TEMPERATURE | 20 degC +/- 2 K | 293.15 | 2",
        "TEMPERATURE | 68 degF +/- 9 degF | 293.15 | 5",
        "TEMPERATURE_DIFFERENCE | -5 K +/- 40 % | -5 | 2",
        "TEMPERATURE_DIFFERENCE | 9 degF +/- 1 K | 5 | 1",
        "GAUGE_PRESSURE | 100 kPa +/- 0.05 bar | 100000 | 5000",
        "NUMBER | 0.55 +/- 0.1 | 0.55 | 0.1",
        "NUMBER | 2 +/- 5 % | 2 | 0.1",
        "MASS | 5 kg +/- 0 kg | 5 | 0",
      })
  void spreads(Dimension dimension, String text, double value, double spread)
      throws QuantityException {
    Estimate estimate = parse(text, dimension);
    assertEquals(value, estimate.value(), 1e-9 * Math.abs(value));
    assertEquals(spread, estimate.spread(), 1e-9 * Math.max(1e-6, spread));
  }

  @ParameterizedTest
  @Tag("regression")
  @CsvSource(
      delimiter = '|',
      value = {
        "VOLUME | 5 | needs a unit: m3, L, mL, gal, qt or in3",
        "VOLUME | five litres | is not a number with a unit; write one like 12 L",
        "VOLUME | L 5 | is not a number with a unit; write one like 12 L",
        "VOLUME | 5 kg | has the unit `kg`, but a volume takes m3, L, mL, gal, qt or in3",
        "AREA | 5 m | has the unit `m`, but an area takes m2, cm2, in2 or ft2",
        "VOLUME | 5,5 L | has a comma in the number; write a point, and no comma between thousands",
        "ROTATION | 6,500 rpm | has a comma in the number; write a point, and no comma between"
            + " thousands",
        "NUMBER | 2,35 | has a comma in the number; write a point, and no comma between thousands",
        "VOLUME | NaN | is not a number with a unit; write one like 12 L",
        "VOLUME | Infinity L | is not a number with a unit; write one like 12 L",
        "NUMBER | NaN | is not a number; write one like 2.35",
        "NUMBER | 2.35 turns | must be a plain number; take the unit `turns` away",
        "VOLUME | 1e400 L | is too large a number",
        "VOLUME | 1 L +/- 1e400 L | is too large a number",
        "GAUGE_PRESSURE | 1e308 kPa | is too large a number",
        "GAUGE_PRESSURE | 1e300 Pa +/- 1e20 % | is too large a number",
        "VOLUME | 5 L +/- | has no number after the +/-",
        "VOLUME | 5 L +/- some | has no number after the +/-",
        "VOLUME | 5 L +/- 1 L +/- 1 L | has more than one +/-",
        "VOLUME | 5 L +/- -1 L | has a negative spread",
        "VOLUME | 5 L +/- 1 | has a spread without a unit; allowed: % (of the value), m3, L, mL,"
            + " gal, qt or in3",
        "VOLUME | 5 L +/- 4 points | has a spread in `points`; allowed: % (of the value), m3, L,"
            + " mL, gal, qt or in3",
        "FRACTION | 60 % +/- 0.1 | has a spread without a unit; allowed: points or % (of the"
            + " value)",
        "NUMBER | 2 +/- 1 mm | has a spread in `mm`; allowed: % (of the value)",
        "TEMPERATURE | 20 degC +/- 10 % | has a spread in per cent of a temperature; write +/- 2 K",
        "TEMPERATURE | 20 degC +/- 10 kPa | has a spread in `kPa`; allowed: K, degC or degF",
        "TEMPERATURE | 20 | needs a unit: K, degC or degF",
        "TEMPERATURE_DIFFERENCE | 20 psi | has the unit `psi`, but a temperature difference takes"
            + " K, degC or degF",
        "GAUGE_PRESSURE | 27 psia | has the unit `psia`, which counts from vacuum; this is gauge"
            + " pressure: take the barometer (about 14.7 psi) away and write psi or psig",
        "ABSOLUTE_PRESSURE | 14 psig | has the unit `psig`, which counts from the barometer; this"
            + " is absolute pressure: add the barometer (about 14.7 psi) and write psi or psia",
        "PRESSURE_DIFFERENCE | 1 psig | has the unit `psig`, but a pressure difference takes Pa,"
            + " kPa, bar, psi or inHg",
        "FRACTION | 0.6 | needs a unit: %",
      })
  void refusals(Dimension dimension, String text, String message) {
    assertEquals(
        message,
        assertThrows(QuantityException.class, () -> parse(text, dimension), text).getMessage());
  }

  @Test
  @Tag("regression")
  void emptyIsNoQuantity() {
    assertThrows(QuantityException.class, () -> parse("", Dimension.MASS));
    assertThrows(QuantityException.class, () -> parse("  ", Dimension.NUMBER));
    assertThrows(QuantityException.class, () -> parse("+/- 5 %", Dimension.MASS));
  }

  @Test
  @Tag("regression")
  void longTextsAreRefusedAtOnce() {
    String spaces = "1" + " a".repeat(200_000) + " ".repeat(200_000);
    assertThrows(QuantityException.class, () -> parse(spaces, Dimension.MASS));
  }
}
