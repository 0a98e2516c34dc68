package soakloop.scenario;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import soakloop.quantity.Dimension;
import soakloop.quantity.Estimate;
import soakloop.quantity.Unit;

/** Quantities as a JSON Schema sees them: texts of a number, a unit and perhaps a spread. */
final class SchemaQuantity {
  private static final String SIZE = "([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][-+]?[0-9]+)?";

  private SchemaQuantity() {}

  static Map<String, Object> of(Dimension dimension) {
    String units = dimension.isPlainNumber() ? "" : " *(" + symbols(dimension) + ")";
    Map<String, Object> text =
        text("^ *[-+]?" + SIZE + units + "( *(\\+/-|\u00b1) *" + spread(dimension) + ")? *$");
    text.put("description", "A " + dimension.label() + ": " + dimension.allowed());
    return dimension.isPlainNumber()
        ? Map.of("anyOf", List.of(Map.of("type", "number"), text))
        : text;
  }

  static Map<String, Object> count(KeySpec spec) {
    Map<String, Object> number = new LinkedHashMap<>();
    number.put("type", "integer");
    number.put("minimum", whole(spec.low().orElseThrow()));
    number.put("maximum", whole(spec.high().orElseThrow()));
    return Map.of("anyOf", List.of(number, text("^ *\\+?[0-9]+ *$")));
  }

  static Map<String, Object> unit(Dimension dimension) {
    return text("^ *(" + symbols(dimension) + ") *$");
  }

  static Map<String, Object> text(String pattern) {
    Map<String, Object> text = new LinkedHashMap<>();
    text.put("type", "string");
    text.put("pattern", pattern);
    return text;
  }

  private static int whole(Estimate bound) {
    return (int) bound.value();
  }

  private static String spread(Dimension dimension) {
    Dimension of = dimension.ofSpread();
    String inUnits = of.isPlainNumber() ? "" : " *(" + symbols(of) + ")";
    return switch (dimension) {
      case TEMPERATURE -> SIZE + inUnits;
      case NUMBER -> SIZE + "( *%)?";
      case FRACTION -> SIZE + " *(%|points?)";
      default -> SIZE + " *(%|" + symbols(of) + ")";
    };
  }

  private static String symbols(Dimension dimension) {
    return dimension.units().stream()
        .map(Unit::symbol)
        .filter(symbol -> !symbol.isEmpty())
        .map(SchemaQuantity::spelt)
        .collect(Collectors.joining("|"));
  }

  /** A unit's symbol as a pattern: spaces do not matter, nor how a degree or litre is written. */
  private static String spelt(String symbol) {
    return symbol
        .replace("(", "\\(")
        .replace(")", "\\)")
        .replace(" ", " *")
        .replace("deg", "(deg|\u00b0) *")
        .replace("L", "[Ll]");
  }
}
