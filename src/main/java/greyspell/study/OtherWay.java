package greyspell.study;

/**
 * Something else than panels or storage.
 *
 * @param unmetWh of an average year
 * @param savesWh a year against the home as it stands; below 0 where it is worse
 * @param worthWh of bank that does the same beside the present panels; infinite if no bank of the
 *     map does, below 0 where so much could be taken away for the same
 * @param savesHours of the generator, a year
 * @param savesL of fuel, a year
 */
public record OtherWay(
    String name,
    double unmetWh,
    double savesWh,
    double worthWh,
    double savesHours,
    double savesL) {}
