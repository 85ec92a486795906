/**
 * The hourly loops. Read first: {@link greyspell.balance.HourLoop}, then {@link
 * greyspell.balance.FullLoop}; {@link greyspell.balance.Balance} chooses. {@code UnmetLoop}, {@code
 * UnmetDays}, {@code LaneLoop}, {@code BankAxis}, {@code SequentPeak} and {@code BankSearch} keep
 * sums only, for sizing and maps. Why the balance stands in each of them again:
 * docs/decisions/0005.
 */
@NullMarked
package greyspell.balance;

import org.jspecify.annotations.NullMarked;
