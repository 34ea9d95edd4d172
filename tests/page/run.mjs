// Page tests: `node tests/page/run.mjs [part of a name]`, after `web/run --no-serve`.
// TREADLE_SITE is another folder to serve, TREADLE_SIDE_BY_SIDE how many run at once.

import './opens.mjs';
import './round.mjs';
import './files.mjs';
import './touch.mjs';
import './same.mjs';
import './printed.mjs';
import './cuts.mjs';
import './jobs.mjs';
import './reading.mjs';
import './mirror.mjs';
import './contrast.mjs';
import './idle.mjs';
import './finger.mjs';
import './forms/honest.mjs';
import './forms/offline.mjs';
import './forms/three.mjs';
import './forms/update.mjs';
import './keeping/faults.mjs';
import './keeping/giving.mjs';
import './keeping/hostile.mjs';
import './keeping/killed.mjs';
import './keeping/racing.mjs';
import './scenarios/bends.mjs';
import './scenarios/drawing.mjs';
import './scenarios/clipboard.mjs';
import './scenarios/fields.mjs';
import './scenarios/find.mjs';
import './scenarios/first.mjs';
import './scenarios/help.mjs';
import './scenarios/history.mjs';
import './scenarios/layouts.mjs';
import './scenarios/lessons.mjs';
import './scenarios/limits.mjs';
import './scenarios/machine.mjs';
import './scenarios/no_drawing.mjs';
import './scenarios/pad.mjs';
import './scenarios/parts.mjs';
import './scenarios/remedies.mjs';
import './scenarios/reorder.mjs';
import './scenarios/screen.mjs';
import './scenarios/start.mjs';
import './scenarios/stock.mjs';
import './scenarios/trials.mjs';
import './scenarios/typing.mjs';
import './scenarios/work.mjs';

import { run_all } from './harness.mjs';

process.exitCode = (await run_all(process.argv[2])) ? 0 : 1;
