package soakloop.scenario;

import java.util.List;
import java.util.Optional;

/** Scenarios that between them use every key; all invented. */
final class Scenarios {
  /** Everything from size; heat exchanger by its face; steps of all kinds but a replay. */
  static final String BY_SIZE =
      """
      title: By size
      about: Every key that goes with sizes
      units: metric
      day: {temperature: 20 degC, pressure: 100 kPa, humidity: 40 %, warming: 1 K}
      engine:
        {displacement: 4 L, volumetric-efficiency: [[1000 rpm, 90 %], [6000 rpm, 98 %]], idle-speed: 850 rpm, idle-manifold-pressure: 40 kPa}
      blower:
        displacement: 1.7 L/rev
        pulleys: {crank: 188 mm, blower: 80 mm, step-up: 1.1}
        volumetric-efficiency: 90 %
        leakage: 5 %
        adiabatic-efficiency: 60 %
        mechanical-efficiency: 95 %
        inlet-pick-up: 6 K
        inlet-loss: 3 kPa
        case: {mass: 8 kg, conductance: 14 W/K, air-flow: 0.45 kg/s, surroundings-conductance: 4 W/K}
      boost: [[2500 rpm, 80 kPa], [6500 rpm, 90 kPa +/- 5 kPa]]
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
        metal-per-volume: 1.1 kg/L
        coolant-share: 24 %
        passes: {count: 2, arranged: depth}
        cells: {along: 3, depth: 4}
        conductance:
          {per-volume: 0.25 kW/(K L), air-flux: 9 kg/(s m2), coolant-flow: 24 L/min, air-side-share: 69 %,
           wall-share: 2 %, air-exponent: 0.5, coolant-exponent: 0.3, still-share: 20 %}
      plenum: {mass: 5 kg, conductance: 22 W/K, air-flow: 0.42 kg/s, engine-conductance: 7 W/K}
      sensor: {time-constant: 2 s, air-flow: 0.31 kg/s, flow-exponent: 0.5, boss-share: 2 %}
      loop: [reservoir, pump, supply-hose, core, return-hose, heat-exchanger]
      reservoir: {volume: 5 L, surroundings-conductance: 3 W/K}
      pump: {curve: [[0 L/min, 60 kPa], [30 L/min, 42 kPa], [55 L/min, 0 kPa]], power: 50 W, coolant: 0.2 L}
      plumbing: {pressure-loss: 40 kPa, at-flow: 24 L/min, exponent: 1.7}
      supply-hose:
        {length: 1.8 m, bore: 20 mm, wall: 5 mm, material: silicone, outside-coefficient: 11 W/(m2 K),
         cells: 6, layers: 2}
      return-hose:
        {length: 1.5 m, bore: 19 mm, wall: 4 mm, material: rubber, outside-coefficient: 12 W/(m2 K)}
      heat-exchanger:
        face: {width: 660 mm, height: 300 mm}
        thickness: 30 mm
        metal-per-volume: 0.6 kg/L
        coolant-share: 21 %
        passes: {count: 2, arranged: face}
        cells: {along: 5, depth: 3}
        conductance:
          {per-volume: 0.14 kW/(K L), air-speed: 2.5 m/s, coolant-flow: 21 L/min, air-side-share: 80 %,
           wall-share: 2 %, air-exponent: 0.45, coolant-exponent: 0.45, still-share: 20 %}
      coolant: {glycol: ethylene, by-volume: 30 %}
      airflow:
        shop-fan: strong
        strong: 5 m/s
        car-fan: 2 m/s
        road-share: 15 %
        still-air: 0.3 m/s
        inlet-rise: 1 K
        thermostat: {on: 52 degC, off: 48 degC}
      underhood: {share: 25 %, road-speed: 35 km/h}
      limits: {charge-temperature: 60 degC}
      power: {fuel-consumption: 300 g/kWh, air-fuel-ratio: 12, drivetrain-loss: 14 %}
      spark: {taken-out: [[45 degC, 0 deg], [70 degC, 6 deg]], later-than-best: 3 deg, loss: 0.0004}
      start: {charge: 40 degC, loop-coolant: 35 degC, engine-coolant: 92 degC}
      session:
        - settle: {for: 20 min, pump: on, shop-fan: off, car-fan: auto}
        - idle: {for: 30 s, pump: on, shop-fan: off, car-fan: on}
        - repeat: 2
          steps:
            - pull:
                {curve: [[0 s, 2600 rpm], [9 s, 6400 rpm], [10 s, 6700 rpm]], counted-to: 6500 rpm,
                 road-speed: {from: 50 km/h, to: 120 km/h}, pump: on, shop-fan: on, car-fan: off}
            - cruise:
                {for: 60 s, engine-speed: 2000 rpm, road-speed: 50 km/h, manifold-pressure: 60 kPa, pump: on,
                 shop-fan: off, car-fan: auto}
        - pulls: 3
          pull: {from: 2600 rpm, to: 6700 rpm, in: 10 s, counted-to: 6500 rpm}
          wait: {for: 150 s, engine: off, pump: off, shop-fan: on, car-fan: on}
      """;

  /** Everything stated; the log replayed. */
  static final String STATED =
      """
      title: Stated
      variants: [{name: other limit, limits: {charge-temperature: 50 degC}}]
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower:
        air-flow: [[2000 rpm, 0.15 kg/s], [6500 rpm, 0.5 kg/s]]
        efficiency-table:
          - {pressure-ratio: 1.4, efficiency: [[2000 rpm, 60 %], [7000 rpm, 64 %]]}
          - {pressure-ratio: 2, efficiency: [[2000 rpm, 57 %], [7000 rpm, 63 %]]}
      boost: 80 kPa
      core:
        mass: 3.4 kg
        coolant: 0.9 L
        conductance: {value: 0.7 kW/K, air-flow: 0.5 kg/s}
      loop: [pump, core, front-heat-exchanger]
      pump: {flow: 20 L/min}
      front-heat-exchanger:
        face: {width: 660 mm, height: 300 mm}
        mass: 2.5 kg
        coolant: 1.4 L
        conductance: {value: 150 W/K, air-flow: 0.6 kg/s}
      coolant: {glycol: propylene, by-mass: 30 %}
      airflow: {shop-fan: weak, weak: 1.4 m/s}
      session:
        - replay:
            {from: 5 s, to: 60 s, pulls: [{from: 10 s, to: 20 s, counted-to: 6500 rpm}], pump: on,
             shop-fan: off, car-fan: auto}
      log: {file: good.csv, columns: {charge-temperature: "IAT2 [degC]"}}
      """;

  /** Bar-and-plate core, tube-and-fin heat exchanger, everything of their geometry said. */
  static final String BY_GEOMETRY =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
        free-height: 70 mm
        geometry:
          kind: bar-and-plate
          layers: 14
          wall: 0.5 mm
          bar: 5 mm
          metal-conductivity: 170 W/(m K)
          uneven-air: 12 %
          tank-metal: 30 %
          tank-coolant: 50 %
          fins: {kind: offset-strip, density: 16 fpi, height: 7 mm, sheet: 0.1 mm, strip: 3.2 mm}
          coolant-fins: {kind: offset-strip, density: 5 fins/cm, height: 2.5 mm, sheet: 0.12 mm, strip: 3 mm}
      loop: [pump, core, heat-exchanger]
      heat-exchanger:
        face: {width: 660 mm, height: 300 mm}
        thickness: 30 mm
        geometry:
          kind: tube-and-fin
          layers: 28
          wall: 0.3 mm
          metal-conductivity: 170 W/(m K)
          uneven-air: 20 %
          tank-metal: 20 %
          tank-coolant: 40 %
          ports: {width: 8 mm, height: 1.5 mm, web: 0.4 mm}
          fins:
            {kind: louvred, density: 15 fpi, height: 8 mm, sheet: 0.08 mm, louvre-pitch: 1.2 mm,
             louvre-share: 84 %, louvre-angle: 25 deg}
      coolant: {glycol: ethylene, by-volume: 40 %}
      airflow: {shop-fan: 4 m/s}
      session: [{idle: {for: 10 s}}]
      """;

  /** The other way round, and what may not stand beside that. */
  static final String BY_GEOMETRY_TOO =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
        mass: 4 kg
        coolant: 1 L
        geometry:
          kind: tube-and-fin
          ports: {width: 1.5 mm, height: 1.6 mm, web: 0.4 mm}
          fins:
            {kind: louvred, density: 15 fpi, height: 8 mm, sheet: 0.08 mm, louvre-pitch: 1.2 mm,
             louvre-share: 84 %, louvre-angle: 25 deg}
      loop: [pump, core, heat-exchanger]
      heat-exchanger:
        face: {width: 660 mm, height: 300 mm}
        geometry:
          kind: bar-and-plate
          bar: 5 mm
          fins: {kind: offset-strip, density: 16 fpi, height: 7 mm, sheet: 0.1 mm, strip: 3.2 mm}
          coolant-fins: {kind: offset-strip, density: 5 fins/cm, height: 2.5 mm, sheet: 0.12 mm, strip: 3 mm}
      coolant: {glycol: ethylene, by-volume: 40 %}
      session: [{idle: {for: 10 s}}]
      """;

  /** Both exchangers by a measured point: effectiveness, temperatures. */
  static final String MEASURED =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 66 mm}
        conductance:
          measured:
            {effectiveness: 72 %, air-flow: 0.45 kg/s, coolant-flow: 22 L/min,
             size: {length: 350 mm, width: 170 mm, thickness: 55 mm}}
      loop: [pump, core, heat-exchanger, rear-heat-exchanger]
      heat-exchanger:
        face: {width: 660 mm, height: 300 mm}
        thickness: 30 mm
        conductance:
          measured:
            {air-in: 20 degC, coolant-in: 60 degC, coolant-out: 54 degC, air-speed: 3 m/s,
             coolant-flow: 20 L/min, size: {width: 600 mm, height: 320 mm, thickness: 26 mm}}
      rear-heat-exchanger:
        face: {width: 500 mm, height: 300 mm}
        thickness: 30 mm
        conductance:
          measured:
            {air-in: 20 degC, coolant-in: 60 degC, air-out: 38 degC, air-flow: 0.7 kg/s,
             coolant-flow: 20 L/min, size: {width: 600 mm, height: 320 mm, thickness: 26 mm}}
      coolant: {glycol: ethylene, by-volume: 40 %}
      session: [{idle: {for: 10 s}}]
      """;

  /** The core by temperatures. */
  static final String MEASURED_TOO =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 66 mm}
        conductance:
          measured:
            {air-in: 140 degC, air-out: 65 degC, coolant-in: 40 degC, air-flow: 0.45 kg/s,
             coolant-flow: 22 L/min, size: {length: 350 mm, width: 170 mm, thickness: 55 mm}}
      loop: [pump, core, heat-exchanger]
      heat-exchanger:
        face: {width: 660 mm, height: 300 mm}
        thickness: 30 mm
        conductance:
          measured:
            {effectiveness: 50 %, air-flow: 0.7 kg/s, coolant-flow: 20 L/min,
             size: {width: 600 mm, height: 320 mm, thickness: 26 mm}}
      coolant: {glycol: ethylene, by-volume: 40 %}
      session: [{idle: {for: 10 s}}]
      """;

  /** Pressure piece by piece, ways in parallel, a pump by its label, air from pressures. */
  static final String BY_PRESSURE =
      """
      title: By pressure
      day: {temperature: 20 degC, pressure: 100 kPa}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core:
        size: {length: 360 mm, width: 170 mm, thickness: 55 mm}
        pressure-loss: {loss: 8 kPa, flow: 22 L/min, exponent: 1.6, temperature: 35 degC}
        trapped-air: 5 %
      loop:
        - reservoir
        - pump
        - supply-hose
        - core
        - parallel: [[left-hose, left-heat-exchanger], [right-heat-exchanger]]
      reservoir: {volume: 5 L, port: 22 mm}
      pump:
        {label: 60 L/min, label-share: 70 %, shut-off: 32 kPa, voltage: 12.8 V, rated-voltage: 13.8 V,
         in-series: 2, efficiency: 22 %}
      supply-hose: {length: 1.8 m, bore: 20 mm, roughness: 0.02 mm, fittings: 2.5}
      left-hose: {length: 0.6 m}
      left-heat-exchanger:
        face: {width: 400 mm, height: 250 mm}
        pressure-loss: {usual-loss: 3 kPa, flow: 18 L/min}
        trapped-air-volume: 0.05 L
      right-heat-exchanger:
        face: {width: 380 mm, height: 250 mm}
        behind: left-heat-exchanger
      coolant: {glycol: ethylene, by-volume: 40 %}
      airflow:
        recirculation: 10 %
        duct:
          {loss-factor: 35, pressure-coefficient: 0.8, shop-fan: 8 m/s, capture: 40 %,
           fan: [[0 m3/h, 150 Pa], [1500 m3/h, 90 Pa], [2500 m3/h, 0 Pa]]}
        thermostat: {on: 50 degC, off: 46 degC}
      session: [{idle: {for: 10 s}}, {pull: {from: 2600 rpm, to: 6700 rpm, in: 10 s}}]
      """;

  /** A pump at another speed than its curve's. */
  static final String BY_SPEED =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [pump, core]
      pump: {curve: [[0 L/min, 60 kPa], [55 L/min, 5 kPa]], speed: 80 %, power: 70 W}
      coolant: {glycol: none}
      session: [{idle: {for: 10 s}}]
      """;

  /** Ice, layers and a chiller. */
  static final String ICED =
      """
      title: Iced
      day: {temperature: 20 degC, pressure: 100 kPa}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [reservoir, pump, core, rear-chiller]
      reservoir:
        volume: 8 L
        capacity: 16 L
        layers: 3
        enters: bottom
        ice: {mass: 3 kg, temperature: -8 degC, conductance: 900 W/K}
      pump: {curve: [[0 L/min, 60 kPa], [55 L/min, 0 kPa]]}
      rear-chiller:
        {capacity: [[0 degC, 0.5 kW], [30 degC, 4 kW]], coldest: 3 degC, fading-flow: 3 L/min,
         coolant: 0.4 L, driven-by: electric, performance: 1.8, pressure-loss: 6 kPa}
      coolant: {glycol: none}
      session:
        - settle: {chiller: off}
        - idle: {for: 10 s, chiller: on}
        - pull: {from: 2600 rpm, to: 6700 rpm, in: 10 s, chiller: off}
        - cruise: {for: 10 s, engine-speed: 2000 rpm, road-speed: 50 km/h, chiller: on}
        - wait: {for: 10 s, engine: off, chiller: off, ice: 2 kg, drain: on}
      """;

  /** Ice by its pieces, a log replayed without the chiller. */
  static final String BY_PIECES =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [reservoir, chiller, pump, core]
      reservoir:
        {volume: 8 L, capacity: 16 L, ice: {mass: 3 kg, pieces: 20 mm, coefficient: 650 W/(m2 K)}}
      chiller: {capacity: 3 kW}
      coolant: {glycol: none}
      session: [{replay: {from: 5 s, to: 60 s, chiller: off}}]
      log: {file: good.csv, columns: {charge-temperature: "IAT2 [degC]"}}
      """;

  /** All but a session. */
  static final String SHORT_HEAD =
      """
      day: {temperature: 20 degC}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [pump, core]
      coolant: {glycol: none}
      """;

  /** Passes from power, around them all that goes with a strip; the hood open in the pit. */
  static final String PASSED =
      """
      title: Passed
      day: {temperature: 20 degC, pressure: 100 kPa, humidity: 40 %}
      engine: {displacement: 4 L}
      blower: {displacement: 1.7 L/rev, drive-ratio: 2.35}
      boost: 80 kPa
      core: {size: {length: 360 mm, width: 170 mm, thickness: 55 mm}}
      loop: [pump, core]
      coolant: {glycol: none}
      underhood: {share: 25 %, road-speed: 35 km/h, open-hood: 50 %}
      vehicle:
        mass: 1650 kg
        tyre-diameter: 660 mm
        final-drive: 3.55
        gears: [2.97, 2.07, 1.43, 1.0]
        shift-at: 6700 rpm
        shift-time: 0.3 s
        driven: rear
        driven-weight: 48 %
        weight-transfer: 19 %
        tyre-grip: 1.34
        drag-area: 0.7 m2
        rolling-resistance: 1.5 %
        turning-wheels: 5 %
        turning-engine: 0.002
        wheel-power: [[2000 rpm, 90 kW], [4500 rpm, 240 kW], [6700 rpm, 330 kW +/- 15 kW]]
      session:
        - pass:
            distance: 1000 ft
            rollout: 0.25 m
            launch-rpm: 3200 rpm
            pump: on
            car-fan: off
            chiller: off
            burnout: {for: 7 s, engine-speed: 4800 rpm, manifold-pressure: 105 kPa}
            staging: {for: 35 s}
            shutdown: {for: 18 s, to: 40 km/h}
            return-road:
              {for: 2 min, road-speed: 30 km/h, engine-speed: 1600 rpm, manifold-pressure: 50 kPa}
        - wait: {for: 10 min, engine: off, hood: open}
        - pass: {launch-rpm: 2200 rpm}                # below the grip; the one before is above
      """;

  /** A pass as measured, its engine speed from the gears; power stated at the crank. */
  static final String PASSED_TOO =
      SHORT_HEAD
          + """
      vehicle:
        {mass: 1650 kg, tyre-diameter: 660 mm, final-drive: 3.55, gears: [2.97, 2.07, 1.43, 1.0],
         shift-at: 6700 rpm, driven: both, tyre-grip: 0.9, crank-power: 400 kW, drivetrain-loss: 16 %}
      session:
        - pass: {road-speed: [[0 s, 0 km/h], [4 s, 100 km/h], [12 s, 195 km/h]]}
        - pass:
            road-speed: [[0 s, 0 km/h], [4 s, 100 km/h], [12 s, 195 km/h]]
            engine-speed: [[0 s, 3000 rpm], [4 s, 6600 rpm], [12 s, 6500 rpm]]
        - pass: {}
      """;

  /** The least that can be said. */
  static final String SHORT = SHORT_HEAD + "session: [{idle: {for: 10 s}}]\n";

  /** The least, with what a fit left in it; its third key was edited since. */
  static final String FITTED =
      SHORT
              .replace("20 degC", "20 degC +/- 2 K")
              .replace("80 kPa", "[[2000 rpm, 80 kPa +/- 4 kPa]]")
          + """
      sensor: {time-constant: 2.1 s +/- 0.3 s, boss-share: 3 % +/- 1 point}
      fitted:
        log: invented.csv
        sha-256: 0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef
        date: 2026-03-14
        version: 1.2.3
        keys:
          - {key: day.temperature, value: 20 degC +/- 2 K}
          - {key: sensor.time-constant, value: 2.1 s +/- 0.3 s}
          - {key: sensor.boss-share, value: 2 % +/- 1 point}
          - {key: boost, values: [80 kPa +/- 4 kPa]}
          - {key: bias.charge-temperature, value: -0.4 K +/- 1.1 K}
        correlation:
          - [1]
          - [0.25, 1]
          - [0, 0, 1]
          - [0.1, -0.5, 0, 1]
          - [-0.3, 0, 0, 0, 1]
        model-error:
          - {signal: charge-temperature, deviation: 0.7 K, time: 25 s}
      """;

  static final List<String> ALL =
      List.of(
          BY_SIZE,
          STATED,
          BY_GEOMETRY,
          BY_GEOMETRY_TOO,
          MEASURED,
          MEASURED_TOO,
          BY_PRESSURE,
          BY_SPEED,
          ICED,
          BY_PIECES,
          PASSED,
          PASSED_TOO,
          SHORT,
          FITTED);

  private Scenarios() {}

  static Scenario read(String text) throws ScenarioException {
    return ScenarioReader.parse("test", text, BadCase.FOLDER);
  }

  /** Returns all that a run is made from, as something that can be compared. */
  static List<Object> made(Scenario s) {
    return List.of(
        s.day(),
        s.rig().coolant().freezingTemperature(),
        s.rig().engine(),
        s.rig().blower(),
        s.rig().boost(),
        s.rig().plenum(),
        s.rig().sensor(),
        s.rig().loop(),
        s.rig().airflow(),
        s.rig().underhood(),
        s.limits(),
        s.output(),
        s.start(),
        s.session(),
        s.logged().map(Scenario.Logged::startsAt).map(Optional::of).orElse(Optional.empty()));
  }
}
