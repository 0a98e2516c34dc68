package soakloop.fluid;

/**
 * Volume to mass fractions of the two glycols; source and accuracy are stated in {@link Glycol}.
 */
final class VolumeTable {
  static final VolumeTable ETHYLENE =
      new VolumeTable(
          new double[] {0, 0.10, 0.20, 0.30, 0.40, 0.50, 0.578},
          new double[] {0, 0.1117, 0.2189, 0.3240, 0.4250, 0.5240, 0.60});

  static final VolumeTable PROPYLENE =
      new VolumeTable(
          new double[] {0, 0.10, 0.20, 0.30, 0.40, 0.50, 0.60},
          new double[] {0, 0.1041, 0.2060, 0.3060, 0.4040, 0.5010, 0.60});

  private final double[] volume;
  private final double[] mass;

  private VolumeTable(double[] volume, double[] mass) {
    this.volume = volume;
    this.mass = mass;
  }

  double maxVolumeFraction() {
    return volume[volume.length - 1];
  }

  /** Mass fraction at a volume fraction the caller has checked to lie within the table. */
  double massFraction(double volumeFraction) {
    int i = 1;
    while (volumeFraction > volume[i]) {
      i++;
    }
    double share = (volumeFraction - volume[i - 1]) / (volume[i] - volume[i - 1]);
    return mass[i - 1] + share * (mass[i] - mass[i - 1]);
  }
}
