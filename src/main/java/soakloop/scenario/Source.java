package soakloop.scenario;

/** Placeholder until the document tree exists. */
public interface Source {}
