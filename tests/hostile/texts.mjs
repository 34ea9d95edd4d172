// Hostile files that are no JSON: parts lists, job links and stored records.

import { deflateRawSync } from 'node:zlib';

const heading = 'Mark,Qty,Section,Length,Grade\n';
const row = 'A,1,FB 3 in x 1/2 in,12 in,A36\n';

export function csv_files(add) {
  const csv = (why, text) => add('csv', why, text);
  csv('a quote that does not end', `${heading}A,"1,FB\n${row.repeat(100)}`);
  csv('something behind a quote', `${heading}A,"1"x,FB 3 in x 1/2 in,12 in,A36\n`);
  csv('65 columns', `${','.repeat(64)}x\n`);
  csv('a million columns', ','.repeat(1000000));
  csv('20,001 rows', heading + row.repeat(20000));
  csv('a million line ends', `${heading}${'\n'.repeat(1000000)}`);
  csv('a cell of 4001 letters', `${heading}${'x'.repeat(4001)},1,FB 3 in x 1/2 in,12 in,A36\n`);
  csv('a cell of a million quotes', `${heading}"${'""'.repeat(1000000)}"`);
  csv('17 MB', row.repeat(Math.ceil((17 << 20) / row.length)));
  csv('NUL in a cell', `${heading}A\0,1,FB 3 in x 1/2 in,12 in,A36\n`);
  csv('a control character late in the file', `${heading}${row.repeat(200)}A\u0001,1,x,x,x\n`);
  csv('half of UTF-16', Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(heading, 'utf16le'), Buffer.from([0x41])]));
  csv('UTF-16 with a lone surrogate', Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from(`${heading}A`, 'utf16le'), Buffer.from([0x00, 0xd8, 0x41, 0x00])]));
  csv('bytes that are no letters', Buffer.concat([Buffer.from(heading), Buffer.from([0x81, 0x8d, 0xe4, 0x0a])]));
  csv('no columns that make a part', 'Weight,Price\n1,2\n');
  csv('headings alone', heading);
  csv('two columns for the count', 'Mark,Qty,Count,Section,Length\nA,1,1,RD 20 mm,100 mm\n');
  for (const [why, cells] of [['a date for a length', 'A,1,FB 3 in x 1/2 in,2-Jan,A36'], ['a date for a mark', '1/2/2026,1,FB 3 in x 1/2 in,12 in,A36'],
    ['a number of a day', 'A,1,FB 3 in x 1/2 in,46024,A36'], ['a power of ten', 'A,1,FB 3 in x 1/2 in,1.5E+03,A36'], ['an error', 'A,1,#REF!,12 in,A36'],
    ['signs of a narrow column', 'A,1,FB 3 in x 1/2 in,#####,A36'], ['a formula', 'A,=1+1,FB 3 in x 1/2 in,12 in,A36'],
    ['a command for a spreadsheet', `A,=cmd|' /C calc'!A0,FB 3 in x 1/2 in,12 in,A36`], ['a link for a spreadsheet', 'A,"=HYPERLINK(""http://x"")",RD 20 mm,12 in,A36'],
    ['a count of 2^31', 'A,2147483648,FB 3 in x 1/2 in,12 in,A36'], ['a count of 2^63', 'A,9223372036854775808,RD 20 mm,12 in,A36'], ['a count below zero', 'A,-1,RD 20 mm,12 in,A36'],
    ['a length without end', 'A,1,RD 20 mm,1e308 in,A36'], ['a length of 101 m', 'A,1,RD 20 mm,101 m,A36'], ['a section without end', 'A,1,RD 1e308 in,12 in,A36'],
    ['a million digits', `A,1,RD 20 mm,${'9'.repeat(3999)},A36`], ['markup for a grade', 'A,1,RD 20 mm,12 in,<script>alert(1)</script>'],
    ['a thousand or not', 'A,1,RD 20 mm,"1,250 mm",A36'], ['a bare number', 'A,1,RD 20 mm,12,A36'], ['a share', 'A,50%,RD 20 mm,12 in,A36']])
    csv(why, `${heading}${cells}\n`);
}

/** What stands behind the # of a job link, and what nobody may take for one. */
export function fragment_files(add) {
  const fragment = (why, text) => add('fragment', why, text);
  const packed = (bytes) => deflateRawSync(bytes).toString('base64url');
  fragment('nothing behind the name', '#job=');
  fragment('no letters of base64', '#job=1.%%%%');
  fragment('a script', '#job=<script>alert(1)</script>');
  fragment('javascript', '#javascript:alert(1)');
  fragment('a path', '#job=../../a.json');
  fragment('another host', '#job=http://x/a.json');
  fragment('packed zeros that grow to 100 MB', `#job=1.${packed(Buffer.alloc(100 << 20))}`);
  fragment('packed lists in each other', `#job=1.${packed('['.repeat(1000000))}`);
  fragment('packed text that is no job', `#job=1.${packed('hello')}`);
  fragment('packed bytes cut short', `#job=1.${packed('{"format":"treadle-job"}'.repeat(100)).slice(0, 20)}`);
  fragment('a newer link', `#job=999.${packed('{}')}`);
  fragment('a million letters', `#job=1.${'A'.repeat(1000000)}`);
  fragment('escapes of NUL', '#job=1.%00%00%00');
  fragment('two jobs', `#job=1.${packed('{}')}&job=1.${packed('{}')}`);
}

/** As the store of a browser may hold them after a crash, another page or a curious hand. */
export function record_files(add) {
  const record = (why, text) => add('record', why, text);
  record('an empty record', 'treadle-record 1');
  record('a sum that is wrong', 'treadle-record 1 1-a - 0000000000000000\n{"format":"treadle-job"}');
  record('a newer record', 'treadle-record 999 1-a - 0\n{}');
  record('a number of 2^63', 'treadle-record 1 9223372036854775808-a - 0\n{}');
  record('a number below zero', 'treadle-record 1 -1-a - 0\n{}');
  record('a writer with a slash', 'treadle-record 1 1-a/../b - 0\n{}');
  record('a record that follows itself', 'treadle-record 1 1-a 1-a 0\n{}');
  record('a head that points nowhere', 'treadle-head 1 1-a 2-a 3-a 0');
  record('a head with one name too few', 'treadle-head 1 1-a 2-a 0');
  record('a head of a million names', `treadle-head 1 ${'1-a '.repeat(1000000)}`);
  record('NUL in the first line', 'treadle-record 1\0 1-a - 0\n{}');
  record('a step alone', '{"format":"treadle-step","version":1,"words":"x","at":-1,"out":2147483648,"in":[]}');
  record('work at the machine of a newer page', '{"format":"treadle-progress","version":2,"jobs":[]}');
  record('work at the machine with a count below zero', '{"format":"treadle-progress","version":1,"jobs":[{"job":"x","steps":[{"place":"a","content":"b","ticked":-1}]}]}');
}
