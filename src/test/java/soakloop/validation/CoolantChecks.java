package soakloop.validation;

import static soakloop.fluid.Glycol.ETHYLENE;
import static soakloop.fluid.Glycol.PROPYLENE;

import java.util.List;
import soakloop.fluid.Coolant;
import soakloop.fluid.Glycol;
import soakloop.fluid.GlycolMix;

/** Glycol mixes: the polynomials, a second implementation of them, and handbook tables. */
final class CoolantChecks implements CheckSuite {
  private static final String ASHRAE =
      "ASHRAE Handbook, Fundamentals, secondary coolants, by volume (as stored in CoolProp ea27c63;"
          + " edition not stated)";
  private static final double ZERO_CELSIUS = 273.15;

  private final CheckList list = new CheckList("Coolant mixes");

  @Override
  public List<Check> checks() {
    polynomials();
    secondTranscription();
    handbook();
    freezing();
    volumeToMass();
    return list.checks();
  }

  private void polynomials() {
    list.from(
        Kind.COMPUTED_ELSEWHERE,
        "Melinder 2010 polynomials (coefficients from CoolProp ea27c63) evaluated in Python, numpy"
            + " 1.24.2");
    implementation(ETHYLENE, 0.308462, 31.728, 1034, 3737, 0.472, 1.60079484e-3);
    implementation(ETHYLENE, 0.30, 40, 1028.80016, 3775.35371, 0.48302716, 1.2855527e-3);
    implementation(ETHYLENE, 0.50, 20, 1064.92866, 3312.0419, 0.389148353, 3.69321143e-3);
    implementation(ETHYLENE, 0.50, 80, 1026.40641, 3581.58181, 0.425697833, 9.68456688e-4);
    implementation(ETHYLENE, 0.50, -20, 1082.19554, 3086.97479, 0.364738051, 2.21784025e-2);
    implementation(ETHYLENE, 0.60, 0, 1087.85429, 2966.93169, 0.347185181, 1.08694546e-2);
    implementation(PROPYLENE, 0.30, 40, 1013.43226, 3910.41941, 0.460564838, 1.57312578e-3);
    implementation(PROPYLENE, 0.50, 20, 1039.06055, 3530.19486, 0.359463637, 6.39361117e-3);
    Tolerance tenthOfMillikelvin = Tolerance.absolute(1e-4);
    frost(ETHYLENE, 0.308462, -15.25, tenthOfMillikelvin);
    frost(ETHYLENE, 0.30, -14.575778, tenthOfMillikelvin);
    frost(ETHYLENE, 0.50, -35.994425, tenthOfMillikelvin);
    frost(ETHYLENE, 0.60, -51.200915, tenthOfMillikelvin);
    frost(PROPYLENE, 0.30, -12.789104, tenthOfMillikelvin);
    frost(PROPYLENE, 0.50, -32.193469, tenthOfMillikelvin);
  }

  private void implementation(
      Glycol glycol, double mass, double celsius, double rho, double cp, double k, double mu) {
    Coolant mix = GlycolMix.ofMass(glycol, mass);
    String state =
        name(glycol) + " " + percent(mass) + " by mass, " + Digits.of(celsius, 6) + " degC";
    double t = celsius + ZERO_CELSIUS;
    Tolerance tight = Tolerance.relative(1e-6);
    properties(mix, t, state, new double[] {rho, cp, k, mu}, tight, tight, tight, tight);
  }

  private void secondTranscription() {
    list.from(
        Kind.LIBRARY,
        "Modelica Buildings Library (lbl-srg/modelica-buildings c4117cc), reference results");
    Tolerance tight = Tolerance.relative(1e-6);
    double t = 20 + ZERO_CELSIUS;
    Coolant propylene = GlycolMix.ofMass(PROPYLENE, 0.30);
    String state = "propylene glycol 30 % by mass, 20 degC";
    double[] row = {1023.78497, 3857.0039, 0.44442883, 2.9649746e-3};
    properties(propylene, t, state, row, tight, tight, tight, tight);
    Coolant ethylene = GlycolMix.ofMass(ETHYLENE, 0.30);
    list.add(
            "density, ethylene glycol 30 % by mass, 20 degC",
            1038.04553, ethylene.density(t), tight, "kg/m3")
        .add(
            "heat capacity, ethylene glycol 30 % by mass, 20 degC",
            3718.25098, ethylene.heatCapacity(t), tight, "J/(kg K)")
        .add(
            "conductivity, ethylene glycol 30 % by mass, 20 degC",
            0.46489722, ethylene.conductivity(t), tight, "W/(m K)");
  }

  private void handbook() {
    list.from(Kind.PUBLISHED, ASHRAE);
    table(ETHYLENE, 0.30, -10, 1054.31, 3560, 0.415, 6.19);
    table(ETHYLENE, 0.30, 20, 1045.25, 3645, 0.453, 2.20);
    table(ETHYLENE, 0.30, 80, 1014.00, 3816, 0.498, 0.65);
    table(ETHYLENE, 0.50, -10, 1084.22, 3165, 0.354, 12.74);
    table(ETHYLENE, 0.50, 20, 1073.35, 3281, 0.380, 3.94);
    table(ETHYLENE, 0.50, 40, 1063.66, 3358, 0.394, 2.26);
    table(ETHYLENE, 0.50, 80, 1038.46, 3512, 0.411, 0.98);
    table(PROPYLENE, 0.50, 20, 1042.87, 3532, 0.362, 6.65);
    table(PROPYLENE, 0.50, 40, 1030.98, 3609, 0.372, 3.11);
    table(PROPYLENE, 0.50, 80, 1001.05, 3763, 0.382, 1.12);
  }

  private void table(
      Glycol glycol, double volume, double celsius, double rho, double cp, double k, double mu) {
    Coolant mix = GlycolMix.ofVolume(glycol, volume);
    String state =
        name(glycol) + " " + percent(volume) + " by volume, " + Digits.of(celsius, 6) + " degC";
    double[] row = {rho, cp, k, mu * 1e-3};
    properties(
        mix,
        celsius + ZERO_CELSIUS,
        state,
        row,
        Tolerance.percent(1),
        Tolerance.percent(3),
        Tolerance.percent(4),
        Tolerance.percent(celsius < 0 ? 15 : 7));
  }

  private void properties(
      Coolant coolant,
      double t,
      String state,
      double[] row,
      Tolerance rho,
      Tolerance cp,
      Tolerance k,
      Tolerance mu) {
    list.add("density, " + state, row[0], coolant.density(t), rho, "kg/m3")
        .add("heat capacity, " + state, row[1], coolant.heatCapacity(t), cp, "J/(kg K)")
        .add("conductivity, " + state, row[2], coolant.conductivity(t), k, "W/(m K)")
        .add("viscosity, " + state, row[3], coolant.viscosity(t), mu, "Pa s");
  }

  private void freezing() {
    list.from(
        Kind.PUBLISHED,
        "ASHRAE Handbook, Fundamentals, secondary coolants, by mass (as stored in CoolProp ea27c63)");
    Tolerance tolerance = Tolerance.absolute(2.5);
    frost(ETHYLENE, 0.20, -7.8, tolerance);
    frost(ETHYLENE, 0.30, -14.1, tolerance);
    frost(ETHYLENE, 0.40, -22.3, tolerance);
    frost(ETHYLENE, 0.50, -33.8, tolerance);
    frost(PROPYLENE, 0.50, -33.5, tolerance);
  }

  private void frost(Glycol glycol, double mass, double celsius, Tolerance tolerance) {
    double computed = GlycolMix.ofMass(glycol, mass).freezingTemperature() - ZERO_CELSIUS;
    list.add(
        "freezing, " + name(glycol) + " " + percent(mass) + " by mass",
        celsius,
        computed,
        tolerance,
        "degC");
  }

  /** Rows of the finer table that lie between the rows the conversion keeps. */
  private void volumeToMass() {
    list.from(Kind.PUBLISHED, ASHRAE + ", rows between those the conversion holds");
    strength(ETHYLENE, 13.6, 15);
    strength(ETHYLENE, 24.8, 27);
    strength(ETHYLENE, 35.5, 38);
    strength(ETHYLENE, 45.5, 48);
    strength(ETHYLENE, 54.7, 57);
    strength(PROPYLENE, 14.5, 15);
    strength(PROPYLENE, 24.4, 25);
    strength(PROPYLENE, 35.5, 36);
    strength(PROPYLENE, 44.7, 45);
    strength(PROPYLENE, 54, 54);
  }

  private void strength(Glycol glycol, double volumePercent, double massPercent) {
    list.add(
        "mass share, " + name(glycol) + " " + Digits.of(volumePercent, 4) + " % by volume",
        massPercent,
        100 * glycol.massFraction(volumePercent / 100),
        Tolerance.absolute(0.15),
        "% by mass");
  }

  private static String name(Glycol glycol) {
    return glycol == ETHYLENE ? "ethylene glycol" : "propylene glycol";
  }

  private static String percent(double fraction) {
    return Digits.of(100 * fraction, 6) + " %";
  }
}
