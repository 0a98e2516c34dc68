package soakloop.scenario;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/** Finds where everything stands in a text that was read as a scenario before. */
final class SpotReader {
  private final String text;
  private final Parser events;

  private SpotReader(String text) {
    this.text = text;
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(YamlText.MAX_LENGTH);
    this.events = new ParserImpl(new StreamReader(new StringReader(text)), options);
  }

  /**
   * Reads a text.
   *
   * @param text YAML that {@link YamlText} reads as one section without problems
   */
  static Spot.Keys of(String text) {
    SpotReader reader = new SpotReader(text);
    reader.events.getEvent(); // stream start
    reader.events.getEvent(); // document start
    if (reader.spot(reader.events.getEvent()) instanceof Spot.Keys keys) {
      return keys;
    }
    throw new IllegalArgumentException("the text is no section of keys");
  }

  private Spot spot(Event event) {
    if (event instanceof ScalarEvent scalar) {
      return word(scalar);
    }
    if (event instanceof SequenceStartEvent) {
      return row(event);
    }
    if (event instanceof MappingStartEvent mapping) {
      return keys(mapping);
    }
    throw new IllegalArgumentException("the text is no scenario");
  }

  private Spot.Word word(ScalarEvent event) {
    String quote =
        switch (event.getScalarStyle()) {
          case SINGLE_QUOTED -> "'";
          case DOUBLE_QUOTED -> "\"";
          default -> "";
        };
    return new Spot.Word(start(event), end(event), event.getValue(), quote);
  }

  private Spot.Row row(Event first) {
    boolean flow = ((SequenceStartEvent) first).getFlowStyle() == DumperOptions.FlowStyle.FLOW;
    List<Spot> items = new ArrayList<>();
    Event event = events.getEvent();
    while (!(event instanceof SequenceEndEvent)) {
      items.add(spot(event));
      event = events.getEvent();
    }
    int end = flow || items.isEmpty() ? end(event) : items.get(items.size() - 1).end();
    return new Spot.Row(start(first), end, items);
  }

  private Spot.Keys keys(MappingStartEvent first) {
    boolean flow = first.getFlowStyle() == DumperOptions.FlowStyle.FLOW;
    List<Spot.Entry> entries = new ArrayList<>();
    Event event = events.getEvent();
    while (!(event instanceof MappingEndEvent)) {
      Spot.Word key = word((ScalarEvent) event);
      entries.add(new Spot.Entry(key, spot(events.getEvent())));
      event = events.getEvent();
    }
    // The end of a block is told only where the next thing begins.
    int end =
        flow || entries.isEmpty() ? end(event) : entries.get(entries.size() - 1).value().end();
    return new Spot.Keys(start(first), end, flow, entries);
  }

  /** Returns an index into the text; the parser counts characters beyond 16 bits as one. */
  private int index(org.yaml.snakeyaml.error.Mark mark) {
    return text.offsetByCodePoints(0, mark.getIndex());
  }

  private int start(Event event) {
    return index(event.getStartMark());
  }

  private int end(Event event) {
    int start = start(event);
    int end = index(event.getEndMark());
    while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }
}
