package soakloop.report;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import soakloop.simulate.Channel;
import soakloop.simulate.EnergyLedger;

/**
 * A ledger sorted by where heat really came from and went to: an entry that is negative over the
 * whole session counts on the other side.
 *
 * @param in what came in, each above or at zero
 * @param out what went out, each above or at zero
 * @param stays what is stored, of either sign
 */
record HeatBalance(List<Entry> in, List<Entry> out, List<Entry> stays) {
  /** The flows between the rig and the rest of the world; {@link #OUTWARD} count outwards. */
  private static final Map<Channel, String> NAMES =
      Map.of(
          Channel.HEAT_CORE, "charge air, at the core",
          Channel.HEAT_DUCTS, "charge air, at blower case and plenum",
          Channel.HEAT_ENGINE, "engine, through plenum metal",
          Channel.HEAT_PUMP, "pump",
          Channel.HEAT_UNDERHOOD, "underhood air",
          Channel.HEAT_AMBIENT, "outside air, at the heat exchanger",
          Channel.HEAT_CHILLER, "refrigerant, at the chiller");

  private static final Set<Channel> OUTWARD = Set.of(Channel.HEAT_AMBIENT, Channel.HEAT_CHILLER);

  /**
   * One line.
   *
   * @param where where the heat came from, went to or is
   * @param joule J
   */
  record Entry(String where, double joule) {}

  HeatBalance {
    in = List.copyOf(in);
    out = List.copyOf(out);
    stays = List.copyOf(stays);
  }

  static HeatBalance of(EnergyLedger energy) {
    List<Channel> flows =
        flows().stream().filter(c -> c != Channel.HEAT_CHILLER || energy.toChiller() > 0).toList();
    Stream<Entry> ice =
        energy.storedIce() == 0
            ? Stream.empty()
            : Stream.of(new Entry("ice and its water", energy.storedIce()));
    return new HeatBalance(
        flows.stream().filter(c -> inward(energy, c) >= 0).map(c -> entry(energy, c)).toList(),
        flows.stream().filter(c -> inward(energy, c) < 0).map(c -> entry(energy, c)).toList(),
        Stream.concat(
                Stream.of(
                    new Entry("coolant", energy.storedCoolant()),
                    new Entry("metal of core and heat exchanger", energy.storedExchangers()),
                    new Entry("hose walls", energy.storedWalls()),
                    new Entry("blower case and plenum metal", energy.storedDucts())),
                ice)
            .toList());
  }

  /** Returns the channels of all flows, in the order they are listed. */
  static List<Channel> flows() {
    return Stream.of(Channel.values()).filter(NAMES::containsKey).toList();
  }

  /** Returns whether a flow is inward over the whole session. */
  static boolean isInward(EnergyLedger energy, Channel flow) {
    return inward(energy, flow) >= 0;
  }

  /** Returns whether a flow's channel counts what leaves. */
  static boolean countsOutward(Channel flow) {
    return OUTWARD.contains(flow);
  }

  double cameIn() {
    return total(in);
  }

  double wentOut() {
    return total(out);
  }

  double stay() {
    return total(stays);
  }

  private static double total(List<Entry> entries) {
    return entries.stream().mapToDouble(Entry::joule).sum();
  }

  private static Entry entry(EnergyLedger energy, Channel flow) {
    return new Entry(NAMES.getOrDefault(flow, flow.label()), Math.abs(inward(energy, flow)));
  }

  private static double inward(EnergyLedger energy, Channel flow) {
    return switch (flow) {
      case HEAT_CORE -> energy.fromChargeToCore();
      case HEAT_DUCTS -> energy.fromChargeToDucts();
      case HEAT_ENGINE -> energy.fromEngine();
      case HEAT_PUMP -> energy.fromPump();
      case HEAT_UNDERHOOD -> energy.fromUnderhood();
      case HEAT_AMBIENT -> -energy.toAmbient();
      case HEAT_CHILLER -> -energy.toChiller();
      default -> throw new IllegalArgumentException(flow + " is no heat flow of the ledger");
    };
  }
}
