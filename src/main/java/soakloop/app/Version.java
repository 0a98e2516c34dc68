package soakloop.app;

import picocli.CommandLine.IVersionProvider;

/** The program's version, from the jar it runs from. */
final class Version implements IVersionProvider {
  static String number() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "development" : version;
  }

  @Override
  public String[] getVersion() {
    return new String[] {"soakloop " + number()};
  }
}
