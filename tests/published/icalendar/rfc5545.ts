/** B. Desruisseaux (ed.), Internet Calendaring and Scheduling Core Object Specification, RFC 5545, September 2009. */

/** Section 3.6.1, a festival on every day from 28 June to 8 July 2007 (read, as quoted in source code that follows it). */
export const SEVERAL_DAYS = {
  first: '2007-06-28',
  last: '2007-07-08',
  lines: ['DTSTART;VALUE=DATE:20070628', 'DTEND;VALUE=DATE:20070709', 'TRANSP:TRANSPARENT'],
};

/** Section 3.3.11, a text of three lines and its value (from memory). */
export const TEXT = {
  text: 'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.',
  value: 'Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.',
};

/** Section 3.1, "Lines of text SHOULD NOT be longer than 75 octets, excluding the line break" (read). */
export const MOST_OCTETS = 75;
