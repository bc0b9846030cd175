/**
 * Whether a tool's last test is recent enough: plain calendar arithmetic on YYYY-MM-DD, Gregorian, no clock.
 * A test on 15 January with six months lapses after 15 July; a day that the month lacks becomes its last day. Left
 * out: hours of a day, a maker’s or an employer’s shorter interval unless it is handed in.
 */
import type { IsoDate } from '../units/quantities.ts';

interface Day {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

const daysIn = (year: number, month: number): number => {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
};

const readDay = (text: IsoDate): Day | undefined => {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!match) return undefined;
  const day = { year: Number(match[1]), month: Number(match[2]), day: Number(match[3]) };
  const valid = day.month >= 1 && day.month <= 12 && day.day >= 1 && day.day <= daysIn(day.year, day.month);
  return valid ? day : undefined;
};

const digits = (value: number, width: number): string => String(value).padStart(width, '0');

/** Whether `text` is a day that exists, as YYYY-MM-DD. */
export const isIsoDate = (text: string): boolean => readDay(text) !== undefined;

/** Last day on which a test of `testDate` still counts. Throws on a date that does not exist. */
export const dueDate = (testDate: IsoDate, months: number): IsoDate => {
  const tested = readDay(testDate);
  if (!tested) throw new RangeError(`${testDate} is not a date`);
  const count = tested.year * 12 + tested.month - 1 + months;
  const year = Math.floor(count / 12);
  const month = (count % 12) + 1;
  return `${digits(year, 4)}-${digits(month, 2)}-${digits(Math.min(tested.day, daysIn(year, month)), 2)}`;
};

/** Whether `today` lies from the test to its due date; a test dated after today does not count. Throws on a date that does not exist. */
export const withinInterval = (testDate: IsoDate, today: IsoDate, months: number): boolean => {
  if (!isIsoDate(today)) throw new RangeError(`${today} is not a date`);
  return testDate <= today && today <= dueDate(testDate, months);
};
