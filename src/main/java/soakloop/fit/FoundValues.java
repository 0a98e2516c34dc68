package soakloop.fit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import soakloop.log.Signal;
import soakloop.quantity.Correlation;
import soakloop.scenario.FitNews;
import soakloop.scenario.FitRecord;
import soakloop.scenario.KeySpec;
import soakloop.scenario.KeyTable;

/** Hands what a fit found of one case to the scenario's text. */
public final class FoundValues {
  /** Digits that correlations are written with: {@value} of a whole. */
  private static final double GRAIN = 1000;

  private FoundValues() {}

  /**
   * Where a fit's news comes from.
   *
   * @param log file name relative to where the fitted scenario will lie
   * @param sha256 of the log's file, hexadecimal
   * @param date of the fit
   * @param version of the program
   */
  public record Origin(String log, String sha256, String date, String version) {}

  /**
   * Gathers.
   *
   * @param result what a fit gave
   * @param inCase index of the case
   * @param origin log and date, as {@link FitNews} has them
   */
  public static FitNews of(FitResult result, int inCase, Origin origin) {
    List<FitNews.FittedValue> values = new ArrayList<>();
    List<Integer> rows = new ArrayList<>();
    for (int k = 0; k < result.keys().size(); k++) {
      KeyNews news = result.keys().get(k);
      List<FitNews.Part> parts =
          news.key().parts().stream()
              .filter(p -> p.inCase() == inCase)
              .map(p -> new FitNews.Part(p.path(), news.estimate(p)))
              .toList();
      if (!parts.isEmpty()) {
        String name = name(news.key(), parts.get(0).path());
        values.add(new FitNews.FittedValue(name, news.key().dimension(), parts));
        rows.add(k);
      }
    }
    Map<Signal, FitRecord.ModelError> errors = new EnumMap<>(Signal.class);
    String label = result.plan().cases().get(inCase).label();
    result.signals().stream()
        .filter(s -> s.label().equals(label))
        .forEach(s -> errors.put(s.signal(), new FitRecord.ModelError(s.error(), s.errorTime())));
    return new FitNews(
        origin.log(),
        origin.sha256(),
        origin.date(),
        origin.version(),
        values,
        correlation(result, rows),
        errors);
  }

  static String name(FitKey key, String path) {
    if (key.role() instanceof Role.Bias bias) {
      return FitRecord.BIAS + bias.signal().key();
    }
    if (key.role() instanceof Role.Lag lag) {
      return FitRecord.LAG + lag.signal().key();
    }
    Optional<KeySpec> spec = KeyTable.get().find(path);
    boolean curve = spec.filter(s -> s.takes() == KeySpec.Takes.CURVE).isPresent();
    return curve ? path.replaceFirst("\\.\\d+\\.2$", "") : path;
  }

  /** Returns what stands between the keys of the case, rounded as it will be written. */
  private static Correlation correlation(FitResult result, List<Integer> rows) {
    double[][] lower = new double[rows.size()][];
    for (int i = 0; i < lower.length; i++) {
      lower[i] = new double[i + 1];
      for (int j = 0; j < i; j++) {
        double c = result.correlation().getEntry(rows.get(i), rows.get(j));
        lower[i][j] = Math.max(-1, Math.min(1, Math.rint(c * GRAIN) / GRAIN));
      }
      lower[i][i] = 1;
    }
    return Correlation.ofLower(lower);
  }
}
