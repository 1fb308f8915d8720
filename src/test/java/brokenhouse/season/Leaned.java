package brokenhouse.season;

/** Used wrongly on purpose. */
public class Leaned {}
